// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is marked after a take-over that the plan does not cover is marked so. Rules of our own, no
// source.
#include <gtest/gtest.h>

#include "support/ward.h"

namespace practice {
namespace {

class Judgement : public testing::Test {
  protected:
    Judgement() { ward.openVisit(Way::ReturnDemonstration, On::PracticeArm); }
    const State& state() const { return ward.visit().state; }
    void see(const std::string& step) {
        while (const packs::Phase* phase = phaseToDo(ward.taught().pack, state())) {
            ward.must(BeginPhase{.step = step, .phase = phase->id});
            ward.clock().advanceMs(std::int64_t{phase->targetSeconds} * 1000);
            ward.must(EndPhase{.step = step, .phase = phase->id});
        }
        ward.must(SeeStep{{.step = step}});
    }
    support::Ward ward{"weekly-dressing-upper-arm"};
};

TEST_F(Judgement, AStepThatThePlanCoversIsNot) {
    ward.doStepInHand();
    EXPECT_FALSE(state().steps[0].byJudgement);
    ward.must(TakeOver{.why = "tired"});
    EXPECT_FALSE(state().planLost);
    ward.doStepInHand();
    EXPECT_TRUE(state().steps[1].byTeacher);
    EXPECT_FALSE(state().steps[1].byJudgement);
}

TEST_F(Judgement, WithoutAWayBackTheTeacherGoesOnByJudgement) {
    ward.doStepInHand();
    ward.must(SeeLapse{.lapses = {"line-out"}});
    EXPECT_FALSE(inHand(state()).has_value());
    ward.must(TakeOver{.why = "the line came out"});
    EXPECT_TRUE(state().planLost);
    ASSERT_TRUE(inHand(state()).has_value());
    see(recordInHand(state())->step);
    EXPECT_TRUE(state().steps[1].byJudgement);
    EXPECT_FALSE(state().steps[0].byJudgement);
}

TEST_F(Judgement, ASecondLapseWithoutAWayBackDoesNotHoldTheTeacherUp) {
    ward.doStepInHand();
    ward.must(TakeOver{.why = "tired"});
    ward.must(SeeLapse{.lapses = {"line-out"}});
    EXPECT_TRUE(state().planLost);
    ASSERT_TRUE(inHand(state()).has_value());
    EXPECT_FALSE(state().lapses.front().solved);
}

TEST_F(Judgement, NoSecondsAreLeftWhereNothingIsInHand) {
    ASSERT_TRUE(secondsLeft(ward.taught(), state()).has_value());
    EXPECT_GT(*secondsLeft(ward.taught(), state()), 0);
    ward.must(SeeLapse{.lapses = {"line-out"}});
    EXPECT_EQ(secondsLeft(ward.taught(), state()), std::nullopt);
}

}  // namespace
}  // namespace practice
