// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The list of errors itself, and how one is told.
#include "base/result.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <set>

namespace base {
namespace {

TEST(ErrorCodes, EachHasItsOwnSlugInTwoParts) {
    std::set<std::string> seen;
    for (const Code code : allCodes()) {
        const std::string text = slug(code);
        EXPECT_TRUE(seen.insert(text).second) << text;
        EXPECT_EQ(std::count(text.begin(), text.end(), '/'), 1) << text;
        EXPECT_TRUE(std::all_of(text.begin(), text.end(), [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == '/';
        })) << text;
    }
    EXPECT_EQ(codeOf("no/such"), std::nullopt);
    EXPECT_EQ(codeOf(""), std::nullopt);
}

TEST(ErrorCodes, TheirEnglishIsCalm) {
    for (const Code code : allCodes()) {
        const std::string text = english({code, {}});
        EXPECT_EQ(text.find('!'), std::string::npos) << text;
        EXPECT_FALSE(text.ends_with('.')) << text << ": a line of a log, not a sentence";
    }
}

TEST(ErrorText, FillsEveryGapItHasWordsFor) {
    EXPECT_EQ(english({Code::FileUnreadable, {"a.db", "cut short"}}),
              "a.db can't be read: cut short");
    EXPECT_EQ(english({Code::FileUnreadable, {"a.db"}}), "a.db can't be read: %2");
    EXPECT_EQ(english({Code::VisitPaused, {"too", "many"}}), "the visit is paused");
    // What stands in an argument is never taken for a gap.
    EXPECT_EQ(english({Code::BadField, {"%2", "is missing"}}), "%2: is missing");
}

TEST(Result, HoldsAValueOrWhyThereIsNone) {
    Result<std::string> good = std::string("x");
    EXPECT_TRUE(good.ok() && good);
    EXPECT_EQ(*good + good.value(), "xx");
    EXPECT_EQ(good->size(), 1U);
    const Result<std::string> bad = Error{Code::NoDate};
    EXPECT_FALSE(bad.ok() || bad);
    EXPECT_EQ(bad.error().code, Code::NoDate);
    Result<std::unique_ptr<int>> owned = std::make_unique<int>(7);
    const std::unique_ptr<int> taken = *std::move(owned);
    EXPECT_EQ(*taken, 7);
}

}  // namespace
}  // namespace base
