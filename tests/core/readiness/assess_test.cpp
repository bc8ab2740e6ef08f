// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Each rule alone, met and not met at its boundary, on a record made by hand. The numbers asked for
// are invented for the test; days are of the Gregorian calendar.
#include "core/readiness/assessing.h"
#include "readiness/demonstrations.h"

namespace readiness {
namespace {

TEST_F(Assess, AllRulesMetIsReady) {
    EXPECT_EQ(unmet(), Rules{});
    EXPECT_TRUE(result().ready);
}

TEST_F(Assess, Consent) {
    person().consent->said.toTeach = false;
    EXPECT_EQ(unmet(), Rules{Rule::Consent});
    EXPECT_FALSE(result().ready);
    person().consent.reset();
    EXPECT_EQ(unmet(), Rules{Rule::Consent});
    person().said.isPatient = true;  // who learns for himself asks nobody
    EXPECT_EQ(unmet(), Rules{});
}

TEST_F(Assess, NeedsAndAllergiesAsked) {
    person().needs.reset();
    EXPECT_EQ(unmet(), Rules{Rule::NeedsAsked});
    record.allergies.reset();
    EXPECT_EQ(unmet(), (Rules{Rule::NeedsAsked, Rule::AllergiesAsked}));
}

TEST_F(Assess, Observed) {
    taught.pack.readiness->observedAtLeast = 3;
    EXPECT_EQ(unmet(), Rules{Rule::Observed});
    EXPECT_EQ(find(Rule::Observed).args, (Args{"2", "3"}));
}

TEST_F(Assess, OnPatient) {
    first().opened.on = practice::On::PracticeArm;
    EXPECT_EQ(unmet(), Rules{});
    last().opened.on = practice::On::PracticeArm;
    EXPECT_EQ(unmet(), Rules{Rule::OnPatient});
    EXPECT_EQ(find(Rule::OnPatient).args, (Args{"0", "1"}));
}

TEST_F(Assess, DaysAreLocalAcrossMidnight) {
    record.visits.clear();
    demonstrate("2026-11-22T22:30:00.000Z");
    demonstrate("2026-11-22T23:30:00.000Z");
    EXPECT_EQ(unmet(), Rules{Rule::OnDays});
    EXPECT_EQ(find(Rule::OnDays).args, (Args{"1", "2"}));
    for (record::Visit& visit : record.visits) visit.origin.offsetMinutes = 60;
    EXPECT_EQ(unmet(), Rules{});
}

// Directive 2000/84/EC: clocks go back on the last Sunday of October, forward on that of March.
TEST_F(Assess, DaysAreLocalAcrossTheChangeOfClocks) {
    record.visits.clear();
    demonstrate("2026-10-24T22:30:00.000Z", 120);  // 25 October, 00:30
    demonstrate("2026-10-25T22:30:00.000Z", 60);   // 25 October, 23:30
    EXPECT_EQ(find(Rule::OnDays).args.front(), "1");
    record.visits.clear();
    demonstrate("2026-03-28T22:30:00.000Z", 60);   // 28 March, 23:30
    demonstrate("2026-03-29T21:30:00.000Z", 120);  // 29 March, 23:30
    EXPECT_EQ(find(Rule::OnDays).args.front(), "2");
}

TEST_F(Assess, UnpromptedInARowCountsFromTheNewest) {
    step(first(), "soap-wash").cues = 1;
    EXPECT_EQ(unmet(), Rules{Rule::UnpromptedRow});
    EXPECT_EQ(find(Rule::UnpromptedRow).args, (Args{"1", "2"}));
    step(last(), "soap-wash").cues = 1;
    EXPECT_EQ(unmet(), (Rules{Rule::UnpromptedRow, Rule::CriticalSteps}));
    EXPECT_EQ(find(Rule::UnpromptedRow).args, (Args{"0", "2"}));
    EXPECT_EQ(find(Rule::CriticalSteps).args, Args{"soap-wash"});
}

TEST_F(Assess, HelpOnAStepThatIsNotCriticalBreaksNoRow) {
    step(last(), "towel-dry").cues = 3;
    EXPECT_EQ(unmet(), Rules{});
}

TEST_F(Assess, TeachBackAsksForEssentialPointsInTheNewestRound) {
    record::AskBack again = person().asked.front().said;
    again.heard = {"dirty"};
    person().asked.push_back({again, {}});
    EXPECT_EQ(unmet(), Rules{Rule::TeachBack});
    EXPECT_EQ(find(Rule::TeachBack).args, Args{"when-soap"});
}

TEST_F(Assess, ADrillCountsUnprompted) {
    person().drills.front().said.result = record::DrillResult::Cued;
    EXPECT_EQ(unmet(), Rules{Rule::Drills});
    EXPECT_EQ(find(Rule::Drills).args, Args{"sore-hands"});
}

TEST_F(Assess, HomeKitOnce) {
    first().opened.kit.homeKit = false;
    EXPECT_EQ(unmet(), Rules{});
    last().opened.kit.homeKit = false;
    EXPECT_EQ(unmet(), Rules{Rule::HomeKit});
}

// 28 May to 24 November are 3 + 30 + 31 + 31 + 30 + 31 + 24 = 180 days.
TEST_F(Assess, StillValidOnTheLastDay) {
    record.visits.clear();
    demonstrate("2026-05-26T10:00:00.000Z");
    demonstrate("2026-05-28T10:00:00.000Z");
    EXPECT_EQ(find(Rule::StillValid), (Finding{Rule::StillValid, true, {"180", "180"}}));
    now.wallMs += std::int64_t{10} * 3600 * 1000;  // 00:00 of the next day
    EXPECT_EQ(find(Rule::StillValid), (Finding{Rule::StillValid, false, {"181", "180"}}));
    now.offsetMinutes = -60;  // west of there it is still the day before
    EXPECT_TRUE(find(Rule::StillValid).met);
}

TEST_F(Assess, AnEntryThatMustBeKnownLeavesItUnsettled) {
    record.unknown.push_back({.type = "dance", .must = false});
    EXPECT_EQ(unmet(), Rules{});
    record.unknown.push_back({.type = "dance", .must = true});
    EXPECT_EQ(unmet(), Rules{Rule::Unsettled});
    EXPECT_EQ(find(Rule::Unsettled).args, Args{"1"});
}

TEST_F(Assess, OnlyAWholeDemonstrationByTheLearnerCounts) {
    const auto shown = [&] { return demonstrations(record, learner, taught).size(); };
    last().opened.way = practice::Way::Guided;
    EXPECT_EQ(shown(), 1U);
    last().opened.way = practice::Way::ReturnDemonstration;
    last().opened.on = practice::On::TalkedThrough;
    EXPECT_EQ(shown(), 1U);
    last().opened.on = practice::On::Patient;
    last().state.takenOver = true;
    EXPECT_EQ(shown(), 1U);
    last().state.takenOver = false;
    last().state.remaining = {4};
    EXPECT_EQ(shown(), 1U);
    last().state.remaining.clear();
    last().state.ending = practice::Ending::Open;
    EXPECT_EQ(shown(), 1U);
    last().state.ending = practice::Ending::Stopped;
    EXPECT_EQ(shown(), 2U);
    last().opened.learner = base::LearnerId::random();
    EXPECT_EQ(shown(), 1U);
}

// Wilson 1927: with all of n seen the lower end is n / (n + z²); three critical steps, seen twice.
TEST_F(Assess, EvidenceCountsCriticalSteps) {
    const Evidence evidence = result().evidence;
    EXPECT_EQ(evidence.unprompted, 6);
    EXPECT_EQ(evidence.observed, 6);
    EXPECT_NEAR(evidence.low, 6 / (6 + 1.959963984540054 * 1.959963984540054), 1e-12);
}

TEST_F(Assess, WhatDoesNotApplyIsInNeitherNumberOfTheEvidence) {
    step(last(), "soap-wash").mark = practice::Mark::DoesNotApply;
    EXPECT_EQ(result().evidence.unprompted, 5);
    EXPECT_EQ(result().evidence.observed, 5);
    EXPECT_EQ(unmet(), Rules{});
}

TEST_F(Assess, WhatWasFoundAndAMachineThatStoppedAreNobodysLapse) {
    practice::StepRecord& soap = step(last(), "soap-wash");
    soap.lapses = {0};
    practice::LapseRecord& lapse = last().state.lapses.emplace_back();
    lapse.step = "soap-wash";
    // Told what to wash again: the learner can't know what the computer asks for.
    last().state.waysBack.push_back({.step = "soap-wash", .cues = 1});
    for (bool practice::LapseRecord::*why :
         {&practice::LapseRecord::found, &practice::LapseRecord::byAbsence}) {
        lapse.*why = true;
        EXPECT_EQ(unmet(), Rules{});
        EXPECT_EQ(result().evidence.unprompted, 6);
        lapse.*why = false;
        EXPECT_EQ(unmet(), (Rules{Rule::UnpromptedRow, Rule::CriticalSteps}));
    }
    lapse.caught = practice::Caught::Alone;
    EXPECT_EQ(unmet(), Rules{});
    last().state.waysBack.back().afterLapse = true;
    EXPECT_EQ(find(Rule::CriticalSteps).args, Args{"soap-wash"}) << "helped out of a lapse";
}

TEST_F(Assess, AQuestionOfOnePartIsNoneOfAnother) {
    auto& asked = person().asked;
    std::erase_if(asked, [&](const auto& one) {
        return packs::find(taught.pack.prompts, one.said.prompt)->competency != "wash-hands";
    });
    ASSERT_FALSE(asked.empty());
    const auto all = result();
    const auto& missing = all.competencies.back().missing;
    const auto found = std::ranges::find(missing, Rule::TeachBack, &Finding::rule);
    ASSERT_NE(found, missing.end());
    EXPECT_EQ(found->ground, Ground::NothingYet);
    EXPECT_EQ(find(Rule::TeachBack).ground, Ground::NothingYet) << "the other part's";
}

// Nothing is judged that was never there to be seen.
TEST_F(Assess, SaysWhatItLookedAt) {
    for (const Rule rule : {Rule::CriticalSteps, Rule::TeachBack, Rule::StillValid, Rule::HomeKit})
        EXPECT_EQ(find(rule).ground, Ground::Seen);
    record.visits.clear();
    person().asked.clear();
    taught.pack.readiness->homeKitSeen = false;
    for (const Rule rule : {Rule::CriticalSteps, Rule::TeachBack, Rule::StillValid})
        EXPECT_EQ(find(rule).ground, Ground::NothingYet);
    EXPECT_EQ(find(Rule::HomeKit).ground, Ground::NotAsked);
    taught.pack.readiness->validDays = 0;
    EXPECT_EQ(find(Rule::StillValid).ground, Ground::NotAsked);
}

}  // namespace
}  // namespace readiness
