// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the list of learners is told of a record. Rules of our own, no source.
#include "record/card.h"

#include <gtest/gtest.h>

#include "base/date.h"
#include "core/record/book.h"
#include "ledger/jcs.h"
#include "support/ward.h"

namespace record {
namespace {

class Cards : public testing::Test {
  protected:
    Cards() {
        book.say(AddPatient{
            .name = "Teodor Okonjo", .born = "1961-05-03", .number = "N-1042", .language = "en"});
    }
    Card card(std::size_t index = 0) const {
        const auto derived = derive(book.fold());
        return *base::fromJson<Card>(nlohmann::json::parse(derived.cards.at(index).json));
    }
    void change(const base::VisitId& visit, std::optional<std::string> due) {
        practice::RecordChange change;
        change.dressing = "transparent";
        change.due = std::move(due);
        book.say(change, visit);
    }
    void sign(const std::vector<std::string>& competencies, const std::string& digest) {
        SignOff signOff{.learner = learner};
        signOff.pack.digest = digest;
        signOff.competencies = competencies;
        book.say(signOff);
    }
    book::Book book;
    base::LearnerId learner = book.addLearner("Amara");
};

TEST_F(Cards, ANewLearnerHasNothingYet) {
    const Card bare = card();
    EXPECT_EQ(bare.learner, learner);
    EXPECT_EQ(bare.patient, book.patient);
    EXPECT_EQ(bare.patientName, "Teodor Okonjo");
    EXPECT_EQ(bare.number, "N-1042");
    EXPECT_EQ(bare.learnerName, "Amara");
    EXPECT_EQ(bare.relationship, "wife");
    EXPECT_EQ(bare.arm, "");
    EXPECT_EQ(bare.visits, 0);
    EXPECT_EQ(bare.competencies, 0);
    EXPECT_EQ(bare.packTitle, std::nullopt);
    EXPECT_EQ(bare.due, std::nullopt);
    EXPECT_EQ(bare.lastVisit, std::nullopt);
    EXPECT_FALSE(bare.visitOpen);
    EXPECT_FALSE(derive(book.fold()).setsOpenVisit);
}

TEST_F(Cards, ThereIsOneForEachLearnerAndThePatientGoesByTheirOwnName) {
    const auto self = base::LearnerId::random();
    book.say(AddLearner{.learner = self, .isPatient = true, .name = "", .relationship = ""});
    const auto derived = derive(book.fold());
    ASSERT_EQ(derived.cards.size(), 2U);
    EXPECT_EQ(derived.foldVersion, foldVersion);
    EXPECT_EQ(card(1).learnerName, "Teodor Okonjo");
    EXPECT_EQ(card(1).relationship, "patient");
    EXPECT_EQ(derived.cards[1].searchKeys,
              (std::vector<std::string>{"teodor", "okonjo", "n", "1042"}));
    EXPECT_EQ(derived.cards[1].sortKey, "teodor okonjo " + self.text());
    EXPECT_EQ(derived.cards[0].searchKeys.front(), "amara");
}

TEST_F(Cards, TheArmIsThatOfTheNewestLine) {
    book.say(AddLine{.line = base::LineId::random(), .kind = "picc", .arm = Arm::Left});
    EXPECT_EQ(card().arm, "left");
    book.say(AddLine{.line = base::LineId::random(), .kind = "picc", .arm = Arm::Right});
    EXPECT_EQ(card().arm, "right");
}

TEST_F(Cards, VisitsAreCountedAndTheLastIsDatedWhereItWas) {
    const auto first = book.openVisit(learner);
    book.say(practice::CloseVisit{}, first);
    book.openVisit(learner);
    ledger::Entry& opened = book.entries.back();
    opened.body.atMs = *base::parseIsoUtc("2026-11-24T23:30:00.000Z");
    opened.body.offsetMinutes = 60;
    EXPECT_EQ(card().visits, 2);
    EXPECT_EQ(card().lastVisit, "2026-11-25");
    EXPECT_TRUE(card().visitOpen);
    const auto other = book.addLearner("Kofi");
    EXPECT_EQ(card(1).learner, other);
    EXPECT_EQ(card(1).visits, 0) << "of another";
    EXPECT_FALSE(card(1).visitOpen);
}

TEST_F(Cards, TheOpenVisitIsTold) {
    const auto visit = book.openVisit(learner);
    const auto derived = derive(book.fold());
    EXPECT_TRUE(derived.setsOpenVisit);
    EXPECT_EQ(derived.openVisit, (ledger::OpenVisitRow{visit, book.patient}));
    book.say(practice::StopVisit{}, visit);
    EXPECT_EQ(derive(book.fold()).openVisit, std::nullopt);
}

TEST_F(Cards, TheNextChangeIsDueByTheNewestThatSaysSo) {
    const auto visit = book.openVisit(learner);
    change(visit, "2026-12-01");
    EXPECT_EQ(card().due, "2026-12-01");
    book.say(practice::CloseVisit{}, visit);
    const auto next = book.openVisit(learner);
    change(next, std::nullopt);
    EXPECT_EQ(card().due, "2026-12-01");
    change(next, "2026-11-28");
    EXPECT_EQ(card().due, "2026-11-28") << "sooner, because it came loose";
    book.addLearner("Kofi");
    EXPECT_EQ(card(1).due, "2026-11-28") << "it is the patient's line, whoever is taught";
    EXPECT_EQ(dueOf(book.fold(), book.shelf), "2026-11-28");
}

TEST_F(Cards, WhatWasWrittenInTheWrongChartCountsForNothing) {
    const auto right = book.openVisit(learner);
    change(right, "2026-12-01");
    book.say(practice::CloseVisit{}, right);
    const auto wrong = book.openVisit(learner);
    const auto opened = book.entries.back().body.id;
    change(wrong, "2027-01-01");
    book.say(practice::CloseVisit{}, wrong);
    sign({"wash-hands"}, book.taught->digest);
    const auto signedOff = book.entries.back().body.id;
    EXPECT_EQ(card().due, "2027-01-01");
    EXPECT_EQ(card().visits, 2);
    EXPECT_EQ(card().signedCompetencies, 1);
    book.say(MarkWrongChart{.to = opened, .why = "of the next bed"});
    EXPECT_EQ(card().due, "2026-12-01");
    EXPECT_EQ(card().visits, 1);
    EXPECT_EQ(card().signedCompetencies, 1) << "it was not marked";
    book.say(MarkWrongChart{.to = signedOff, .why = "of the next bed"});
    EXPECT_EQ(card().signedCompetencies, 0);
}

TEST_F(Cards, ThePackOfAVisitInTheWrongChartSaysNoDueDate) {
    const auto weekly = support::readPack("weekly-dressing-upper-arm");
    book.shelf.put(weekly);
    AddLine line{.line = base::LineId::random(), .kind = "picc", .dressing = "transparent"};
    line.lastChange = "2026-11-24";
    book.say(line);
    auto opening = book.opening(learner);
    opening.pack = {weekly->pack.id, weekly->pack.version, weekly->digest};
    const auto opened = book.say(opening, base::VisitId::random()).body.id;
    EXPECT_EQ(card().due, "2026-12-01");
    book.say(MarkWrongChart{.to = opened, .why = "of the next bed"});
    EXPECT_EQ(card().due, std::nullopt);
}

// The weekly pack: a transparent dressing every 7 days, gauze every 2 (its own source says why).
TEST_F(Cards, TheNextChangeIsDueByTheDayALineWasLastChanged) {
    AddLine line{.line = book.line, .kind = "picc", .dressing = "transparent"};
    line.lastChange = "2026-11-24";
    book.say(line);
    const auto correct = [&](const char* dressing, const char* on) {
        line.dressing = dressing;
        line.lastChange = on;
        book.say(CorrectLine{line, ""});
    };
    const auto shown = [this] {
        const auto dues = duesOf(card(), book.shelf);
        return dues.empty() ? std::nullopt : dues.front().due;
    };
    const auto byPack = [this](const packs::Pack& pack) {
        const Record record = book.fold();
        return dueOf(record, record.lines.at(0), pack);
    };
    EXPECT_EQ(card().due, std::nullopt) << "no pack was taught that says how long it may stay";
    EXPECT_EQ(shown(), std::nullopt) << "nor is one at hand";
    const auto weekly = support::readPack("weekly-dressing-upper-arm");
    book.shelf.put(weekly);
    EXPECT_EQ(card().due, std::nullopt) << "a row does not hang on what can be taught";
    EXPECT_EQ(shown(), "2026-12-01");
    EXPECT_EQ(dueOf(book.fold(), book.shelf), "2026-12-01");
    EXPECT_EQ(byPack(weekly->pack), "2026-12-01");
    EXPECT_EQ(byPack(support::readPack("clean-hands")->pack), std::nullopt);
    auto opening = book.opening(learner);
    opening.pack = {weekly->pack.id, weekly->pack.version, weekly->digest};
    const auto visit = base::VisitId::random();
    book.say(opening, visit);
    EXPECT_EQ(card().due, "2026-12-01");
    book.openVisit(learner);
    EXPECT_EQ(card().due, "2026-12-01") << "clean hands say nothing of dressings";
    change(visit, "2026-12-03");
    const std::string today = base::dateAt(book.entries.back().body.atMs, 0);
    ASSERT_EQ(today, "2025-11-24");
    EXPECT_EQ(card().due, "2026-12-01") << "the newest that was changed, not that was written";
    correct("gauze", "2026-11-25");
    EXPECT_EQ(card().due, "2026-11-27");
    correct("a dressing of another kind", "2026-11-26");
    EXPECT_EQ(card().due, std::nullopt) << "not what was due of the one before";
    EXPECT_EQ(shown(), std::nullopt);
    line.kind = "port";
    correct("transparent", "2026-11-27");
    EXPECT_EQ(card().due, std::nullopt) << "the pack is for other lines";
    line.kind = "picc";
    correct("transparent", "the day before");
    EXPECT_EQ(card().due, "2026-12-03") << "that is no date; the visit's is";
}

// Of a line that the pack is not made for it says nothing.
TEST_F(Cards, BeforeTheFirstVisitOnlyAPackForSuchALineSaysWhenItIsDue) {
    book.shelf.put(support::readPack("weekly-dressing-upper-arm"));
    const auto dueOfOne = [this](const char* kind, const char* dressing) {
        AddLine line{.line = base::LineId::random(), .kind = kind, .dressing = dressing};
        line.lastChange = "2025-11-21";
        book.say(line);
        const Record record = book.fold();
        for (const LineDue& one : duesOf(record, book.shelf))
            if (one.line == line.line) return one.due;
        return std::optional<std::string>();
    };
    EXPECT_EQ(dueOfOne("port", "transparent"), std::nullopt);
    EXPECT_EQ(dueOfOne("picc", "transparent"), "2025-11-28");
    EXPECT_EQ(dueOfOne("picc", ""), std::nullopt) << "nobody says what lies on it";
}

TEST_F(Cards, AChangeAfterTheLineWasAddedCountsAlone) {
    const auto weekly = support::readPack("weekly-dressing-upper-arm");
    book.shelf.put(weekly);
    AddLine line{.line = book.line, .kind = "picc", .dressing = "transparent"};
    line.lastChange = "2025-11-20";
    book.say(line);
    auto opening = book.opening(learner);
    opening.pack = {weekly->pack.id, weekly->pack.version, weekly->digest};
    const auto visit = base::VisitId::random();
    book.say(opening, visit);
    EXPECT_EQ(card().due, "2025-11-27");
    change(visit, "2025-12-01");
    EXPECT_EQ(card().due, "2025-12-01");
}

TEST_F(Cards, CompetenciesCountOnceAndOnlyOfThePackTaught) {
    book.say(practice::CloseVisit{}, book.openVisit(learner));
    EXPECT_EQ(card().signedCompetencies, 0);
    EXPECT_EQ(card().competencies, 2);
    EXPECT_EQ(card().packTitle, book.taught->pack.title.at("en"));
    sign({"wash-hands"}, book.taught->digest);
    sign({"wash-hands"}, book.taught->digest);
    EXPECT_EQ(card().signedCompetencies, 1);
    sign({"wash-hands", "rub-hands"}, std::string(64, '0'));
    EXPECT_EQ(card().signedCompetencies, 1) << "another pack's words were signed";
    sign({"rub-hands"}, book.taught->digest);
    EXPECT_EQ(card().signedCompetencies, 2);
}

// RFC 8785: the bytes of a derived row are those of its canonical form.
TEST_F(Cards, AreWrittenInCanonicalForm) {
    const std::string json = derive(book.fold()).cards.at(0).json;
    EXPECT_EQ(ledger::jcs(nlohmann::json::parse(json)).value(), json);
}

}  // namespace
}  // namespace record
