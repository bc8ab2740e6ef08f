// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of a visit, with the weekly pack and a clock that is moved by hand. The meaning of
// lapses is that of the pack language; nothing clinical is checked here.
#include "practice/practice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/ward.h"

namespace practice {
namespace {

using base::Code;

class Practice : public testing::Test {
  protected:
    Practice() { ward.openVisit(Way::ReturnDemonstration, On::Patient); }

    const State& state() const { return ward.visit().state; }
    std::string inHandId() const { return recordInHand(state())->step; }
    const StepRecord& recordOf(const std::string& step) const {
        return *std::ranges::find(state().steps, step, &StepRecord::step);
    }
    void goTo(const std::string& step) {
        while (inHand(state()) && inHandId() != step && !HasFailure()) ward.doStepInHand();
        ASSERT_EQ(inHandId(), step);
    }
    void begin() {
        ward.must(
            BeginPhase{.step = inHandId(), .phase = phaseToDo(ward.taught().pack, state())->id});
    }
    void end() { ward.must(EndPhase{.step = inHandId(), .phase = runningPhase(state())->phase}); }
    std::optional<Code> refusal(record::Payload payload) {
        const auto reply = ward.desk().say(std::move(payload));
        return reply.ok() ? std::optional<Code>() : reply.error().code;
    }

