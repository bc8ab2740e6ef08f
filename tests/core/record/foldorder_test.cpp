// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A fold goes by Lamport tick, ledger and seq, never by a clock or by the order of arrival; ticks
// are those of L. Lamport, Time, Clocks, and the Ordering of Events, CACM 21 (1978), 558-565.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "core/record/book.h"
#include "record/card.h"

namespace record {
namespace {

/// A record's content in lines, so that two can be compared and told apart.
std::string told(const Record& record) {
    nlohmann::json all;
    all["patient"] = record.patient.name;
    all["entries"] = record.entries;
    for (const Learner& one : record.learners) {
        nlohmann::json person{{"name", one.said.name}};
        if (one.consent) person["consent"] = one.consent->origin.entry.text();
        for (const auto& asked : one.asked) person["asked"].push_back(asked.said.words);
        for (const auto& signOff : one.signOffs) person["signed"].push_back(signOff.said.statement);
        all["learners"].push_back(person);
    }
    for (const Visit& visit : record.visits) {
        nlohmann::json what{{"id", visit.id.text()}, {"open", visit.isOpen()}};
        for (const auto& event : visit.events) what["events"].push_back(event.id.text());
        for (const auto& step : visit.state.steps)
            what["marks"].push_back(static_cast<int>(step.mark));
        all["visits"].push_back(what);
    }
    for (const auto& late : record.lateEntries) all["late"].push_back(late.said.text);
    for (const auto& unknown : record.unknown) all["unknown"].push_back(unknown.type);
    return all.dump(1);
}

book::Book busyBook() {
    book::Book book;
    book.say(AddPatient{.name = "Teodor", .born = "1961-05-03", .number = "1", .language = "en"});
    const auto learner = book.addLearner("Amara");
    for (const bool yes : {true, false, true})
        book.say(AskConsent{.learner = learner, .toTeach = yes, .givenBy = "patient"});
    for (const char* words : {"first", "second", "third"})
        book.say(AskBack{.learner = learner, .pack = "", .prompt = "", .words = words});
    const auto visit = book.openVisit(learner);
    book.say(practice::SeeStep{{.step = "bare-arms"}}, visit);
    book.say(practice::SeeLapse{.lapses = {"ring-kept"}, .other = {}, .happened = {}}, visit);
    book.say(practice::TakeBack{.entry = book.entries.back().body.id}, visit);
    book.say(practice::CloseVisit{}, visit);
    book.say(AddLateEntry{.learner = {}, .text = "late", .reason = "r"}).body.atMs = 0;
    book.say(SignOff{.learner = learner, .statement = "seen"}).body.type = "from-the-future";
    book.say(AddPatient{.name = "Theo", .born = "1961-05-03", .number = "1", .language = "en"});
    return book;
}

TEST(FoldOrder, EntriesMayComeInAnyOrder) {
    const book::Book book = busyBook();
    const std::string expected = told(book.fold());
    EXPECT_TRUE(rc::check("a shuffled record is the same record", [&] {
        auto shuffled = book.entries;
        for (std::size_t i = shuffled.size(); i > 1; --i)
            std::swap(shuffled[i - 1], shuffled[*rc::gen::inRange<std::size_t>(0, i)]);
        const Record record = foldRecord(shuffled, book.shelf);
        RC_ASSERT(told(record) == expected);
        RC_ASSERT(derive(record) == derive(book.fold()));
    }));
}

TEST(FoldOrder, ClocksSetBackChangeNothing) {
    book::Book book = busyBook();
    const std::string expected = told(book.fold());
    for (ledger::Entry& entry : book.entries) entry.wallMs = -entry.wallMs;
    EXPECT_EQ(told(book.fold()), expected);
}

TEST(FoldOrder, OfTwoLedgersTheHigherTickIsNewer) {
    book::Book book;
    const auto learner = book.addLearner("Amara");
    const auto consent = [&](bool yes, std::uint64_t tick, std::uint64_t seq,
                             const base::LedgerId& ledger) {
        auto& entry = book.say(AskConsent{.learner = learner, .toTeach = yes, .givenBy = ""});
        entry.tick = tick, entry.seq = seq, entry.ledger = ledger;
    };
    consent(true, 40, 2, base::LedgerId::random());
    consent(false, 7, 900, base::LedgerId::random());
    EXPECT_TRUE(book.fold().learners.at(0).consent->said.toTeach);
}

TEST(FoldOrder, OfOneTickTheLedgerDecidesForEverybodyAlike) {
    book::Book book;
    const auto learner = book.addLearner("Amara");
    const auto low = *base::LedgerId::parse("aaaaaaaaaaaaaaaaaaaaaaaaaa");
    const auto high = *base::LedgerId::parse("7777777777777777777777777i");
    ASSERT_LT(high.text(), low.text()) << "bytes of ASCII: digits come before letters";
    for (const auto& [ledger, words] : {std::pair(low, "second"), std::pair(high, "first")}) {
        auto& entry =
            book.say(AskBack{.learner = learner, .pack = "", .prompt = "", .words = words});
        entry.tick = 50, entry.seq = ledger == low ? 1U : 9U, entry.ledger = ledger;
    }
    const auto asked = book.fold().learners.at(0).asked;
    ASSERT_EQ(asked.size(), 2U);
    EXPECT_EQ(asked[0].said.words, "first");
    EXPECT_EQ(asked[1].said.words, "second");
}

TEST(FoldOrder, TheHouseKeepsItToo) {
    book::Book book;
    book.say(SetUnit{.name = "old", .emergency = "", .teamNow = ""});
    book.say(SetUnit{.name = "new", .emergency = "", .teamNow = ""});
    std::reverse(book.entries.begin(), book.entries.end());
    EXPECT_EQ(foldHouse(book.entries).unit->name, "new");
}

}  // namespace
}  // namespace record
