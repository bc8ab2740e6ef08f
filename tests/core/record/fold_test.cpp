// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What each entry does to a record. Meanings are the design's own, no source.
#include <gtest/gtest.h>

#include <functional>

#include "core/record/book.h"

namespace record {
namespace {

class Fold : public testing::Test {
  protected:
    book::Book book;
    base::LearnerId learner = book.addLearner("Amara");
};

struct PlaceRow {
    Payload payload;
    std::function<std::size_t(const Record&)> count;  ///< of what it adds to or sets
};

template <class T>
std::size_t has(const std::optional<T>& value) {
    return value ? 1 : 0;
}

TEST_F(Fold, EachPayloadOfAPersonHasOnePlace) {
    const auto one = [](const Record& record) -> const Learner& { return record.learners.at(0); };
    const std::vector<PlaceRow> rows{
        {AskAllergies{}, [](const Record& r) { return has(r.allergies); }},
        {AddLine{}, [](const Record& r) { return r.lines.size(); }},
        {AskConsent{.learner = learner, .givenBy = "patient"},
         [&](const Record& r) { return has(one(r).consent); }},
        {AskNeeds{.learner = learner, .home = ""},
         [&](const Record& r) { return has(one(r).needs); }},
        {AskBack{.learner = learner}, [&](const Record& r) { return one(r).asked.size(); }},
        {MakePlan{.learner = learner}, [&](const Record& r) { return one(r).plans.size(); }},
        {DoDrill{.learner = learner}, [&](const Record& r) { return one(r).drills.size(); }},
        {SignOff{.learner = learner}, [&](const Record& r) { return one(r).signOffs.size(); }},
        {DecideHelp{.learner = learner}, [&](const Record& r) { return has(one(r).help); }},
        {IssuePaper{.learner = learner}, [&](const Record& r) { return one(r).papers.size(); }},
        {AddAddendum{}, [](const Record& r) { return r.addenda.size(); }},
        {AddLateEntry{}, [](const Record& r) { return r.lateEntries.size(); }},
        {MarkWrongChart{}, [](const Record& r) { return r.wrongCharts.size(); }},
    };
    book.say(AddLine{.line = base::LineId::random(), .kind = "picc"}).body.data["line"] = 7;
    for (const PlaceRow& row : rows) {
        Payload payload = row.payload;
        if (auto* line = std::get_if<AddLine>(&payload)) line->line = base::LineId::random();
        if (auto* addendum = std::get_if<AddAddendum>(&payload))
            addendum->to = book.entries.front().body.id;
        if (auto* mark = std::get_if<MarkWrongChart>(&payload))
            mark->to = book.entries.front().body.id;
        const std::size_t before = row.count(book.fold());
        book.say(payload);
        const Record after = book.fold();
        EXPECT_EQ(row.count(after), before + 1) << typeOf(payload);
        EXPECT_EQ(after.unknown.size(), 1U) << typeOf(payload) << ": only the line number 7";
        EXPECT_EQ(after.entries, book.entries.size());
    }
}

TEST_F(Fold, AMarkLeavesWhatItMarksAndTakesItFromWhatCounts) {
    const auto visit = book.openVisit(learner);
    const auto opened = book.entries.back().body.id;
    book.say(practice::StopVisit{}, visit);
    const auto before = book.fold();
    EXPECT_EQ(before.wrongChart(opened), nullptr);
    EXPECT_EQ(before.visitsOf(learner).size(), 1U);
    const auto first = book.say(MarkWrongChart{.to = opened, .why = "of the next bed"}).body.id;
    book.say(MarkWrongChart{.to = opened, .why = "told by another record"});
    const auto after = book.fold();
    ASSERT_NE(after.wrongChart(opened), nullptr);
    EXPECT_EQ(after.wrongChart(opened)->origin.entry, first) << "the first mark says why";
    EXPECT_EQ(after.wrongChart(first), nullptr);
    EXPECT_TRUE(after.visitsOf(learner).empty());
    ASSERT_NE(after.visit(visit), nullptr) << "it stays";
    EXPECT_EQ(after.visit(visit)->events.size(), before.visit(visit)->events.size());
}

TEST_F(Fold, TheNewestAnswerCountsWhereThereIsOnlyOne) {
    book.say(AskAllergies{.allergies = {{.allergen = "latex", .reaction = "itch"}}});
    book.say(AskAllergies{});
    book.say(AskConsent{.learner = learner, .toTeach = true, .givenBy = "patient"});
    book.say(AskConsent{.learner = learner, .toTeach = false, .givenBy = "patient"});
    book.say(AddPatient{.name = "T.", .born = "1961-05-03", .number = "1", .language = "en"});
    const auto& last = book.say(
        AddPatient{.name = "Teodor", .born = "1961-05-03", .number = "1", .language = "en"});
    const Record record = book.fold();
    EXPECT_TRUE(record.allergies->said.allergies.empty()) << "asked again, none known";
    EXPECT_FALSE(record.learners[0].consent->said.toTeach) << "withdrawn";
    EXPECT_EQ(record.patient.name, "Teodor");
    EXPECT_EQ(record.origin.entry, last.body.id);
}

TEST_F(Fold, WhoAndWhenGoWithEverything) {
    ledger::Entry& entry = book.say(AskAllergies{});
    entry.body.atMs = 5000;
    entry.wallMs = 7000;
    entry.body.offsetMinutes = -300;
    const Origin origin = book.fold().allergies->origin;
    EXPECT_EQ(origin.entry, entry.body.id);
    EXPECT_EQ(origin.by, book.teacher);
    EXPECT_EQ(origin.atMs, 5000);
    EXPECT_EQ(origin.wallMs, 7000);
    EXPECT_EQ(origin.offsetMinutes, -300);
    EXPECT_EQ(origin.seq, entry.seq);
    EXPECT_EQ(book.fold().id, book.patient);
}

TEST_F(Fold, ALateEntryKeepsBothTimesAndItsReason) {
    ledger::Entry& late =
        book.say(AddLateEntry{.learner = learner, .text = "wept", .reason = "power cut"});
    late.body.atMs = late.wallMs - 3'600'000;
    book.say(AddLateEntry{.learner = {}, .text = "of the line", .reason = "forgotten"});
    const Record record = book.fold();
    ASSERT_EQ(record.lateEntries.size(), 2U);
    EXPECT_EQ(record.lateEntries[0].said.reason, "power cut");
    EXPECT_EQ(record.lateEntries[0].origin.wallMs - record.lateEntries[0].origin.atMs, 3'600'000);
    EXPECT_EQ(record.lateEntries[1].said.learner, std::nullopt);
}

TEST_F(Fold, AnAddendumLeavesWhatItIsAddedTo) {
    book.say(AskNeeds{.learner = learner, .needs = {{"sight", "large print"}}, .home = "alone"});
    const auto asked = book.entries.back().body.id;
    const auto before = book.fold().learners[0].needs;
    book.say(AddAddendum{.to = asked, .text = "a neighbour comes"});
    const Record record = book.fold();
    EXPECT_EQ(record.learners[0].needs, before);
    ASSERT_EQ(record.addenda.size(), 1U);
    EXPECT_EQ(record.addenda[0].said.to, asked);
}

TEST_F(Fold, ALapseTakenBackIsKeptStruckThrough) {
    const auto visit = book.openVisit(learner);
    book.say(practice::SeeLapse{.lapses = {"ring-kept"}, .other = {}, .happened = {}}, visit);
    const auto lapse = book.entries.back().body.id;
    EXPECT_FALSE(book.fold().visits[0].state.lapses.at(0).withdrawn);
    book.say(practice::TakeBack{.entry = lapse}, visit);
    const Visit folded = book.fold().visits.at(0);
    ASSERT_EQ(folded.state.lapses.size(), 1U);
    EXPECT_TRUE(folded.state.lapses[0].withdrawn);
    EXPECT_EQ(folded.state.lapses[0].entry, lapse);
    EXPECT_EQ(folded.state.lapses[0].seenBy, book.teacher);
    EXPECT_EQ(folded.events.size(), 3U) << "nothing is thrown away";
}

TEST_F(Fold, TwoLearnersOfOnePatientDoNotMix) {
    const auto other = book.addLearner("Kofi");
    book.say(AskConsent{.learner = other, .toTeach = true, .givenBy = "patient"});
    book.say(AskBack{.learner = learner, .pack = "p", .prompt = "when-soap"});
    const auto first = book.openVisit(learner);
    book.say(practice::SeeStep{{.step = "bare-arms"}}, first);
    book.say(practice::CloseVisit{}, first);
    const auto second = book.openVisit(other);
    const Record record = book.fold();
    ASSERT_EQ(record.learners.size(), 2U);
    EXPECT_FALSE(record.learner(learner)->consent.has_value());
    EXPECT_TRUE(record.learner(other)->consent.has_value());
    EXPECT_EQ(record.learner(learner)->asked.size(), 1U);
    EXPECT_TRUE(record.learner(other)->asked.empty());
    ASSERT_EQ(record.visitsOf(learner).size(), 1U);
    EXPECT_EQ(record.visitsOf(learner)[0]->id, first);
    EXPECT_EQ(record.visitsOf(other)[0]->id, second);
    EXPECT_EQ(record.openVisit()->id, second);
    EXPECT_EQ(record.visit(first)->state.steps[0].mark, practice::Mark::Seen);
    EXPECT_EQ(record.visit(second)->state.steps[0].mark, practice::Mark::None);
    EXPECT_EQ(record.visit(base::VisitId::random()), nullptr);
    EXPECT_EQ(record.learner(base::LearnerId::random()), nullptr);
    EXPECT_EQ(record.line(base::LineId::random()), nullptr);
}

TEST_F(Fold, AChangeAndAStopAreToldOfTheirVisit) {
    const auto visit = book.openVisit(learner);
    book.say(practice::RecordChange{.dressing = "transparent",
                                    .due = "2026-12-01",
                                    .initials = "SA",
                                    .site = "clean",
                                    .tolerance = "well"},
             visit);
    book.say(practice::StopVisit{.why = practice::StopReason::CalledAway,
                                 .note = "",
                                 .siteCovered = true,
                                 .lineHeld = true},
             visit);
    const auto last = book.entries.back();
    const Visit folded = book.fold().visits.at(0);
    EXPECT_EQ(folded.change->said.due, "2026-12-01");
    EXPECT_EQ(folded.stopped->said.siteCovered, true);
    EXPECT_EQ(folded.stopped->origin.entry, last.body.id);
    EXPECT_EQ(folded.lastSeq, last.seq);
    EXPECT_FALSE(folded.isOpen());
    EXPECT_EQ(folded.state.ending, practice::Ending::Stopped);
}

TEST_F(Fold, AVisitWithoutItsPackIsOpenOrEnded) {
    for (const Payload& end : {Payload(practice::CloseVisit{}), Payload(practice::StopVisit{})}) {
        auto opened = book.opening(learner);
        opened.pack.digest = std::string(64, '0');
        const auto visit = base::VisitId::random();
        book.say(opened, visit);
        book.say(practice::SeeStep{{.step = "bare-arms"}}, visit);
        EXPECT_EQ(book.fold().visit(visit)->taught, nullptr);
        EXPECT_TRUE(book.fold().visit(visit)->isOpen());
        book.say(end, visit);
        EXPECT_FALSE(book.fold().visit(visit)->isOpen());
        EXPECT_EQ(book.fold().visit(visit)->events.size(), 3U);
    }
}

struct UnplacedRow {
    const char* what;
    Payload payload;
    bool inVisit;
};

TEST_F(Fold, WhatHasNoPlaceIsKeptAndShown) {
    const auto nobody = base::LearnerId::random();
    const std::vector<UnplacedRow> rows{
        {"of an unknown learner", AskConsent{.learner = nobody, .givenBy = ""}, false},
        {"signed for an unknown learner", SignOff{.learner = nobody}, false},
        {"a step outside of all visits", practice::SeeStep{{.step = "bare-arms"}}, false},
        {"a step of an unknown visit", practice::SeeStep{{.step = "bare-arms"}}, true},
        {"a visit without an id", book.opening(learner), false},
        {"staff in a patient's record",
         AddStaff{.staff = book.teacher, .name = "S", .initials = "S"}, false},
        {"the unit in a patient's record", SetUnit{}, false},
    };
    for (const UnplacedRow& row : rows) {
        const auto before = book.fold().unknown.size();
        book.say(row.payload, row.inVisit ? std::optional(base::VisitId::random()) : std::nullopt);
        const Record record = book.fold();
        ASSERT_EQ(record.unknown.size(), before + 1) << row.what;
        EXPECT_EQ(record.unknown.back().type, typeOf(row.payload));
        EXPECT_EQ(record.unknown.back().origin.entry, book.entries.back().body.id);
    }
    EXPECT_TRUE(book.fold().visits.empty());
}

TEST_F(Fold, TypesFromTheFutureAreKeptWithTheirWeight) {
    book.say(AskAllergies{}).body.type = "blood-drawn";
    book.say(AskAllergies{}).body.type = "window-opened";
    book.entries.back().body.must = false;
    book.say(AskAllergies{}).body.data["colour"] = "blue";
    const Record record = book.fold();
    ASSERT_EQ(record.unknown.size(), 3U);
    EXPECT_EQ(record.unknown[0].type, "blood-drawn");
    EXPECT_TRUE(record.unknown[0].must);
    EXPECT_FALSE(record.unknown[1].must);
    EXPECT_EQ(record.unknown[2].type, "allergies-asked") << "known, but with more than is known";
    EXPECT_FALSE(record.allergies.has_value());
    EXPECT_EQ(record.entries, 4U);
}

TEST(FoldHouse, HoldsTheStaffInOrderAndTheNewestUnit) {
    book::Book book;
    const auto other = base::StaffId::random();
    book.say(AddStaff{.staff = book.teacher, .name = "Solveig", .initials = "SA"});
    book.say(AddStaff{.staff = other, .name = "Ines", .initials = "IH", .role = Role::Auditor});
    book.say(SetUnit{.name = "Unit 4", .emergency = "1", .teamNow = "2"});
    book.say(SetUnit{.name = "Unit 5", .emergency = "1", .teamNow = "2"});
    book.say(AskAllergies{});
    const House house = foldHouse(book.entries);
    ASSERT_EQ(house.staff.size(), 2U);
    EXPECT_EQ(house.staff[0].said.name, "Solveig");
    EXPECT_EQ(house.person(other)->said.role, Role::Auditor);
    EXPECT_EQ(house.person(base::StaffId::random()), nullptr);
    EXPECT_EQ(house.unit->name, "Unit 5");
}

}  // namespace
}  // namespace record
