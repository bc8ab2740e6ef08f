// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A body's text, put together and read member by member, held against nlohmann/json and RFC 8785.
#include "ledger/bodytext.h"

#include <gtest/gtest.h>

#include "changedtext.h"

namespace ledger {
namespace {

using base::Code;
using nlohmann::json;

Body least() {
    Body body{.id = base::CommandId::random(), .type = "t"};
    body.atMs = *base::parseIsoUtc("2026-11-24T14:32:05.120Z");
    body.must = false;
    return body;
}

Body full() {
    Body body = least();
    body.must = true;
    body.tv = 3;
    body.offsetMinutes = -300;
    body.zone = "America/New_York";
    body.by = base::StaffId::random();
    body.role = "teacher";
    body.app = "ninebark 0.1.0";
    body.visit = base::VisitId::random();
    body.about = {base::randomIdText(), base::randomIdText()};
    body.basis = {{base::LedgerId::random(), 7}, {base::LedgerId::random(), 0}};
    body.data = {{"step", "hand-wash"}, {"ms", 31200}, {"deep", {{"a", {1, -2, true, nullptr}}}}};
    body.sigs = {{{"purpose", "1"}, {"signature", "x"}}};
    return body;
}

Body withNote(const char* note) {
    Body body = full();
    body.data["note"] = note;
    return body;
}

TEST(BodyText, IsCanonicalAndHasWhatTheBodyHas) {
    for (const Body& body : {least(), full(), withNote("\"q\"\n\xc3\xa4")}) {
        const std::string text = *bodyText(body, Signatures::With);
        EXPECT_TRUE(isCanonical(text)) << text;
        json parsed = json::parse(text);
        EXPECT_EQ(parsed["data"], body.data);
        EXPECT_EQ(parsed["sigs"], body.sigs);
        EXPECT_EQ(parsed["id"], body.id.text());
        EXPECT_EQ(parsed.size(), body.visit ? 15U : 12U);
        parsed.erase("sigs");
        EXPECT_EQ(bodyText(body, Signatures::Without).value(), *jcs(parsed));
        EXPECT_EQ(readBodyText(text).value(), body);
    }
}

TEST(BodyText, IsScannedWhereItHoldsNothingUnusual) {
    for (const Body& body : {least(), full()})
        EXPECT_EQ(scanBody(*bodyText(body, Signatures::With)), body);
    for (const char* note : {"\"q\"", "\n", "\xc3\xa4"})
        EXPECT_FALSE(scanBody(*bodyText(withNote(note), Signatures::With)).has_value()) << note;
}

TEST(BodyText, WhatIsScannedAfterAChangeIsWhatItSays) {
    constexpr unsigned seed = 20261127;
    std::mt19937 random(seed);
    int scannedOnes = 0;
    for (int round = 0; round < 40'000; ++round) {
        const std::string text =
            changed(*bodyText(round % 2 == 0 ? full() : least(), Signatures::With), random);
        const auto scanned = scanBody(text);
        if (!scanned) continue;
        ++scannedOnes;
        ASSERT_TRUE(isCanonical(text)) << text;
        ASSERT_EQ(*bodyText(*scanned, Signatures::With), text);
    }
    EXPECT_GT(scannedOnes, 1000);
}

/// The whole body with one member of another value, or without it.
std::string textWith(const char* member, const json& value) {
    json parsed = json::parse(*bodyText(full(), Signatures::With));
    if (value.is_discarded())
        parsed.erase(member);
    else
        parsed[member] = value;
    return *jcs(parsed);
}

TEST(BodyText, EachMemberIsHeldToWhatItMayBe) {
    const std::string ledger = base::randomIdText();
    const std::pair<const char*, json> bad[] = {{"about", json::array()},
                                                {"about", {"x"}},
                                                {"about", {1}},
                                                {"about", "x"},
                                                {"app", 1},
                                                {"at", "2026-02-30T00:00:00.000Z"},
                                                {"at", ""},
                                                {"basis", json::object()},
                                                {"basis", {{"x", 1}}},
                                                {"basis", {{ledger, -1}}},
                                                {"basis", {{ledger, "1"}}},
                                                {"by", "x"},
                                                {"by", 1},
                                                {"data", json::array()},
                                                {"data", nullptr},
                                                {"id", "x"},
                                                {"id", nullptr},
                                                {"more", 1},
                                                {"must", 1},
                                                {"offset", largestOffset + 1},
                                                {"offset", -largestOffset - 1},
                                                {"role", nullptr},
                                                {"sigs", json::object()},
                                                {"tv", 0},
                                                {"tv", largestVersion + 1},
                                                {"type", ""},
                                                {"visit", "x"},
                                                {"visit", nullptr},
                                                {"zone", 1}};
    for (const auto& [member, value] : bad) {
        const std::string text = textWith(member, value);
        EXPECT_FALSE(scanBody(text).has_value()) << text;
        EXPECT_EQ(readBodyText(text).error().code, Code::LedgerBadEntry) << text;
    }
    for (const char* member :
         {"app", "at", "by", "data", "id", "must", "offset", "role", "sigs", "tv", "type", "zone"})
        EXPECT_FALSE(readBodyText(textWith(member, json(json::value_t::discarded))).ok()) << member;
}

TEST(BodyText, LedgersThatItRestsOnComeInTheirOrder) {
    Body body = least();
    body.basis = {{base::LedgerId::random(), 7}, {base::LedgerId::random(), 7}};
    const std::string text = *bodyText(body, Signatures::With);
    const std::string first = '"' + body.basis.begin()->first.text() + "\":7";
    const std::string second = '"' + body.basis.rbegin()->first.text() + "\":7";
    for (const std::string& other : {second + "," + first, first + "," + first}) {
        std::string swapped = text;
        const std::size_t from = text.find("\"basis\":{") + 9;
        swapped.replace(from, text.find('}', from) - from, other);
        EXPECT_FALSE(scanBody(swapped).has_value()) << swapped;
        EXPECT_EQ(readBodyText(swapped).error().code, Code::LedgerNotCanonical) << swapped;
    }
}

TEST(BodyText, WhatCanNotBeReadBackIsNotWritten) {
    Body body = full();
    body.data = {{"length", 1.5}};
    EXPECT_EQ(bodyText(body, Signatures::With).error().code, Code::LedgerBadNumber);
    body = full();
    body.zone = "\xff";
    EXPECT_EQ(bodyText(body, Signatures::With).error().code, Code::LedgerBadText);
    body = full();
    body.type = {};
    EXPECT_EQ(bodyText(body, Signatures::Without).error().code, Code::LedgerBadEntry);
}

}  // namespace
}  // namespace ledger
