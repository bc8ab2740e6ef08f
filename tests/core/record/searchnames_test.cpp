// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How a name is found. Names are invented. The spelling of German umlauts without them is that of
// DIN 5007-2 (ü as ue), of Danish and Norwegian letters common practice; the way from other scripts
// to Latin letters is ICU's.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "record/card.h"

namespace record {
namespace {

/// As the ledgers match: each word typed begins some key.
bool finds(const std::string& typed, const std::string& name) {
    const auto keys = searchKeys(name);
    const auto words = searchWords(typed);
    return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::any_of(keys.begin(), keys.end(),
                           [&](const std::string& key) { return key.starts_with(word); });
    });
}

struct FindRow {
    const char* typed;
    const char* name;
};

TEST(SearchNames, ANameIsFoundHoweverItIsTyped) {
    for (const FindRow& row : {
             FindRow{"amara", "Amara Okonjo"},
             FindRow{"OKO", "Amara Okonjo"},
             FindRow{"oko ama", "Amara Okonjo"},
             FindRow{"okonjo,amara", "Amara Okonjo"},
             FindRow{"muller", "J\u00FCrgen M\u00FCller"},
             FindRow{"mueller", "J\u00FCrgen M\u00FCller"},
             FindRow{"m\u00FCller", "Juergen M\u00FCller"},
             FindRow{"mu\u0308ller", "M\u00FCller"},
             FindRow{"m\u00FCller", "Mueller"},
             FindRow{"muller", "Mueller"},
             FindRow{"mueller", "Mueller"},
             FindRow{"b\u00E4uerle", "Baeuerle"},
             FindRow{"baeuerle", "B\u00E4uerle"},
             FindRow{"\u00E5ngstr\u00F6m", "Aangstroem"},
             FindRow{"aangstroem", "\u00C5ngstr\u00F6m"},
             FindRow{"angstrom", "Aangstroem"},
             FindRow{"s\u00F8rensen", "Soerensen"},
             // no letter was missing, and each is found as it is written
             FindRow{"aaron", "Aaron Manuel Goethe"},
             FindRow{"manuel", "Aaron Manuel Goethe"},
             FindRow{"goethe", "Aaron Manuel Goethe"},
             // found too, as nobody can tell these apart: accepted
             FindRow{"aron", "Aaron"},
             FindRow{"samul", "Samuel"},
             FindRow{"aerosund", "\u00C6r\u00F8sund"},
             FindRow{"aaberg", "\u00C5berg"},
             FindRow{"aberg", "\u00C5berg"},
             FindRow{"strasse", "Stra\u00DFe"},
             FindRow{"lukasz", "\u0141ukasz"},
             FindRow{"nguyen", "Nguy\u1EC5n"},
             FindRow{"obrien", "O\u2019Brien"},
             FindRow{"o'brien", "O\u2019Brien"},
             FindRow{"smith", "Ada Smith-Jones"},
             FindRow{"jones", "Ada Smith-Jones"},
             FindRow{"olga", "\u041E\u043B\u044C\u0433\u0430"},
             FindRow{"\u043E\u043B\u044C", "\u041E\u043B\u044C\u0433\u0430"},
             FindRow{"sokrates", "\u03A3\u03C9\u03BA\u03C1\u03AC\u03C4\u03B7\u03C2"},
             FindRow{"wang", "\u738B\u5C0F\u660E"},
             FindRow{"\u5C0F\u660E", "\u738B\u5C0F\u660E"},
             FindRow{"\uAE40", "\uAE40\uBBFC\uC218"},
             FindRow{"ahmd", "\u0623\u062D\u0645\u062F"},
             // alef with and without hamza
             FindRow{"\u0627\u062D\u0645\u062F", "\u0623\u062D\u0645\u062F"},
             // without the vowel signs, and stretched
             FindRow{"\u0645\u062D\u0645\u062F",
                     "\u0645\u064F\u062D\u064E\u0645\u0651\u064E\u062F"},
             FindRow{"\u0645\u062D\u0640\u0640\u0645\u062F", "\u0645\u062D\u0645\u062F"},
             FindRow{"\u05D9\u05D5\u05E1\u05E3", "\u05D9\u05D5\u05B9\u05E1\u05B5\u05E3"},
             FindRow{"ali", "\u02BFAl\u012B"},
             FindRow{"n-1042", "N-1042"},
             FindRow{"1042", "N-1042"},
             FindRow{"\u0661\u0660\u0664", "N-1042"},
         })
        EXPECT_TRUE(finds(row.typed, row.name)) << row.typed << " in " << row.name;
}

