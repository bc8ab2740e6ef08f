// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that are corrected or were removed: nothing of what was written goes away. Rules of our
// own, no source.
#include <gtest/gtest.h>

#include "core/record/book.h"
#include "record/card.h"
#include "support/ward.h"

namespace record {
namespace {

class Lines : public testing::Test {
  protected:
    AddLine add(Arm arm = Arm::Left, const char* changed = "2025-11-20") {
        AddLine line{.line = base::LineId::random(), .kind = "picc", .arm = arm};
        line.inserted = "2025-11-01";
        line.outsideMm = 300;
        line.dressing = "transparent";
        line.lastChange = changed;
        book.say(line);
        return line;
    }
    Card card() const {
        const auto derived = derive(book.fold());
        return *base::fromJson<Card>(nlohmann::json::parse(derived.cards.at(0).json));
    }
    void teachOn(const base::LineId& line) {
        auto opening = book.opening(learner);
        opening.line = line;
        const auto visit = base::VisitId::random();
        book.say(opening, visit);
        book.say(practice::CloseVisit{}, visit);
    }
    book::Book book;
    base::LearnerId learner = book.addLearner("Amara");
};

TEST_F(Lines, ACorrectedOneReadsRightAndKeepsWhatItRead) {
    const AddLine wrong = add();
    const auto written = book.entries.back().body.id;
    AddLine right = wrong;
    right.outsideMm = 30;
    book.say(CorrectLine{right, "typed a nought too many"});
    const auto correction = book.entries.back().body.id;
    AddLine again = right;
    again.arm = Arm::Right;
    book.say(CorrectLine{again, ""});
    const Record record = book.fold();
    ASSERT_EQ(record.lines.size(), 1U);
    const Line& line = record.lines[0];
    EXPECT_EQ(line.said, again);
    EXPECT_EQ(line.origin.entry, written);
    ASSERT_EQ(line.corrected.size(), 2U);
    EXPECT_EQ(line.corrected[0].before, wrong);
    EXPECT_EQ(line.corrected[0].why, "typed a nought too many");
    EXPECT_EQ(line.corrected[0].origin.entry, correction);
    EXPECT_EQ(line.corrected[0].origin.by, book.teacher);
    EXPECT_EQ(line.corrected[1].before, right);
    EXPECT_TRUE(line.isInUse);
    EXPECT_EQ(card().arm, "right");
}

TEST_F(Lines, ARemovedOneIsNotInUseUntilThatIsTakenBack) {
    const AddLine line = add();
    const AddLine other = add(Arm::Right);
    book.say(RemoveLine{other.line, "2025-11-23", "finished"});
    Record record = book.fold();
    ASSERT_EQ(record.lines.size(), 2U) << "the record keeps it";
    EXPECT_FALSE(record.lines[1].isInUse);
    EXPECT_EQ(record.lines[1].removals.at(0).said.on, "2025-11-23");
    ASSERT_EQ(record.linesInUse().size(), 1U);
    EXPECT_EQ(record.linesInUse()[0]->said, line);
    EXPECT_EQ(card().arm, "left");
    book.say(KeepLine{other.line, "the wrong one was pressed"});
    record = book.fold();
    EXPECT_TRUE(record.lines[1].isInUse);
    EXPECT_EQ(record.lines[1].removals.size(), 1U) << "it was said, and stays";
    EXPECT_EQ(record.lines[1].kept.at(0).said.why, "the wrong one was pressed");
    EXPECT_EQ(card().arm, "right");
}

TEST_F(Lines, WhatIsSaidOfOneTheRecordDoesNotHaveIsKeptAsUnknown) {
    const auto nobody = base::LineId::random();
    add();
    book.say(CorrectLine{AddLine{.line = nobody}, ""});
    book.say(RemoveLine{nobody, "2025-11-23", ""});
    book.say(KeepLine{nobody, ""});
    const Record record = book.fold();
    EXPECT_EQ(record.unknown.size(), 3U);
    EXPECT_TRUE(record.lines.at(0).corrected.empty());
    EXPECT_TRUE(record.lines.at(0).isInUse);
}

TEST_F(Lines, TheLineOfALearnerIsTheOneTaughtLastOfThoseInUse) {
    EXPECT_EQ(book.fold().lineFor(learner), nullptr);
    const AddLine first = add();
    const AddLine second = add(Arm::Right);
    const auto lineOf = [this] { return book.fold().lineFor(learner)->said.line; };
    EXPECT_EQ(lineOf(), second.line) << "the newest, while nobody was taught";
    teachOn(first.line);
    EXPECT_EQ(lineOf(), first.line);
    book.say(RemoveLine{first.line, "2025-11-23", ""});
    EXPECT_EQ(lineOf(), second.line);
    book.say(RemoveLine{second.line, "2025-11-23", ""});
    EXPECT_EQ(lineOf(), second.line) << "papers still say which line it was";
}

// The weekly pack: a transparent dressing every seven days (its own source says why).
TEST_F(Lines, EachOneInUseHasItsOwnDayTheSoonestFirst) {
    book.shelf.put(support::readPack("weekly-dressing-upper-arm"));
    const AddLine late = add(Arm::Left, "2025-11-22");
    const AddLine soon = add(Arm::Right, "2025-11-20");
    const auto dues = [this] {
        std::vector<std::pair<std::string, std::string>> found;
        for (const LineDue& one : duesOf(card(), book.shelf)) found.push_back({one.arm, *one.due});
        return found;
    };
    using Dues = std::vector<std::pair<std::string, std::string>>;
    EXPECT_EQ(dues(), (Dues{{"right", "2025-11-27"}, {"left", "2025-11-29"}}));
    EXPECT_EQ(dueOf(book.fold(), book.shelf), "2025-11-27");
    book.say(RemoveLine{soon.line, "2025-11-23", ""});
    EXPECT_EQ(dues(), (Dues{{"left", "2025-11-29"}}));
    EXPECT_EQ(dueOf(book.fold(), book.shelf), "2025-11-29");
    const auto weekly = support::readPack("weekly-dressing-upper-arm");
    const Record record = book.fold();
    EXPECT_EQ(dueOf(record, *record.line(late.line), weekly->pack), "2025-11-29");
    EXPECT_EQ(dueOf(record, *record.line(soon.line), weekly->pack), std::nullopt);
}

TEST_F(Lines, AChangeInAVisitIsOfTheLineItWasDoneOn) {
    book.shelf.put(support::readPack("weekly-dressing-upper-arm"));
    const AddLine left = add(Arm::Left, "2025-11-20");
    add(Arm::Right, "2025-11-20");
    auto opening = book.opening(learner);
    opening.line = left.line;
    const auto visit = base::VisitId::random();
    book.say(opening, visit);
    practice::RecordChange change;
    change.dressing = "transparent";
    change.due = "2025-12-01";
    book.say(change, visit);
    const auto dues = duesOf(book.fold(), book.shelf);
    ASSERT_EQ(dues.size(), 2U);
    EXPECT_EQ(dues[0].arm, "right");
    EXPECT_EQ(dues[0].due, "2025-11-27") << "the other arm was not changed";
    EXPECT_EQ(dues[1].due, "2025-12-01");
}

}  // namespace
}  // namespace record
