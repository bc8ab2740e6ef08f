// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Each rule alone, met and not met at its boundary, on a record made by hand. The numbers asked for
// are invented for the test; days are of the Gregorian calendar.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "procedure/taught.h"
#include "readiness/demonstrations.h"
#include "readiness/signing.h"
#include "support/paths.h"

namespace readiness {
namespace {

class Assess : public testing::Test {
  protected:
    Assess() : taught(smallPack()) {
        taught.pack.readiness = packs::Readiness{.unpromptedInARow = 2,
                                                 .observedAtLeast = 2,
                                                 .onPatientAtLeast = 1,
                                                 .onDaysAtLeast = 2,
                                                 .drills = {"sore-hands"},
                                                 .homeKitSeen = true,
                                                 .teachBackRounds = 3,
                                                 .validDays = 180};
        record.learners.push_back({.said = {.learner = learner, .name = "Amara"}});
        person().consent = {{.learner = learner, .toTeach = true}, {}};
        person().needs = {{.learner = learner}, {}};
        record.allergies.emplace();
        for (const packs::Prompt& prompt : taught.pack.prompts) hear(prompt);
        person().drills.push_back({{.learner = learner,
                                    .pack = taught.digest,
                                    .drill = "sore-hands",
                                    .result = record::DrillResult::Unprompted},
                                   {}});
        demonstrate("2026-11-22T10:00:00.000Z");
        demonstrate("2026-11-23T10:00:00.000Z");
    }

    static procedure::Taught smallPack() {
        std::ifstream file(support::sourceDir() + "/shared/packs/clean-hands.json");
        std::ostringstream bytes;
        bytes << file.rdbuf();
        return **procedure::readTaught(bytes.str());
    }
    record::Learner& person() { return record.learners.front(); }
    record::Visit& first() { return record.visits.front(); }
    record::Visit& last() { return record.visits.back(); }

    void hear(const packs::Prompt& prompt) {
        record::AskBack asked{.learner = learner, .pack = taught.digest, .prompt = prompt.id};
        for (const packs::Point& point : prompt.points)
            if (point.essential) asked.heard.push_back(point.id);
        person().asked.push_back({asked, {}});
    }
    /// A flawless one, on the patient, with the kit used at home.
    void demonstrate(const std::string& at, int offsetMinutes = 0) {
        record::Visit visit;
        visit.id = base::VisitId::random();
        visit.opened.way = practice::Way::ReturnDemonstration;
        visit.opened.on = practice::On::Patient;
        visit.opened.learner = learner;
        visit.opened.pack.digest = taught.digest;
        visit.opened.kit.homeKit = true;
        visit.origin = {.atMs = *base::parseIsoUtc(at), .offsetMinutes = offsetMinutes};
        for (int op = 0; op < taught.model.stepCount; ++op) {
            practice::StepRecord step{.op = op, .step = taught.model.operators[op].id};
            step.mark = practice::Mark::Seen;
            step.seenBy = teacher;
            visit.state.steps.push_back(step);
        }
        visit.state.ending = practice::Ending::Closed;
        record.visits.push_back(std::move(visit));
    }
    practice::StepRecord& step(record::Visit& visit, const std::string& id) {
        return *std::ranges::find(visit.state.steps, id, &practice::StepRecord::step);
    }
    Readiness result() const { return assess(record, learner, taught, now); }
    Finding find(Rule rule) const {
        const Readiness all = result();
        return *std::ranges::find(all.findings, rule, &Finding::rule);
    }
    std::vector<Rule> unmet() const {
        std::vector<Rule> rules;
        for (const Finding& one : result().findings)
            if (!one.met) rules.push_back(one.rule);
        EXPECT_EQ(result().ready && rules.empty(), result().ready);
        return rules;
    }
    using Rules = std::vector<Rule>;
    using Args = std::vector<std::string>;

