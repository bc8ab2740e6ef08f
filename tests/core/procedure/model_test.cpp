// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Each test is one sentence of the pack language's part "What it means".
#include <gtest/gtest.h>

#include <array>

#include "core/procedure/letters.h"
#include "procedure/model.h"

namespace {

using letters::lapse;
using letters::model;
using letters::op;
using letters::set;

TEST(Model, StepFitsWhenAllItNeedsHoldsAndNothingItForbids) {
    const auto step = op({.needs = "ab", .forbids = "cd"});
    EXPECT_TRUE(procedure::fits(step, set("ab")));
    EXPECT_TRUE(procedure::fits(step, set("abe")));
    EXPECT_FALSE(procedure::fits(step, set("a")));
    EXPECT_FALSE(procedure::fits(step, set("abd")));
}

TEST(Model, DoingAStepEndsThenGives) {
    const auto step = op({.gives = "c", .ends = "a"});
    EXPECT_EQ(procedure::apply(step, set("ab")), set("bc"));
    EXPECT_EQ(procedure::apply(step, set("b")), set("bc"));
}

TEST(Model, GuardIsKeptUnlessAllOfWhileHoldAndSomeOfHoldsDoesNot) {
    const procedure::ModelGuard guard{"g", set("ab"), set("cd")};
    EXPECT_TRUE(procedure::isKept(guard, set("a")));
    EXPECT_TRUE(procedure::isKept(guard, set("abcd")));
    EXPECT_FALSE(procedure::isKept(guard, set("abc")));
}

TEST(Model, BreakingAGuardAsksOnlyForThoseKeptBefore) {
    const auto m = model({.guards = {{"a", "b"}}});
    EXPECT_TRUE(procedure::breaksAGuard(m, set("ab"), set("a")));
    EXPECT_FALSE(procedure::breaksAGuard(m, set("a"), set("ac")));
}

TEST(Model, NominalStatesFollowTheSteps) {
    const auto m = model({.steps = {{.gives = "b"}, {.gives = "c", .ends = "a"}}, .start = "a"});
    const auto states = procedure::nominalStates(m);
    ASSERT_EQ(states.size(), 3U);
    EXPECT_EQ(states[0], set("a"));
    EXPECT_EQ(states[1], set("ab"));
    EXPECT_EQ(states[2], set("bc"));
}

TEST(Model, LapseBreaksThenSets) {
    EXPECT_EQ(procedure::afterLapse(lapse("a", "c"), set("ab")), set("bc"));
}

TEST(Model, LateNoticeWithNothingDoneSinceIsTheLapseItself) {
    const auto m = model({});
    EXPECT_EQ(procedure::noticedLate(m, lapse("a", "c"), {}, set("ab")), set("bc"));
}

// Gloved hands (a, clean) were touched, then the field (b, clean) and a note (c) were made with
// them.
TEST(Model, WhatIsDoneWithTheSpoiledSpoilsWhatATouchCanSpoil) {
    const auto m = model({.steps = {{.needs = "a", .gives = "bc"}}, .clean = "ab"});
    const std::array done{0};
    EXPECT_EQ(procedure::noticedLate(m, lapse("a"), done, set("abc")), set("c"));
}

TEST(Model, SpoilingGoesOnFromStepToStep) {
    const auto m = model(
        {.steps = {{.needs = "a", .gives = "b"}, {.needs = "b", .gives = "c"}}, .clean = "abc"});
    const std::array done{0, 1};
    EXPECT_EQ(procedure::noticedLate(m, lapse("a"), done, set("abc")), set(""));
}

TEST(Model, WhatIsGivenAnewWithoutTheSpoiledIsSpoiledNoLonger) {
    const auto m = model({.steps = {{.needs = "b", .gives = "a"}}, .clean = "a"});
    const std::array done{0};
    EXPECT_EQ(procedure::noticedLate(m, lapse("a"), done, set("ab")), set("ab"));
}

TEST(Model, WhatIsGivenWithTheSpoiledButIsNotCleanIsSpoiledNoLonger) {
    const auto m = model({.steps = {{.needs = "a", .gives = "b"}}, .clean = "a"});
    const std::array done{0};
    EXPECT_EQ(procedure::noticedLate(m, lapse("ab"), done, set("ab")), set("b"));
}

TEST(Model, WhatAStepEndsIsNeitherSpoiledNorSet) {
    const auto m = model({.steps = {{.ends = "ac"}, {.needs = "a", .gives = "b"}}, .clean = "ab"});
    const std::array done{0, 1};
    EXPECT_EQ(procedure::noticedLate(m, lapse("a", "c"), done, set("b")), set("b"));
    EXPECT_EQ(procedure::noticedLate(m, lapse("a", "d"), done, set("b")), set("bd"));
}

TEST(Model, LateNoticeTakesWhatWasReallyDoneInItsOrder) {
    const auto m = model(
        {.steps = {{.needs = "a", .gives = "b"}}, .recoveries = {{.gives = "a"}}, .clean = "ab"});
    const std::array usedThenRenewed{0, 1};
    const std::array renewedThenUsed{1, 0};
    EXPECT_EQ(procedure::noticedLate(m, lapse("a"), usedThenRenewed, set("ab")), set("a"));
    EXPECT_EQ(procedure::noticedLate(m, lapse("a"), renewedThenUsed, set("ab")), set("ab"));
}

TEST(Model, LeftOutBreaksWhatItGivesAndSetsWhatItWouldHaveEnded) {
    const auto left = procedure::leftOut(op({.gives = "a", .ends = "bc"}), set("bd"));
    EXPECT_EQ(left.breaks, set("a"));
    EXPECT_EQ(left.sets, set("b"));
    EXPECT_EQ(left.action, packs::Action::Recover);
}

TEST(Model, SeveralLapsesAreOneWithTheGravestAction) {
    const std::array lapses{lapse("a", "c", packs::Action::FinishAndCall), lapse("b", "d")};
    const auto all = procedure::together(lapses);
    EXPECT_EQ(all.breaks, set("ab"));
    EXPECT_EQ(all.sets, set("cd"));
    EXPECT_EQ(all.action, packs::Action::FinishAndCall);
    const std::array graver{lapses[0], lapse("", "", packs::Action::StopAndCall)};
    EXPECT_EQ(procedure::together(graver).action, packs::Action::StopAndCall);
}

}  // namespace
