// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <set>

#include "base/clock.h"
#include "base/id.h"
#include "base/result.h"

namespace base {
namespace {

TEST(Id, IsTwentySixLettersAndNeverTheSame) {
    std::set<std::string> seen;
    for (int i = 0; i < 1000; ++i) {
        const std::string text = randomIdText();
        EXPECT_TRUE(isIdText(text)) << text;
        EXPECT_TRUE(seen.insert(text).second);
    }
}

TEST(Id, RefusesWhatIsNoId) {
    const char* const bad[] = {"",
                               "abc",
                               "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
                               "abcdefghijklmnopqrstuvwxy1",
                               "abcdefghijklmnopqrstuvwxyb",
                               "aaaaaaaaaaaaaaaaaaaaaaaaaaa"};
    for (const char* text : bad) {
        const auto parsed = PatientId::parse(text);
        ASSERT_FALSE(parsed.ok()) << text;
        EXPECT_EQ(parsed.error().code, Code::BadId);
    }
    EXPECT_TRUE(PatientId::parse("aaaaaaaaaaaaaaaaaaaaaaaaae").ok());
}

TEST(Error, FillsItsSentence) {
    EXPECT_EQ(english({Code::BadField, {"/steps/0", "is missing"}}), "/steps/0: is missing");
    for (const Code code : allCodes()) {
        EXPECT_EQ(codeOf(slug(code)), code);
        EXPECT_FALSE(english({code, {}}).empty());
    }
}

TEST(Clock, SuspendStopsOnlyTheMonotonicClock) {
    ManualClock clock({.wallMs = 1000, .bootMs = 50, .monoMs = 40, .bootId = "b", .zone = "UTC"});
    clock.advanceMs(10);
    clock.suspendMs(100);
    EXPECT_EQ(clock.now().wallMs, 1110);
    EXPECT_EQ(clock.now().bootMs, 160);
    EXPECT_EQ(clock.now().monoMs, 50);
}

// ISO 8601; the day after 29 February 2024 by the Gregorian calendar.
TEST(Clock, WritesAndReadsUtc) {
    EXPECT_EQ(isoUtc(0), "1970-01-01T00:00:00.000Z");
    EXPECT_EQ(parseIsoUtc("2024-03-01T00:00:00.000Z"),
              parseIsoUtc("2024-02-29T00:00:00.000Z").value() + 86400000);
    EXPECT_EQ(parseIsoUtc("2024-02-30T00:00:00.000Z"), std::nullopt);
    EXPECT_EQ(parseIsoUtc("2024-02-01T00:00:00.000+01:00"), std::nullopt);
}

}  // namespace
}  // namespace base
