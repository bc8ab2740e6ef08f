// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/payload.h"

#include <gtest/gtest.h>

#include <set>

namespace record {
namespace {

TEST(Payload, EveryTypeHasItsOwnName) {
    std::set<std::string> names;
    for (const std::string& type : allTypes()) EXPECT_TRUE(names.insert(type).second) << type;
    EXPECT_EQ(names.size(), std::variant_size_v<Payload>);
}

TEST(Payload, ComesBackAsItWent) {
    practice::SeeLapse lapse;
    lapse.lapses = {"skin-touched"};
    lapse.other = practice::OtherLapse{.what = "sleeve", .touched = {"field-clean"}};
    lapse.happened = "scrub-across";
    const Payload payload = lapse;
    const auto back = readPayload(typeOf(payload), dataOf(payload));
    ASSERT_TRUE(back.ok()) << base::english(back.error());
    EXPECT_EQ(*back, payload);
}

TEST(Payload, RefusesWhatItDoesNotKnow) {
    const auto unknown = readPayload("dance", nlohmann::json::object());
    ASSERT_FALSE(unknown.ok());
    EXPECT_EQ(unknown.error().code, base::Code::UnknownType);
    const auto extra = readPayload("paused", {{"why", "tea"}});
    ASSERT_FALSE(extra.ok());
    EXPECT_EQ(extra.error(), (base::Error{base::Code::BadField, {"/why", "is not known"}}));
    const auto missing = readPayload("step-seen", nlohmann::json::object());
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.error().args.front(), "/step");
    EXPECT_FALSE(readPayload("visit-stopped", {{"why", "bored"}}).ok());
    EXPECT_FALSE(
        readPayload("measured", {{"measure", "m"}, {"moment", "found"}, {"mm", 1.5}}).ok());
    EXPECT_FALSE(
        readPayload("measured", {{"measure", "m"}, {"moment", "found"}, {"mm", 5e9}}).ok());
}

}  // namespace
}  // namespace record