TEST(SearchNames, NoOtherIsFound) {
    for (const FindRow& row : {FindRow{"mara", "Amara Okonjo"}, FindRow{"amara lund", "Amara"},
                               FindRow{"mueler", "M\u00FCller"}, FindRow{"m\u00FCller", "Moeller"},
                               FindRow{"muel", "Muller"}, FindRow{"104 2", "1041"},
                               FindRow{"\u674E", "\u738B\u5C0F\u660E"}})
        EXPECT_FALSE(finds(row.typed, row.name)) << row.typed << " in " << row.name;
}

// UAX #9 section 2 lists the characters that turn direction; a name copied from elsewhere brings
// them along.
TEST(SearchNames, WhatIsInvisibleIsNeitherKeptNorTyped) {
    for (const std::string hidden :
         {"\u202E", "\u202C", "\u2067", "\u2069", "\u200E", "\u200F", "\u061C", "\uFEFF", "\u200C",
          "\u200D", "\u00AD", "\u0007", "\u0301", "\u200B"}) {
        EXPECT_EQ(searchWords("am" + hidden + "ara"), std::vector<std::string>{"amara"}) << hidden;
        EXPECT_EQ(searchKeys("am" + hidden + "ara"), std::vector<std::string>{"amara"}) << hidden;
        EXPECT_TRUE(searchWords(hidden).empty()) << hidden;
    }
    EXPECT_EQ(searchWords("am\u202Fara\tb\nc"), (std::vector<std::string>{"am", "ara", "b", "c"}));
}

TEST(SearchNames, SignsAreNoWord) {
    for (const char* typed : {"", " ", "-", "'", "...", "%", "\u3001\u30FB"})
        EXPECT_TRUE(searchWords(typed).empty()) << typed;
}

TEST(SearchNames, ThreeHundredLettersAreOneWordAndSoAreTheirFirstTwo) {
    for (const std::string letter : {"a", "\u00FC", "\u0634", "\u0448"}) {
        std::string name;
        for (int i = 0; i < 300; ++i) name += letter;
        EXPECT_LE(searchKeys(name).size(), 2U) << letter;
        EXPECT_TRUE(finds(letter + letter, name)) << letter;
        EXPECT_TRUE(finds(name, name)) << letter;
    }
}

TEST(SearchNames, AKeyIsThereOnce) {
    EXPECT_EQ(searchKeys("Anna anna ANNA"), std::vector<std::string>{"anna"});
    EXPECT_EQ(searchKeys("M\u00FCller"), (std::vector<std::string>{"muller", "mueller"}));
    EXPECT_EQ(searchKeys("Mueller"), (std::vector<std::string>{"mueller", "muller"}));
    EXPECT_EQ(searchKeys("Okonjo"), std::vector<std::string>{"okonjo"});
    EXPECT_EQ(searchKeys("Baauae").size(), 4U) << "two pairs, each meant or not";
    EXPECT_EQ(searchKeys("Aauoeaeue"), (std::vector<std::string>{"aauoeaeue", "auoau"}))
        << "four pairs: all or none";
}

TEST(SearchNames, ANameAlwaysFindsItself) {
    EXPECT_TRUE(rc::check("every beginning of a name in letters finds it", [] {
        static const std::vector<std::string> letters{
            "a",      "B",      "z",      "7",      " ",          "-",      "'",      "\u00FC",
            "\u00E9", "\u0627", "\u0639", "\u0634", "\u738B",     "\u5C0F", "\uAE40", "\u0416",
            "\u03A9", "\u0301", "\u202E", "\u200D", "\U00020BB7", "\u0905", "\u092E", "\u3072"};
        const auto chosen = *rc::gen::container<std::vector<std::size_t>>(
            rc::gen::inRange<std::size_t>(0, letters.size()));
        std::string name;
        for (const std::size_t i : chosen) name += letters[i];
        RC_ASSERT(finds(name, name));
        for (const std::string& key : searchKeys(name)) RC_ASSERT(!key.empty());
    }));
}

}  // namespace
}  // namespace record
