// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What lies on a line and may hold what the patient reacts to. From memory, by what such things are
// made of.
#include "desk/kitallergies.h"

#include <gtest/gtest.h>

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

}  // namespace
}  // namespace desk
