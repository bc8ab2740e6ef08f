// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is new since a signature, and what is not: rules of our own, no source.
#include "core/readiness/assessing.h"
#include "readiness/demonstrations.h"

namespace readiness {
namespace {

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

}  // namespace
}  // namespace readiness
