// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of a visit one by one, on the state machine alone. The meaning of lapses is that of the
// pack language; the rules of marking are our own, no source.
#include <gtest/gtest.h>

#include "core/practice/sitting.h"

namespace practice {
namespace {

using base::Code;
using sitting::Sitting;

class VisitRules : public testing::Test {
  protected:
    VisitRules() { visit.open(); }
    Sitting visit{"weekly-dressing-upper-arm"};
};

class HandsRules : public testing::Test {
  protected:
    HandsRules() { visit.open(); }
    Sitting visit{"clean-hands"};
};

TEST_F(VisitRules, StepsGoByTheirOrderAndTheirNames) {
    EXPECT_EQ(visit.say(SeeStep{{.step = "dance"}}), Code::StepUnknown);
    EXPECT_EQ(visit.say(SeeStep{{.step = "lay-dressing"}}), Code::StepNotInHand);
    EXPECT_EQ(visit.say(GiveCue{{.step = "lay-dressing"}}), Code::StepNotInHand);
    EXPECT_EQ(visit.say(HandsOn{{.step = ""}}), Code::StepNotInHand);
    EXPECT_EQ(visit.say(BeginPhase{.step = "choose-place", .phase = "across"}), Code::PhaseNotDue);
    EXPECT_EQ(visit.say(EndPhase{.step = "choose-place", .phase = "across"}),
              Code::PhaseNotRunning);
    EXPECT_EQ(visit.say(OpenVisit{}), Code::VisitOpenAlready);
}

TEST_F(VisitRules, PhasesGoByTheirOrderAndOneAtATime) {
    visit.goTo("scrub-skin");
    EXPECT_EQ(visit.say(BeginPhase{.step = "scrub-skin", .phase = "along"}), Code::PhaseNotDue);
    visit.begin();
    EXPECT_EQ(visit.say(BeginPhase{.step = "scrub-skin", .phase = "across"}), Code::PhaseRuns);
    EXPECT_EQ(visit.say(EndPhase{.step = "scrub-skin", .phase = "along"}), Code::PhaseNotRunning);
    EXPECT_EQ(visit.say(CloseVisit{}), Code::PhaseRuns);
    visit.pass(15'000);
    visit.end();
    EXPECT_EQ(visit.say(BeginPhase{.step = "scrub-skin", .phase = "across"}), Code::PhaseNotDue);
    visit.begin();
    EXPECT_EQ(runningPhase(visit.state)->phase, "along");
}

// Drying ends when it is dry: the clock alone ends nothing, however long it runs.
TEST_F(VisitRules, DryingEndsWhenTheTeacherSeesThatItIsDry) {
    visit.goTo("let-dry");
    ASSERT_TRUE(phaseToDo(visit.taught.pack, visit.state)->until.has_value());
    visit.begin();
    visit.pass(240'000);
    ASSERT_NE(runningPhase(visit.state), nullptr);
    EXPECT_EQ(visit.say(SeeStep{{.step = "let-dry"}}), Code::PhaseRuns);
    visit.end();
    EXPECT_EQ(recordInHand(visit.state)->phases.back().measuredMs, 240'000);
    visit.must(SeeStep{{.step = "let-dry"}});
    EXPECT_EQ(visit.help("let-dry"), Help::Unprompted);
}

TEST_F(HandsRules, WhileItIsPausedNothingIsMarked) {
    EXPECT_EQ(visit.say(Resume{}), Code::VisitNotPaused);
    visit.goTo("soap-wash");
    visit.must(Pause{});
    EXPECT_EQ(visit.say(Pause{}), Code::VisitPaused);
    EXPECT_EQ(visit.say(BeginPhase{.step = "soap-wash", .phase = "rub-with-soap"}),
              Code::VisitPaused);
    EXPECT_EQ(visit.say(SeeStep{{.step = "soap-wash"}}), Code::VisitPaused);
    EXPECT_EQ(visit.say(SeeRest{.steps = {"soap-wash"}}), Code::VisitPaused);
    visit.must(Sitting::lapse({"ring-kept"}));  // a lapse waits for nobody
    visit.must(WriteNote{.step = {}, .text = "the telephone"});
    visit.must(Resume{});
    EXPECT_FALSE(visit.state.isPaused());
}

TEST_F(VisitRules, APhaseThatMayRestIsEndedOnlyAfterThePause) {
    visit.goTo("let-dry");
    visit.begin();
    visit.must(Pause{});
    EXPECT_EQ(visit.say(EndPhase{.step = "let-dry", .phase = "dry"}), Code::VisitPaused);
    visit.must(Resume{});
    EXPECT_NE(runningPhase(visit.state), nullptr);
}

TEST_F(HandsRules, WhatWasNotSeenGivesWhatItGivesAndIsNeverUnprompted) {
    visit.goTo("soap-wash");
    visit.begin();
    visit.pass(3000);
    visit.must(OverlookStep{{.step = "soap-wash"}});
    EXPECT_EQ(visit.help("soap-wash"), Help::NotSeen);
    EXPECT_TRUE(visit.holds("hands-washed"));
    EXPECT_EQ(visit.record("soap-wash").phases.back().end, PhaseEnd::Voided)
        << "no clock runs on for a step that is over";
    EXPECT_EQ(visit.hand(), "towel-dry");
}

TEST_F(VisitRules, OnlyWhatThePackAllowsDoesNotApplyAndThenChangesNothing) {
    EXPECT_EQ(visit.say(SkipStep{{.step = visit.hand()}}), Code::StepApplies);
    visit.goTo("measure-arm");
    const auto before = visit.state.holds;
    visit.must(SkipStep{{.step = "measure-arm"}});
    EXPECT_EQ(visit.state.holds, before);
    EXPECT_EQ(visit.help("measure-arm"), Help::DoesNotApply);
    EXPECT_TRUE(visit.state.done.back().changedNothing);
    EXPECT_EQ(visit.hand(), "set-infusion");
}

TEST_F(VisitRules, ALaterStepOfTheSamePartMayComeFirstWhereItFits) {
    ASSERT_EQ(visit.hand(), "choose-place");
    ASSERT_EQ(markableNow(visit.taught, visit.state),
              std::vector{*visit.taught.model.operatorIndex("rest-arm")});
    EXPECT_EQ(visit.say(SeeStep{{.step = "clean-table"}}), Code::StepNotInHand);
    EXPECT_EQ(visit.say(SeeStep{{.step = "measure-arm"}}), Code::StepNotInHand) << "another part";
    visit.must(SeeStep{{.step = "rest-arm"}});
    EXPECT_EQ(visit.help("rest-arm"), Help::Unprompted);
    EXPECT_EQ(visit.hand(), "choose-place") << "the rest still run";
    visit.goTo("measure-arm");
    EXPECT_EQ(
        std::ranges::count(visit.state.remaining, *visit.taught.model.operatorIndex("rest-arm")),
        0);
}

TEST_F(VisitRules, NothingComesFirstWhileAPhaseRunsOrOnTheWayBack) {
    visit.goTo("jewels-off");
    visit.doStep();
    ASSERT_EQ(visit.hand(), "soap-wash");
    EXPECT_FALSE(restOfPart(visit.taught, visit.state).size() > 0) << "critical and timed";
    visit.begin();
    EXPECT_TRUE(markableNow(visit.taught, visit.state).empty());
    visit.must(Sitting::lapse({"ring-kept"}));
    ASSERT_TRUE(visit.state.wayBack.has_value());
    EXPECT_TRUE(markableNow(visit.taught, visit.state).empty());
    EXPECT_TRUE(restOfPart(visit.taught, visit.state).empty());
    EXPECT_EQ(visit.say(SkipStep{{.step = visit.hand()}}), Code::StepApplies);
}

TEST_F(VisitRules, TheRestOfAPartIsMarkedInOneGoAndTakenBackSo) {
    EXPECT_EQ(visit.say(SeeRest{}), Code::NoRestOfPart);
    EXPECT_EQ(visit.say(SeeRest{.steps = {"clean-table"}}), Code::NoRestOfPart);
    EXPECT_EQ(visit.say(SeeRest{.steps = {"choose-place", "check-supplies"}}), Code::NoRestOfPart);
    const State before = visit.state;
    const auto rest =
        visit.must(SeeRest{.steps = {"choose-place", "clean-table", "check-supplies"}});
    EXPECT_EQ(visit.hand(), "rest-arm");
    EXPECT_EQ(visit.help("clean-table"), Help::Unprompted);
    EXPECT_EQ(visit.state.marks, std::vector{rest});
    visit.must(TakeBack{.entry = rest});
    EXPECT_EQ(visit.state.steps, before.steps);
    EXPECT_EQ(visit.state.remaining, before.remaining);
    EXPECT_EQ(visit.state.holds, before.holds);
}

TEST_F(VisitRules, LapsesOfOneMomentAreOne) {
    visit.goTo("wipe-line");
    EXPECT_EQ(visit.say(SeeLapse{}), Code::LapseUnknown);
    EXPECT_EQ(visit.say(Sitting::lapse({"skin-touched", "sneeze"})), Code::LapseUnknown);
    visit.must(Sitting::lapse({"skin-touched", "glove-torn"}));
    ASSERT_EQ(visit.state.lapses.size(), 1U);
    EXPECT_FALSE(visit.holds("skin-scrubbed"));
    EXPECT_FALSE(visit.holds("gloves-sterile"));
    EXPECT_EQ(visit.state.lapses[0].step, "wipe-line");
    visit.goBack();
    EXPECT_TRUE(visit.holds("skin-scrubbed"));
    EXPECT_TRUE(visit.holds("gloves-sterile"));
}

TEST_F(VisitRules, TheGravestOfSeveralDecides) {
    visit.goTo("peel-low");
    visit.must(Sitting::lapse({"signs-found", "line-out", "mask-slipped"}));
    EXPECT_EQ(visit.state.lapses[0].action, packs::Action::StopAndCall);
    EXPECT_EQ(visit.state.wayBack->outcome, procedure::PlanOutcome::NotSought);
    EXPECT_FALSE(inHand(visit.state).has_value());
    EXPECT_EQ(visit.say(OverlookStep{{.step = "peel-low"}}), Code::NoWayOn);
}

TEST_F(VisitRules, AnotherLapseSaysWhatWasTouched) {
    visit.goTo("wipe-line");
    SeeLapse other;
    other.other = OtherLapse{.what = "a sleeve", .touched = {"field-open", "moon"}};
    EXPECT_EQ(visit.say(other), Code::LapseUnknown);
    other.other->touched = {"field-open"};
    visit.must(other);
    EXPECT_FALSE(visit.holds("field-open"));
    EXPECT_TRUE(visit.holds("skin-scrubbed"));
    EXPECT_EQ(visit.state.lapses[0].other, "a sleeve");
    EXPECT_EQ(visit.state.lapses[0].touched, std::vector<std::string>{"field-open"});
}

TEST_F(VisitRules, ALapseOnTheWayBackMakesANewWayAndKeepsWhatWasDone) {
    visit.goTo("wipe-line");
    visit.must(Sitting::lapse({"glove-torn"}));
    const std::string first = visit.hand();
    visit.doStep();
    ASSERT_TRUE(visit.state.wayBack.has_value());
    visit.must(GiveCue{{.step = visit.hand()}});
    visit.must(Sitting::lapse({"skin-touched"}));
    ASSERT_EQ(visit.state.waysBack.size(), 2U);
    EXPECT_EQ(visit.state.waysBack[0].step, first);
    EXPECT_EQ(visit.state.waysBack[1].cues, 1) << "help given on an abandoned step is kept";
    EXPECT_FALSE(visit.state.lapses[0].solved);
    visit.goBack();
    EXPECT_TRUE(visit.state.lapses[0].solved && visit.state.lapses[1].solved);
    EXPECT_EQ(visit.hand(), "wipe-line");
}

TEST_F(HandsRules, WhereNothingIsLostTheLapseIsSolvedAtOnce) {
    visit.must(Sitting::lapse({"rub-short"}));
    EXPECT_TRUE(visit.state.lapses[0].solved);
    EXPECT_TRUE(visit.state.lapses[0].plan.empty());
    EXPECT_FALSE(visit.state.wayBack.has_value());
    EXPECT_EQ(visit.hand(), "bare-arms");
}

TEST_F(VisitRules, AloneNoHelperIsPartOfTheWayBack) {
    const auto byHelper = [&] {
        return std::ranges::any_of(visit.state.lapses.back().plan, [&](const std::string& id) {
            return packs::findStep(visit.taught.pack, id).step->by == packs::By::Helper;
        });
    };
    visit.goTo("wipe-line");
    auto lapse = Sitting::lapse({"coughed-over"});
    const auto said = visit.must(lapse);
    EXPECT_TRUE(byHelper()) << "with sterile gloves on, the helper opens the field";
    visit.must(TakeBack{.entry = said});
    lapse.alone = true;
    visit.must(lapse);
    EXPECT_FALSE(byHelper());
}

TEST_F(HandsRules, HowALapseWasCaughtIsSaidOnceAndOfTheNewest) {
    EXPECT_EQ(visit.say(CatchAlone{}), Code::NoLapse);
    visit.goTo("keep-clean");
    const auto lapse = visit.must(Sitting::lapse({"touched-thing"}));
    const auto caught = visit.must(CatchAlone{});
    EXPECT_EQ(visit.say(ShowWayBack{}), Code::CaughtAlready);
    visit.must(TakeBack{.entry = caught});
    visit.must(ShowWayBack{});
    EXPECT_EQ(visit.state.lapses[0].caught, Caught::Shown);
    visit.must(TakeBack{.entry = lapse});
    EXPECT_EQ(visit.say(CatchAlone{}), Code::NoLapse) << "withdrawn";
}

TEST_F(HandsRules, AStepLeftOutEarlierIsALapseOfThatStep) {
    EXPECT_EQ(visit.say(MissStep{.step = "dance"}), Code::StepUnknown);
    EXPECT_EQ(visit.say(MissStep{.step = "alcohol-rub"}), Code::StepNotInHand);
    visit.goTo("alcohol-rub");
    visit.must(MissStep{.step = "towel-dry"});
    EXPECT_EQ(visit.help("towel-dry"), Help::NotDone);
    EXPECT_EQ(visit.record("towel-dry").lapses, std::vector<std::size_t>{0});
    EXPECT_EQ(visit.state.lapses[0].leftOut, "towel-dry");
    EXPECT_EQ(visit.say(MissStep{.step = "towel-dry"}), Code::StepNotInHand) << "once";
    EXPECT_FALSE(visit.holds("hands-dry"));
    visit.goBack();
    EXPECT_TRUE(visit.holds("hands-dry"));
    EXPECT_EQ(visit.help("towel-dry"), Help::NotDone) << "the way back does not unsay it";
    EXPECT_EQ(visit.hand(), "alcohol-rub");
}

TEST_F(HandsRules, AfterTakingOverItIsTheTeacherWhoDoesIt) {
    visit.doStep();
    const auto over = visit.must(TakeOver{.why = "tired"});
    EXPECT_EQ(visit.say(TakeOver{.why = "again"}), Code::TakenOverAlready);
    visit.doStep();
    EXPECT_EQ(visit.help("bare-arms"), Help::Unprompted);
    EXPECT_EQ(visit.help("soap-wash"), Help::ByTeacher);
    visit.must(TakeBack{.entry = over});
    EXPECT_EQ(visit.help("soap-wash"), Help::Unprompted);
}

TEST(ShowVisit, WhatIsShownIsTheTeachers) {
    Sitting visit("clean-hands", On::PracticeArm, Way::Show);
    visit.open();
    visit.doStep();
    EXPECT_EQ(visit.help("bare-arms"), Help::ByTeacher);
}

TEST_F(HandsRules, EachObservationCarriesItsTeacher) {
    const auto first = visit.teacher;
    visit.doStep();
    EXPECT_EQ(visit.say(HandOver{.to = first}), Code::TeachesAlready);
    const auto second = base::StaffId::random();
    visit.must(HandOver{.to = second});
    visit.teacher = second;
    visit.doStep();
    visit.must(Sitting::lapse({"ring-kept"}));
    EXPECT_EQ(visit.record("bare-arms").seenBy, first);
    EXPECT_EQ(visit.record("soap-wash").seenBy, second);
    EXPECT_EQ(visit.state.lapses[0].seenBy, second);
    EXPECT_EQ(visit.state.teachers, (std::vector{first, second}));
    visit.must(HandOver{.to = first});
}

// What the newest mark rests on stays; cues, help and lapses are their own.
TEST_F(HandsRules, StepsAreTakenBackFromTheNewestOn) {
    const auto cue = visit.must(GiveCue{{.step = "bare-arms"}});
    const auto bare = visit.must(SeeStep{{.step = "bare-arms"}});
    visit.begin();
    const auto begun = visit.events.back().id;
    visit.pass(30'000);
    visit.end();
    const auto ended = visit.events.back().id;
    const auto washed = visit.must(SeeStep{{.step = "soap-wash"}});
    for (const auto& older : {bare, begun, ended})
        EXPECT_EQ(visit.say(TakeBack{.entry = older}), Code::NothingToTakeBack);
    EXPECT_EQ(visit.say(TakeBack{.entry = visit.events.front().id}), Code::NothingToTakeBack);
    EXPECT_EQ(visit.say(TakeBack{.entry = base::CommandId::random()}), Code::NothingToTakeBack);
    visit.must(TakeBack{.entry = cue});
    EXPECT_EQ(visit.say(TakeBack{.entry = cue}), Code::NothingToTakeBack) << "once";
    for (const auto& newest : {washed, ended, begun, bare}) visit.must(TakeBack{.entry = newest});
    EXPECT_EQ(visit.hand(), "bare-arms");
    EXPECT_TRUE(visit.state.done.empty());
    EXPECT_TRUE(visit.record("soap-wash").phases.empty());
}

TEST_F(HandsRules, AClockOfTheWayBackStopsWhenItsLapseIsWithdrawn) {
    visit.goTo("keep-clean");
    const auto lapse = visit.must(Sitting::lapse({"touched-thing"}));
    ASSERT_EQ(visit.hand(), "alcohol-rub");
    visit.begin();
    visit.must(TakeBack{.entry = lapse});
    EXPECT_EQ(visit.hand(), "keep-clean");
    for (const StepRecord& step : visit.state.steps)
        for (const PhaseRun& run : step.phases) EXPECT_NE(run.end, PhaseEnd::Running) << step.step;
}

TEST_F(HandsRules, SuspendIsNoticedAndCostsTheRunningPhase) {
    visit.goTo("soap-wash");
    visit.begin();
    visit.pass(10'000);
    visit.must(ComeBack{.by = BackBy::Absence});
    EXPECT_TRUE(visit.state.suspendNoticed);
    EXPECT_EQ(visit.record("soap-wash").phases.back().end, PhaseEnd::Voided);
    EXPECT_TRUE(visit.state.lapses.empty()) << "nothing clean held yet";
}

struct AwayRow {
    const char* what;
    BackBy by;
    std::int64_t passMs;  ///< on the wall clock
    bool restarted, lapse;
};

// The small pack says: after 60 s away.
TEST(Away, AsepsisDoesNotSurviveAnAbsence) {
    for (const AwayRow& row :
         {AwayRow{"a moment", BackBy::Absence, 60'000, false, false},
          AwayRow{"too long", BackBy::Absence, 60'001, false, true},
          AwayRow{"a restart, however short", BackBy::Restart, 1, true, true},
          AwayRow{"a short absence over a restart", BackBy::Absence, 60'000, true, false},
          AwayRow{"the clock set back", BackBy::Absence, -5000, true, true}}) {
        Sitting visit("clean-hands");
        visit.open();
        visit.goTo("keep-clean");
        visit.now.wallMs += row.passMs, visit.now.bootMs += row.passMs;
        if (row.restarted) visit.now.bootId = "second", visit.now.bootMs = 10;
        visit.must(ComeBack{.by = row.by});
        EXPECT_EQ(visit.state.lapses.size(), row.lapse ? 1U : 0U) << row.what;
        if (!row.lapse) continue;
        EXPECT_TRUE(visit.state.lapses[0].byAbsence) << row.what;
        EXPECT_FALSE(visit.holds("hands-rubbed")) << row.what;
        visit.goBack();
        visit.doStep();
        EXPECT_EQ(visit.help("keep-clean"), Help::Unprompted) << row.what << ": nobody's lapse";
    }
}

TEST_F(VisitRules, MeasuresNotesAndTheChangeAreChecked) {
    const auto measure = [](const char* id, std::optional<int> mm, std::optional<int> marks = {}) {
        return TakeMeasure{.measure = id, .moment = Moment::Found, .mm = mm, .marks = marks};
    };
    EXPECT_EQ(visit.say(measure("weight", 7)), Code::MeasureUnknown);
    EXPECT_EQ(visit.say(measure("outside-length", {})), Code::MeasureEmpty);
    EXPECT_EQ(visit.say(measure("outside-length", -1)), Code::MeasureOdd);
    EXPECT_EQ(visit.say(measure("outside-length", 1000)), Code::MeasureOdd);
    EXPECT_EQ(visit.say(measure("outside-length", 40, 100)), Code::MeasureOdd);
    EXPECT_EQ(visit.say(measure("outside-length", {}, -1)), Code::MeasureOdd);
    visit.must(measure("outside-length", 0, 99));
    visit.must(measure("arm-girth", 999));
    ASSERT_EQ(visit.state.readings.size(), 2U);
    EXPECT_EQ(visit.state.readings[0].marks, 99);
    EXPECT_EQ(visit.state.readings[1].by, visit.teacher);
    EXPECT_EQ(visit.say(WriteNote{.step = {}, .text = ""}), Code::BadField);
    visit.must(WriteNote{.step = "peel-low", .text = "slow"});
    EXPECT_EQ(visit.state.notes[0].step, "peel-low");
    RecordChange change;
    EXPECT_EQ(visit.say(change), Code::DressingUnknown);
    change.dressing = "gauze";
    visit.must(change);
    Sitting arm("weekly-dressing-upper-arm", On::PracticeArm);
    arm.open();
    EXPECT_EQ(arm.say(change), Code::NotOnPatient);
}

TEST(Ending, OnlyOnAPatientIsAHalfDoneVisitHeldOpen) {
    Sitting patient("clean-hands");
    patient.open();
    patient.doStep();
    EXPECT_EQ(patient.say(CloseVisit{}), Code::VisitNotFinished);
    while (inHand(patient.state) && !testing::Test::HasFailure()) patient.doStep();
    patient.must(CloseVisit{});
    Sitting untouched("clean-hands");
    untouched.open();
    untouched.must(CloseVisit{});
    Sitting arm("clean-hands", On::PracticeArm);
    arm.open();
    arm.doStep();
    arm.must(CloseVisit{});
    EXPECT_EQ(arm.help("soap-wash"), Help::NothingRecorded) << "never well done";
}

TEST(Ending, AnEndedVisitTakesNothingMore) {
    for (const Said& end : {Said(CloseVisit{}), Said(StopVisit{})}) {
        Sitting visit("clean-hands", On::PracticeArm);
        visit.open();
        visit.doStep();
        const auto seen = visit.events.back().id;
        visit.goTo("soap-wash");
        if (std::holds_alternative<StopVisit>(end)) visit.begin();
        visit.must(end);
        EXPECT_EQ(visit.state.endedMs, visit.now.wallMs);
        EXPECT_EQ(runningPhase(visit.state), nullptr);
        for (const Said& said :
             {Said(SeeStep{{.step = "soap-wash"}}), Said(Pause{}), Said(ComeBack{}),
              Said(TakeBack{.entry = seen}), Said(CloseVisit{}), Said(StopVisit{}),
              Said(WriteNote{.step = {}, .text = "x"}), Said(Sitting::lapse({"ring-kept"}))})
            EXPECT_EQ(visit.say(said), Code::VisitEnded);
    }
}

}  // namespace
}  // namespace practice
