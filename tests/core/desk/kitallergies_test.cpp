// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What lies on a line and may hold what the patient reacts to. From memory, by what such things are
// made of.
#include "desk/kitallergies.h"

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>

#include "support/paths.h"

namespace desk {
namespace {

std::vector<KitAllergy> found(std::vector<record::Allergy> known, const char* dressing,
                              const char* securement, const char* antiseptic) {
    record::AddLine line;
    line.dressing = dressing;
    line.securement = securement;
    line.antiseptic = antiseptic;
    return kitAllergies(record::Stated<record::AskAllergies>{{std::move(known)}, {}}, line);
}

using Found = std::vector<KitAllergy>;

TEST(KitAllergies, EachThingIsNamedWithWhatItHoldsOfThem) {
    EXPECT_EQ(found({{"chlorhexidine", ""}}, "transparent-antiseptic", "adhesive-device",
                    "chlorhexidine-alcohol"),
              (Found{{"transparent-antiseptic", "chlorhexidine"},
                     {"chlorhexidine-alcohol", "chlorhexidine"}}));
    EXPECT_EQ(found({{"alcohol", ""}, {"iodine", "itch"}}, "", "", "iodine-tincture"),
              (Found{{"iodine-tincture", "iodine"}, {"iodine-tincture", "alcohol"}}));
    EXPECT_EQ(found({{"adhesive", ""}}, "transparent", "sutures", "povidone-iodine"),
              (Found{{"transparent", "adhesive"}}));
}

TEST(KitAllergies, WhatHoldsNoneOfThemIsNotNamed) {
    EXPECT_EQ(found({{"iodine", ""}, {"latex", ""}}, "transparent", "adhesive-device",
                    "chlorhexidine-alcohol"),
              Found());
    EXPECT_EQ(found({}, "transparent", "adhesive-device", "chlorhexidine-alcohol"), Found());
    record::AddLine line;
    line.antiseptic = "alcohol";
    EXPECT_EQ(kitAllergies(std::nullopt, line), Found()) << "nobody asked";
}

std::vector<std::string> untold(std::vector<record::Allergy> known, const record::AddLine& line) {
    std::vector<std::string> words;
    for (const auto& one :
         untoldAllergies(record::Stated<record::AskAllergies>{{std::move(known)}, {}}, line))
        words.push_back(one.allergen);
    return words;
}

using Untold = std::vector<std::string>;

// Glue may be acrylate or silicone, and where latex is nobody sees by a kit's name.
TEST(KitAllergies, WhatNoKitTellsOfIsNotKnown) {
    record::AddLine line;
    line.dressing = "transparent";
    EXPECT_EQ(
        untold({{"acrylate", ""}, {"latex", "blisters"}, {"silicone", ""}, {"other", "ink"}}, line),
        (Untold{"acrylate", "latex", "silicone", "other"}));
    EXPECT_EQ(untold({{"adhesive", ""}, {"iodine", ""}, {"latex", ""}}, line), Untold{"latex"})
        << "of what the others are in, the table knows";
    EXPECT_EQ(untold({}, line), Untold());
    EXPECT_TRUE(untoldAllergies(std::nullopt, line).empty()) << "nobody asked";
    for (std::string record::AddLine::*part :
         {&record::AddLine::securement, &record::AddLine::antiseptic}) {
        record::AddLine other;
        other.*part = "something";
        EXPECT_EQ(untold({{"latex", ""}}, other), Untold{"latex"});
    }
    line.dressing = "";
    line.securement = "none";
    EXPECT_EQ(untold({{"latex", ""}}, line), Untold()) << "nothing lies on it";
}

// A word that is added to the list is either in the table or said to be unknown, never passed over.
TEST(KitAllergies, EachWordOfTheListIsFoundOrSaidToBeUnknown) {
    std::ifstream file(support::sourceDir() + "/shared/codes/allergen.json");
    const auto list = nlohmann::json::parse(file);
    record::AddLine line;
    line.dressing = "transparent-antiseptic";
    line.securement = "adhesive-device";
    for (const char* antiseptic : {"chlorhexidine-alcohol", "iodine-tincture"}) {
        line.antiseptic = antiseptic;
        for (const auto& word : list["words"]) {
            const std::string id = word["id"];
            const bool isFound =
                !found({{id, ""}}, line.dressing.c_str(), line.securement.c_str(), antiseptic)
                     .empty();
            const bool isElsewhere = id == "iodine" && line.antiseptic != "iodine-tincture";
            EXPECT_TRUE(isFound || isElsewhere || !untold({{id, ""}}, line).empty()) << id;
        }
    }
}

}  // namespace
}  // namespace desk