    support::Ward ward{"weekly-dressing-upper-arm"};
};

TEST_F(Practice, SilenceIsNothingRecorded) {
    EXPECT_EQ(helpOf(state().steps.front(), state()), Help::NothingRecorded);
    ward.doStepInHand();
    EXPECT_EQ(helpOf(state().steps.front(), state()), Help::Unprompted);
}

TEST_F(Practice, ACueIsCountedAndCanBeTakenBack) {
    const std::string step = inHandId();
    ward.must(GiveCue{{.step = step}});
    ward.must(GiveCue{{.step = step}});
    EXPECT_EQ(recordInHand(state())->cues, 2);
    ward.must(TakeBack{.entry = *lastCue(ward.visit().events, state())});
    EXPECT_EQ(recordInHand(state())->cues, 1);
    ward.must(TakeBack{.entry = *lastCue(ward.visit().events, state())});
    ward.doStepInHand();
    EXPECT_EQ(helpOf(recordOf(step), state()), Help::Unprompted);
}

TEST_F(Practice, AStepIsNotSeenBeforeItsTimedPartIsDone) {
    goTo("soap-wash");
    EXPECT_EQ(refusal(SeeStep{{.step = "soap-wash"}}), Code::PhaseMissing);
    begin();
    EXPECT_EQ(refusal(SeeStep{{.step = "soap-wash"}}), Code::PhaseRuns);
}

TEST_F(Practice, StoppedShortNeverCountsAsUnprompted) {
    goTo("soap-wash");
    begin();
    ward.clock().advanceMs(19'999);  // the least of this phase is 20 s
    end();
    EXPECT_EQ(recordInHand(state())->phases.back().end, PhaseEnd::StoppedShort);
    EXPECT_EQ(recordInHand(state())->phases.back().measuredMs, 19'999);
    EXPECT_EQ(refusal(SeeStep{{.step = "soap-wash"}}), Code::PhaseMissing);
    ward.doStepInHand();
    EXPECT_EQ(helpOf(recordOf("soap-wash"), state()), Help::Cued);
}

TEST_F(Practice, AStopTakenBackNeverStopped) {
    goTo("soap-wash");
    begin();
    ward.clock().advanceMs(12'000);
    end();
    ward.must(TakeBack{.entry = *lastMark(ward.visit().events, state())});
    ASSERT_NE(runningPhase(state()), nullptr);
    ward.clock().advanceMs(18'000);
    end();
    EXPECT_EQ(recordInHand(state())->phases.back().measuredMs, 30'000);
    ward.must(SeeStep{{.step = "soap-wash"}});
    EXPECT_EQ(helpOf(recordOf("soap-wash"), state()), Help::Unprompted);
}

TEST_F(Practice, TheClockCountsThroughSuspend) {
    goTo("soap-wash");
    begin();
    ward.clock().advanceMs(5'000);
    ward.clock().suspendMs(20'000);
    end();
    EXPECT_EQ(recordInHand(state())->phases.back().measuredMs, 25'000);
}

TEST_F(Practice, APauseVoidsAContinuousPhase) {
    goTo("scrub-skin");
    ASSERT_TRUE(packs::findStep(ward.taught().pack, "scrub-skin").step->continuous);
    begin();
    ward.clock().advanceMs(10'000);
    ward.must(Pause{});
    EXPECT_EQ(recordInHand(state())->phases.back().end, PhaseEnd::Voided);
    ward.must(Resume{});
    EXPECT_EQ(phaseToDo(ward.taught().pack, state())->id, "across");
}

TEST_F(Practice, TimeInAPauseDoesNotCount) {
    goTo("let-dry");
    ASSERT_FALSE(packs::findStep(ward.taught().pack, "let-dry").step->continuous);
    begin();
    ward.clock().advanceMs(10'000);
    ward.must(Pause{});
    ward.clock().advanceMs(60'000);
    ward.must(Resume{});
    ward.clock().advanceMs(20'000);
    end();
    EXPECT_EQ(recordInHand(state())->phases.back().measuredMs, 30'000);
}

// What is said of a step later is said of the step; how it was when it was done stays.
TEST_F(Practice, WhatNobodySawIsNotSeenAfterItWasLeftOut) {
    const auto wasSeen = [this](const char* step) {
        const int op = *ward.taught().model.operatorIndex(step);
        return std::ranges::find(state().done, op, &DoneOperator::op)->wasSeen;
    };
    goTo("mask-on");
    ward.must(OverlookStep{{.step = "mask-on"}});
    ward.doStepInHand();
    EXPECT_FALSE(wasSeen("mask-on"));
    const std::string next = ward.taught().model.operators.at(state().done.back().op).id;
    EXPECT_TRUE(wasSeen(next.c_str()));
    ward.must(MissStep{.step = "mask-on"});
    ASSERT_EQ(recordOf("mask-on").mark, Mark::NotDone);
    EXPECT_FALSE(wasSeen("mask-on"));
    EXPECT_TRUE(wasSeen(next.c_str()));
    EXPECT_EQ(replay(ward.taught(), ward.visit().events), state());
}

TEST_F(Practice, ALapseCutsWhatHeldAndTheWayBackWinsItBack) {
    goTo("wipe-line");
    const auto before = state().holds;
    ward.must(SeeLapse{.lapses = {"skin-touched"}});
    EXPECT_FALSE(state().holds.contains(before));
    ASSERT_TRUE(state().wayBack.has_value());
    EXPECT_EQ(inHandId(), "scrub-skin");  // touched skin is scrubbed again: common practice
    ward.must(CatchAlone{});
    while (state().wayBack && !HasFailure()) ward.doStepInHand();
    EXPECT_TRUE(state().holds.contains(before));
    EXPECT_EQ(inHandId(), "wipe-line");
    EXPECT_TRUE(state().lapses.front().solved);
    ward.doStepInHand();
    EXPECT_EQ(helpOf(recordOf("wipe-line"), state()), Help::Unprompted);
}

TEST_F(Practice, AStepInterruptedByALapseIsDoneWholeAgain) {
    goTo("scrub-skin");
    begin();
    ward.clock().advanceMs(15'000);
    end();
    ASSERT_EQ(phaseToDo(ward.taught().pack, state())->id, "along");
    ward.must(SeeLapse{.lapses = {"glove-torn"}});
    while (state().wayBack && !HasFailure()) ward.doStepInHand();
    EXPECT_EQ(inHandId(), "scrub-skin");
    EXPECT_EQ(phaseToDo(ward.taught().pack, state())->id, "across");
}

TEST_F(Practice, ShowingTheWayBackIsACue) {
    goTo("wipe-line");
    ward.must(SeeLapse{.lapses = {"skin-touched"}});
    ward.must(ShowWayBack{});
    EXPECT_EQ(refusal(CatchAlone{}), Code::CaughtAlready);
    while (state().wayBack && !HasFailure()) ward.doStepInHand();
    ward.doStepInHand();
    EXPECT_EQ(helpOf(recordOf("wipe-line"), state()), Help::Cued);
}

TEST_F(Practice, AWithdrawnLapseIsKeptAndChangesNothing) {
    goTo("wipe-line");
    const auto before = state().holds;
    ward.must(SeeLapse{.lapses = {"skin-touched"}});
    ward.must(TakeBack{.entry = state().lapses.front().entry});
    EXPECT_EQ(state().holds, before);
    EXPECT_FALSE(state().wayBack.has_value());
    ASSERT_EQ(state().lapses.size(), 1U);
    EXPECT_TRUE(state().lapses.front().withdrawn);
    ward.doStepInHand();
    EXPECT_EQ(helpOf(recordOf("wipe-line"), state()), Help::Unprompted);
}

TEST_F(Practice, NoticedLateSpoilsWhatWasBuiltOnIt) {
    goTo("stick-device");
    ward.must(SeeLapse{.lapses = {"skin-touched"}, .happened = "scrub-skin"});
    ASSERT_TRUE(state().wayBack.has_value());
    const std::vector<std::string>& plan = state().lapses.front().plan;
    for (const char* step : {"scrub-skin", "let-dry", "put-film"})
        EXPECT_TRUE(std::ranges::count(plan, step)) << step;
    EXPECT_EQ(refusal(SeeLapse{.lapses = {"skin-touched"}, .happened = "lay-dressing"}),
              Code::StepNotDoneYet);
}

TEST_F(Practice, AStepLeftOutIsDoneOnTheWayBack) {
    goTo("soap-wash");
    ward.must(MissStep{.step = "soap-wash"});
    EXPECT_EQ(helpOf(recordOf("soap-wash"), state()), Help::NotDone);
    ASSERT_TRUE(state().wayBack.has_value());
    EXPECT_EQ(inHandId(), "soap-wash");
}

TEST_F(Practice, StopAndCallLeavesOnlyTakeOverAndStop) {
    goTo("peel-low");
    ward.must(SeeLapse{.lapses = {"line-out"}});
    ASSERT_TRUE(state().wayBack.has_value());
    EXPECT_EQ(state().wayBack->outcome, procedure::PlanOutcome::NotSought);
    EXPECT_EQ(refusal(SeeStep{{.step = "peel-low"}}), Code::NoWayOn);
    ward.must(StopVisit{.why = StopReason::PatientUnwell, .siteCovered = true, .lineHeld = true});
    EXPECT_FALSE(ward.desk().view().openVisit.has_value());
}

TEST_F(Practice, AsepsisDoesNotSurviveARestart) {
    goTo("scrub-skin");
    const auto before = state().holds;
    begin();
    ward.clock().advanceMs(3'000);
    ward.must(ComeBack{.by = BackBy::Restart});
    EXPECT_EQ(runningPhase(state()), nullptr);
    ASSERT_FALSE(state().lapses.empty());
    EXPECT_TRUE(state().lapses.back().byAbsence);
    EXPECT_TRUE(state().wayBack.has_value());
    EXPECT_FALSE(state().holds.contains(before));
}

TEST_F(Practice, AShortAbsenceCostsNothing) {
    goTo("wipe-line");
    ward.clock().advanceMs(59'000);  // the pack's away is 60 s
    ward.must(ComeBack{.by = BackBy::Absence});
    EXPECT_TRUE(state().lapses.empty());
    ward.clock().advanceMs(61'000);
    ward.must(ComeBack{.by = BackBy::Absence});
    EXPECT_EQ(state().lapses.size(), 1U);
}

TEST_F(Practice, OnAPatientAHalfDoneVisitIsStoppedNotClosed) {
    goTo("scrub-skin");
    EXPECT_EQ(refusal(CloseVisit{}), Code::VisitNotFinished);
}

TEST_F(Practice, AdvanceEqualsReplay) {
    goTo("wipe-line");
    ward.must(SeeLapse{.lapses = {"skin-touched"}});
    ward.must(GiveCue{{.step = inHandId()}});
    ward.must(TakeBack{.entry = *lastCue(ward.visit().events, state())});
    while (state().wayBack && !HasFailure()) ward.doStepInHand();
    ward.doAllSteps();
    EXPECT_EQ(replay(ward.taught(), ward.visit().events), state());
}

}  // namespace
}  // namespace practice