    procedure::Taught taught;
    record::Record record;
    base::LearnerId learner = base::LearnerId::random();
    base::StaffId teacher = base::StaffId::random();
    base::Instant now{.wallMs = *base::parseIsoUtc("2026-11-24T14:00:00.000Z"), .zone = "UTC"};
};

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

TEST_F(Assess, WhatIsRecordedAfterTheSignatureIsNew) {
    record::SignOff said{.learner = learner, .competencies = {"wash-hands"}};
    said.pack.digest = taught.digest;
    last().origin.seq = 9;
    last().lastSeq = 19;
    person().signOffs.push_back({said, {.seq = 20}});
    const auto wash = [&] { return result().competencies.front(); };
    EXPECT_TRUE(wash().isSigned);
    EXPECT_FALSE(wash().newSinceSigning);
    EXPECT_FALSE(result().competencies.back().isSigned);
    last().lastSeq = 21;  // opened before, but it went on after
    EXPECT_TRUE(wash().newSinceSigning);
}

TEST_F(Assess, TeachBackOfAnotherPartLeavesASignatureBe) {
    record::SignOff said{.learner = learner, .competencies = {"wash-hands"}};
    said.pack.digest = taught.digest;
    person().signOffs.push_back({said, {.seq = 20}});
    person().asked.back().origin.seq = 21;  // about rubbing
    EXPECT_FALSE(result().competencies.front().newSinceSigning);
    person().asked.front().origin.seq = 22;  // about washing
    EXPECT_TRUE(result().competencies.front().newSinceSigning);
    person().asked.front().said.pack = "another";  // which has a question of that id too
    EXPECT_FALSE(result().competencies.front().newSinceSigning);
}

// That an addendum or a late entry is new is the rule of the record: later entries never undo a
// sign-off and are said to be new since.
class AssessSince : public Assess {
  protected:
    AssessSince() {
        record::SignOff said{.learner = learner, .competencies = {"wash-hands"}};
        said.pack.digest = taught.digest;
        for (record::Visit* visit : {&first(), &last()}) {
            visit->origin.entry = base::CommandId::random();
            visit->lastSeq = 10;
            visit->events.push_back({.id = base::CommandId::random()});
        }
        person().signOffs.push_back({said, at(20)});
    }
    static record::Origin at(std::uint64_t seq) {
        return {.entry = base::CommandId::random(), .seq = seq};
    }
    base::CommandId add(const base::CommandId& to, std::uint64_t seq = 30) {
        record.addenda.push_back({{.to = to, .text = "it was the left hand"}, at(seq)});
        return record.addenda.back().origin.entry;
    }
    base::CommandId mark(const base::CommandId& to, std::uint64_t seq = 30) {
        record.wrongCharts.push_back({{.to = to, .why = "of the next bed"}, at(seq)});
        return record.wrongCharts.back().origin.entry;
    }
    CompetencyState wash() const { return result().competencies.front(); }
    bool isNew() const { return wash().newSinceSigning; }
};

TEST_F(AssessSince, AnAddendumToWhatItRestsOn) {
    EXPECT_FALSE(isNew());
    add(base::CommandId::random());
    EXPECT_FALSE(isNew()) << "to the patient's own data, say";
    add(first().origin.entry, 19);
    EXPECT_FALSE(isNew()) << "written before it was signed";
    for (const base::CommandId& to :
         {first().origin.entry, last().events.front().id, person().signOffs.front().origin.entry}) {
        record.addenda.clear();
        const auto one = add(to);
        EXPECT_TRUE(isNew());
        record.addenda.back().origin.seq = 19;
        EXPECT_FALSE(isNew());
        add(one);
        EXPECT_TRUE(isNew()) << "an addendum to the addendum";
    }
    record.addenda.clear();
    person().asked.front().origin = at(11);  // about washing
    add(person().asked.front().origin.entry);
    EXPECT_TRUE(isNew());
    person().asked.front().said.pack = "another";
    EXPECT_FALSE(isNew());
}

TEST_F(AssessSince, AnAddendumToAVisitInWhichNothingOfItWasRecorded) {
    for (auto& seen : last().state.steps)
        if (packs::findStep(taught.pack, seen.step).competency->id == "wash-hands")
            seen.mark = practice::Mark::None;
    add(last().origin.entry);
    EXPECT_FALSE(isNew());
}

TEST_F(AssessSince, ALateEntryOfTheLearner) {
    const auto late = [&](std::optional<base::LearnerId> whose, std::uint64_t seq) {
        record.lateEntries.assign(1, {{.learner = std::move(whose), .text = "t"}, at(seq)});
        return isNew();
    };
    EXPECT_TRUE(late(learner, 30));
    EXPECT_TRUE(late(std::nullopt, 30)) << "it names nobody, so it may be about her";
    EXPECT_FALSE(late(base::LearnerId::random(), 30));
    EXPECT_FALSE(late(learner, 19));
    add(record.lateEntries.front().origin.entry);
    EXPECT_TRUE(isNew()) << "an addendum to it";
}

TEST_F(AssessSince, AMarkOfWhatItRestsOnAndNoneOfWhatCameLater) {
    mark(last().origin.entry);
    EXPECT_TRUE(isNew());
    EXPECT_TRUE(wash().isSigned) << "nothing undoes it";
    last().lastSeq = 25;  // it was only written after the signature
    EXPECT_FALSE(isNew());
    record.wrongCharts.clear();
    EXPECT_TRUE(isNew());
    mark(last().origin.entry);
    add(record.wrongCharts.front().origin.entry);
    EXPECT_TRUE(isNew()) << "the mark was a mistake, an addendum says";
    record.addenda.clear(), record.wrongCharts.clear();
    last().lastSeq = 10;
    record.lateEntries.push_back({{.learner = learner, .text = "t"}, at(30)});
    EXPECT_TRUE(isNew());
    mark(record.lateEntries.front().origin.entry);
    EXPECT_FALSE(isNew());
    record.lateEntries.front().origin.seq = 15;
    EXPECT_TRUE(isNew()) << "it was there when it was signed";
}

TEST_F(AssessSince, ASignatureInTheWrongChartIsNone) {
    const auto second = person().signOffs.front().said;
    person().signOffs.push_back({second, at(40)});
    EXPECT_EQ(wash().signature.seq, 40U);
    mark(person().signOffs.back().origin.entry, 50);
    EXPECT_TRUE(wash().isSigned);
    EXPECT_EQ(wash().signature.seq, 20U) << "the one before holds";
    mark(person().signOffs.front().origin.entry, 51);
    EXPECT_FALSE(wash().isSigned);
    EXPECT_FALSE(isNew());
}

TEST_F(AssessSince, AVisitInTheWrongChartShowsNothing) {
    EXPECT_EQ(unmet(), Rules{});
    mark(last().origin.entry);
    EXPECT_EQ(unmet(), (Rules{Rule::Observed, Rule::OnDays, Rule::UnpromptedRow}));
    EXPECT_EQ(demonstrations(record, learner, taught).size(), 1U);
    EXPECT_EQ(result().evidence.observed, 3);
}

TEST_F(Assess, NobodySignsWhatAnotherSaw) {
    const auto other = base::StaffId::random();
    const auto mine = [&](const base::StaffId& who) {
        return signableBy(who, record, learner, taught, result()).competencies;
    };
    EXPECT_EQ(mine(teacher), (Args{"wash-hands", "rub-hands"}));
    EXPECT_EQ(mine(other), Args{});
    for (auto& seen : last().state.steps)
        if (packs::findStep(taught.pack, seen.step).competency->id == "wash-hands")
            seen.seenBy = other;
    EXPECT_EQ(mine(teacher), Args{"rub-hands"});
    EXPECT_EQ(mine(other), Args{"wash-hands"});
    const auto signable = signableBy(teacher, record, learner, taught, result());
    ASSERT_EQ(signable.others.size(), 1U);
    EXPECT_EQ(signable.others.front().competency, "wash-hands");
    EXPECT_EQ(signable.others.front().teacher, other);
}

TEST_F(Assess, NobodySignsWhatNobodySawAllOf) {
    const auto other = base::StaffId::random();
    step(last(), "towel-dry").seenBy = other;  // one step is enough, critical or not
    for (const auto& who : {teacher, other}) {
        const auto signable = signableBy(who, record, learner, taught, result());
        EXPECT_EQ(std::ranges::count(signable.competencies, "wash-hands"), 0);
        EXPECT_TRUE(who == other || signable.others.empty());
        ASSERT_EQ(signable.shared.size(), 1U);
        EXPECT_EQ(signable.shared.front().competency, "wash-hands");
        EXPECT_EQ(signable.shared.front().teachers, (std::vector{teacher, other}));
    }
}

TEST_F(Assess, OnlyWhatWasShownAgainIsNewSinceSigning) {
    record::SignOff said{.learner = learner, .competencies = {"wash-hands", "rub-hands"}};
    said.pack.digest = taught.digest;
    person().signOffs.push_back({said, {.seq = 20}});
    demonstrate("2026-11-24T12:00:00.000Z");
    last().lastSeq = 30;
    last().state.ending = practice::Ending::Stopped;
    last().state.remaining = {1};
    const auto isNew = [&] {
        std::vector<bool> found;
        for (const CompetencyState& one : result().competencies)
            found.push_back(one.newSinceSigning);
        return found;
    };
    EXPECT_EQ(isNew(), (std::vector{true, true}));
    for (auto& seen : last().state.steps)
        if (packs::findStep(taught.pack, seen.step).competency->id == "rub-hands")
            seen.mark = practice::Mark::None;
    EXPECT_EQ(isNew(), (std::vector{true, false})) << "stopped before it was come to";
    last().opened.pack.digest = "another";
    EXPECT_EQ(isNew(), (std::vector{false, false}));
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
