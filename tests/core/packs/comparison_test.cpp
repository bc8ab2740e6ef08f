// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A line that moved: one rule, in millimetres against insertion, out or in; marks are one way to
// measure. A difference of three marks is the common-practice limit (no published source); the
// number is local policy and stands in the pack. Examples reckoned by hand.
#include "packs/comparison.h"

#include <gtest/gtest.h>

namespace {

using packs::Bound;
using packs::compare;
using packs::Counted;

/// As the weekly pack has it: a mark each 10 mm, call at 30 mm either way.
packs::Measure length() {
    packs::Measure measure;
    measure.id = "outside-length";
    measure.baseline = true;
    measure.way = packs::Way::Either;
    measure.callAt = 30;
    measure.markMm = 10;
    return measure;
}

TEST(Comparison, ThreeMarksMoreAreThirtyMillimetresOut) {
    const auto found = compare(length(), {.mm = 40, .marks = 4}, {.marks = 7});
    ASSERT_TRUE(found.has_value());
    EXPECT_FALSE(found->byMm.has_value());
    EXPECT_EQ(found->changeMm(), 30);
    EXPECT_EQ(found->bound, Bound::Call);
}

TEST(Comparison, ThreeMarksFewerAreThirtyMillimetresIn) {
    const auto found = compare(length(), {.mm = 40, .marks = 4}, {.marks = 1});
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->changeMm(), -30);
    EXPECT_EQ(found->bound, Bound::Call);
}

TEST(Comparison, TwoMarksAreWithinTheLimit) {
    EXPECT_EQ(compare(length(), {.mm = 40, .marks = 4}, {.marks = 6})->bound, Bound::Within);
    EXPECT_EQ(compare(length(), {.mm = 40, .marks = 4}, {.marks = 2})->bound, Bound::Within);
}

TEST(Comparison, TheDistanceOfMarksIsThePacks) {
    packs::Measure wide = length();
    wide.markMm = 20;
    const auto found = compare(wide, {.mm = 40, .marks = 2}, {.marks = 4});
    EXPECT_EQ(found->changeMm(), 40);
    EXPECT_EQ(found->bound, Bound::Call);
    wide.markMm.reset();
    EXPECT_FALSE(compare(wide, {.mm = 40, .marks = 2}, {.marks = 4}).has_value());
}

TEST(Comparison, MarksAreNotHeldAgainstMillimetres) {
    EXPECT_FALSE(compare(length(), {.mm = 40, .marks = {}}, {.marks = 7}).has_value());
    EXPECT_FALSE(compare(length(), {.mm = {}, .marks = 4}, {.mm = 70}).has_value());
}

TEST(Comparison, TheGraverOfTheTwoCounts) {
    const Counted put{.mm = 40, .marks = 4};
    EXPECT_EQ(compare(length(), put, {.mm = 41, .marks = 7})->bound, Bound::Call);
    EXPECT_EQ(compare(length(), put, {.mm = 71, .marks = 4})->bound, Bound::Call);
    EXPECT_EQ(compare(length(), put, {.mm = 41, .marks = 5})->bound, Bound::Within);
    EXPECT_EQ(compare(length(), put, {.mm = 41, .marks = 7})->changeMm(), 1);
}

TEST(Comparison, TwoMarksApartDoNotAgree) {
    const Counted put{.mm = 40, .marks = 4};
    EXPECT_TRUE(compare(length(), put, {.mm = 59, .marks = 4})->doAgree);
    EXPECT_FALSE(compare(length(), put, {.mm = 60, .marks = 4})->doAgree);
    EXPECT_FALSE(compare(length(), put, {.mm = 40, .marks = 2})->doAgree);
}

TEST(Comparison, TheWayDecidesWhatMatters) {
    packs::Measure girth = length();
    girth.way = packs::Way::More;
    girth.markMm.reset();
    EXPECT_EQ(compare(girth, {.mm = 270}, {.mm = 300})->bound, Bound::Call);
    EXPECT_EQ(compare(girth, {.mm = 270}, {.mm = 240})->bound, Bound::Within);
    packs::Measure in = length();
    in.way = packs::Way::In;
    EXPECT_EQ(compare(in, {.mm = 40}, {.mm = 10})->bound, Bound::Call);
    EXPECT_EQ(compare(in, {.mm = 40}, {.mm = 90})->bound, Bound::Within);
}

TEST(Comparison, TellStandsBelowCall) {
    packs::Measure measure = length();
    measure.tellAt = 10;
    EXPECT_EQ(compare(measure, {.marks = 4}, {.marks = 5})->bound, Bound::Tell);
    EXPECT_EQ(compare(measure, {.marks = 4}, {.marks = 7})->bound, Bound::Call);
}

// Reckoned by hand: four marks have three distances between them. Both are read to the nearest
// mark, so less than one distance apart is no contradiction; where the first mark stands is not
// known, so a long line with few marks is none either.
TEST(Contradiction, MarksReachAtLeastFromTheFirstToTheLast) {
    using packs::contradict;
    EXPECT_TRUE(contradict(10, {.mm = 4, .marks = 4}));
    EXPECT_TRUE(contradict(10, {.mm = 20, .marks = 4}));
    EXPECT_FALSE(contradict(10, {.mm = 21, .marks = 4}));
    EXPECT_FALSE(contradict(10, {.mm = 40, .marks = 4}));
    EXPECT_FALSE(contradict(10, {.mm = 200, .marks = 4}));
    EXPECT_FALSE(contradict(5, {.mm = 20, .marks = 4}));
    EXPECT_FALSE(contradict(10, {.mm = 0, .marks = 1}));
    EXPECT_FALSE(contradict(10, {.mm = 4, .marks = {}}));
    EXPECT_FALSE(contradict(10, {.mm = {}, .marks = 4}));
}

}  // namespace
