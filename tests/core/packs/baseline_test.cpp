// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/baseline.h"

#include <gtest/gtest.h>

namespace {

using packs::Baseline;

packs::Measure named(const char* id, std::optional<int> markMm) {
    packs::Measure measure;
    measure.id = id;
    measure.baseline = true;
    measure.markMm = markMm;
    return measure;
}

// What a measure is compared with is told by its id; printed marks alone are no sign of a length
// where the id says girth, nor is their absence a sign of girth.
TEST(Baseline, IsToldByTheId) {
    EXPECT_EQ(packs::baselineOf(named("outside-length", std::nullopt)), Baseline::OutsideLength);
    EXPECT_EQ(packs::baselineOf(named("outside-length", 10)), Baseline::OutsideLength);
    EXPECT_EQ(packs::baselineOf(named("arm-girth", std::nullopt)), Baseline::ArmGirth);
    EXPECT_EQ(packs::baselineOf(named("arm-girth", 10)), Baseline::ArmGirth);
}

TEST(Baseline, UnderAnotherIdOnlyMarksTellALength) {
    EXPECT_EQ(packs::baselineOf(named("hub-to-skin", 10)), Baseline::OutsideLength);
    EXPECT_EQ(packs::baselineOf(named("temperature", std::nullopt)), Baseline::None);
}

TEST(Baseline, AMeasureWithoutOneIsComparedWithNothing) {
    packs::Measure measure = named("arm-girth", std::nullopt);
    measure.baseline = false;
    EXPECT_EQ(packs::baselineOf(measure), Baseline::None);
}

}  // namespace
