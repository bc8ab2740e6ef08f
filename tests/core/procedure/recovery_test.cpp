// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>

#include "core/procedure/letters.h"
#include "procedure/lapsequestion.h"
#include "procedure/recovery.h"

namespace {

using letters::ids;
using letters::model;
using letters::Op;
using letters::set;
using procedure::Company;
using procedure::PlanOutcome;
using procedure::questionAt;

/// The plan from `state` with step number `next` to be done next, or a word for its absence.
std::string planFrom(const procedure::Model& m, const char* state, int next,
                     Company company = Company::WithHelper) {
    const auto answer = procedure::findPlan(m, questionAt(m, set(state), next, company));
    switch (answer.outcome) {
        case PlanOutcome::Found:
            return ids(m, answer.plan);
        case PlanOutcome::None:
            return "none";
        case PlanOutcome::NotSought:
            return "not sought";
        case PlanOutcome::TooLarge:
            return "too large";
    }
    return "";
}

const Op useA{.id = "use-a", .needs = "a"};

TEST(Recovery, EmptyPlanIsAPlan) { EXPECT_EQ(planFrom(model({.steps = {useA}}), "a", 1), ""); }

TEST(Recovery, NoneWhenNothingGivesWhatIsMissing) {
    EXPECT_EQ(planFrom(model({.steps = {useA}}), "", 1), "none");
}

TEST(Recovery, NotSoughtWithStopAndCall) {
    const auto m = model({.steps = {useA}});
    const auto question = questionAt(m, set("a"), 1, Company::Alone);
    EXPECT_EQ(procedure::answerLapse(m, packs::Action::StopAndCall, question).outcome,
              PlanOutcome::NotSought);
    EXPECT_EQ(procedure::answerLapse(m, packs::Action::FinishAndCall, question).outcome,
              PlanOutcome::Found);
}

TEST(Recovery, TooLargeWhenItWouldStoreMoreThanTheLimit) {
    const auto m = model({.steps = {useA},
                          .recoveries = {{.id = "b", .gives = "b"},
                                         {.id = "c", .needs = "b", .gives = "c"},
                                         {.id = "a", .needs = "c", .gives = "a"}}});
    const auto question = questionAt(m, set(""), 1, Company::Alone);
    EXPECT_EQ(procedure::findPlan(m, question, 2).outcome, PlanOutcome::TooLarge);
    EXPECT_EQ(procedure::findPlan(m, question, 4).outcome, PlanOutcome::Found);
}

TEST(Recovery, RepeatsOnlyRepeatableStepsBeforeTheNext) {
    const Op give{.id = "give", .gives = "a"};
    Op repeatable = give;
    repeatable.isRepeatable = true;
    EXPECT_EQ(planFrom(model({.steps = {give, useA}}), "", 2), "none");
    EXPECT_EQ(planFrom(model({.steps = {repeatable, useA}}), "", 2), "give");
    EXPECT_EQ(planFrom(model({.steps = {useA, repeatable}}), "", 1), "none");
}

TEST(Recovery, StepLeftOutCountsAsRepeatable) {
    const auto m = model({.steps = {{.id = "give", .gives = "a"}, {.id = "other"}, useA}});
    const std::array also{0};
    const auto question = questionAt(m, set(""), 3, Company::Alone, also);
    EXPECT_EQ(ids(m, procedure::findPlan(m, question).plan), "give");
}

TEST(Recovery, AloneTakesNoOperatorOfAHelperButKeepsTheRemainingSteps) {
    const auto m = model(
        {.steps = {{.id = "use", .needs = "a", .by = packs::By::Helper}},
         .recoveries = {{.id = "helped", .gives = "a", .by = packs::By::Helper},
                        {.id = "own", .gives = "a", .seconds = 9, .by = packs::By::Learner}}});
    EXPECT_EQ(planFrom(m, "", 1, Company::WithHelper), "helped");
    EXPECT_EQ(planFrom(m, "", 1, Company::Alone), "own");
}

TEST(Recovery, RemainingStepsHaveToFitInOrderAndReachTheGoal) {
    const auto m =
        model({.steps = {{.id = "one", .gives = "a", .ends = "b"}, {.id = "two", .needs = "a"}},
               .recoveries = {{.id = "b", .gives = "b"}, {.id = "c", .gives = "c"}},
               .goal = "c"});
    EXPECT_EQ(planFrom(m, "", 1), "c");
    const auto lost = model({.steps = {{.id = "one", .ends = "b"}},
                             .recoveries = {{.id = "b", .gives = "b"}},
                             .goal = "b"});
    EXPECT_EQ(planFrom(lost, "", 1), "none");
}

TEST(Recovery, ForbiddenConditionsAreEnded) {
    const auto m = model(
        {.steps = {{.id = "use", .forbids = "x"}}, .recoveries = {{.id = "clear", .ends = "x"}}});
    EXPECT_EQ(planFrom(m, "x", 1), "clear");
}

// The line (a: device open) is held (b: strip, c: hand) until the device is closed.
TEST(Recovery, NoOperatorBreaksAGuardThatWasKept) {
    const auto m = model({.steps = {{.id = "use", .needs = "d"}},
                          .recoveries = {{.id = "let-go", .gives = "d", .ends = "b", .seconds = 1},
                                         {.id = "close", .gives = "d", .ends = "ab", .seconds = 5}},
                          .guards = {{"a", "b"}}});
    EXPECT_EQ(planFrom(m, "ab", 1), "close");
}

TEST(Recovery, StateAfterTheLapseMayBreakGuardsAndThePlanMendsThem) {
    const auto m =
        model({.steps = {{.id = "use", .needs = "a"}},
               .recoveries = {{.id = "wander", .gives = "c"}, {.id = "hold", .gives = "b"}},
               .guards = {{"a", "b"}}});
    EXPECT_EQ(planFrom(m, "a", 1), "hold");
}

TEST(Recovery, GuardsAreKeptAfterEveryRemainingStep) {
    const auto m = model({.steps = {{.id = "open", .gives = "a"}, {.id = "close", .ends = "a"}},
                          .recoveries = {{.id = "hold", .gives = "b"}},
                          .guards = {{"a", "b"}}});
    EXPECT_EQ(planFrom(m, "", 1), "hold");
}

TEST(Recovery, LeastStrainComesBeforeSeconds) {
    const auto m = model({.steps = {useA},
                          .recoveries = {{.id = "fast", .gives = "a", .seconds = 1, .strain = 1},
                                         {.id = "mild", .gives = "a", .seconds = 99}}});
    EXPECT_EQ(planFrom(m, "", 1), "mild");
}

TEST(Recovery, SecondsComeBeforeTheNumberOfOperators) {
    const auto m =
        model({.steps = {useA},
               .recoveries = {{.id = "one", .gives = "a", .seconds = 3},
                              {.id = "two", .gives = "b", .seconds = 1},
                              {.id = "three", .needs = "b", .gives = "a", .seconds = 1}}});
    EXPECT_EQ(planFrom(m, "", 1), "two three");
}

TEST(Recovery, FewestOperatorsAmongEqualTimes) {
    const auto m = model({.steps = {useA},
                          .recoveries = {{.id = "two", .gives = "b", .seconds = 1},
                                         {.id = "three", .needs = "b", .gives = "a", .seconds = 1},
                                         {.id = "one", .gives = "a", .seconds = 2}}});
    EXPECT_EQ(planFrom(m, "", 1), "one");
}

TEST(Recovery, PackOrderSettlesEqualsOperatorByOperator) {
    const auto m =
        model({.steps = {{.id = "step", .gives = "b", .isRepeatable = true},
                         {.id = "use", .needs = "ab"}},
               .recoveries = {{.id = "first", .gives = "a"}, {.id = "second", .gives = "a"}}});
    EXPECT_EQ(planFrom(m, "", 2), "step first");
}

TEST(Recovery, IsWayOpenSaysWhatAPlanHasToReach) {
    const auto m = model({.steps = {useA}, .guards = {{"a", "b"}}});
    const std::array remaining{0};
    EXPECT_TRUE(procedure::isWayOpen(m, remaining, set("ab")));
    EXPECT_FALSE(procedure::isWayOpen(m, remaining, set("a")));
    EXPECT_FALSE(procedure::isWayOpen(m, remaining, set("b")));
}

TEST(LapseQuestion, DuringAStepTheStepIsStillToBeDoneWhole) {
    auto m = model({.steps = {{.id = "wash", .gives = "a", .isRepeatable = true},
                              {.id = "use", .needs = "a", .isRepeatable = true}},
                    .clean = "a"});
    m.lapses = {letters::lapse("a")};
    const auto during =
        procedure::answerQuestion(m, {.seen = procedure::Seen::During, .step = 0, .lapses = {0}});
    EXPECT_EQ(ids(m, during.plan.plan), "");
    const auto after =
        procedure::answerQuestion(m, {.seen = procedure::Seen::After, .step = 0, .lapses = {0}});
    EXPECT_EQ(ids(m, after.plan.plan), "wash");
}

TEST(LapseQuestion, LateNoticeFollowsTheSpoilingFromWhereItHappened) {
    auto m = model({.steps = {{.id = "wash", .gives = "a", .isRepeatable = true},
                              {.id = "lay", .needs = "a", .gives = "b", .isRepeatable = true},
                              {.id = "use", .needs = "b"}},
                    .clean = "ab"});
    m.lapses = {letters::lapse("a")};
    const procedure::LapseQuestion atOnce{.step = 1, .lapses = {0}};
    EXPECT_EQ(ids(m, procedure::answerQuestion(m, atOnce).plan.plan), "");
    const procedure::LapseQuestion late{.step = 1, .lapses = {0}, .happened = 0};
    EXPECT_EQ(ids(m, procedure::answerQuestion(m, late).plan.plan), "wash lay");
}

TEST(LapseQuestion, LeftOutStepIsDoneAgainWithWhatWasBuiltOnIt) {
    const auto m = model({.steps = {{.id = "wash", .gives = "a"},
                                    {.id = "lay", .needs = "a", .gives = "b", .isRepeatable = true},
                                    {.id = "use", .needs = "b"}},
                          .clean = "ab"});
    const procedure::LapseQuestion question{.step = 1, .leftOut = 0};
    EXPECT_EQ(ids(m, procedure::answerQuestion(m, question).plan.plan), "wash lay");
}

}  // namespace
