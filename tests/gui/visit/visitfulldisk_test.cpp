// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The disk fills up in the middle of a visit: it is said, nothing shows as done that is not kept,
// nothing that was kept is lost, and the visit goes on when there is room again.
#include <QLineEdit>

#include "gui/visit/filedvisit.h"
#include "text/errortext.h"

namespace {

/// No write gets through, for as long as it lives.
class NoRoom {
  public:
    NoRoom() {
        support::diskJudge() = [](support::DiskOperation, const auto&) { return SQLITE_FULL; };
    }
    ~NoRoom() { support::diskJudge() = nullptr; }
    NoRoom(const NoRoom&) = delete;
    NoRoom& operator=(const NoRoom&) = delete;
};

class FullDiskVisit : public FiledVisit {};

TEST_F(FullDiskVisit, IsSaidAndGoesOnWhenThereIsRoomAgain) {
    beginVisit();
    const auto kept = entries();
    const auto step = practice::recordInHand(state())->step;
    EXPECT_EQ(said(), QString());
    {
        const NoRoom full;
        for (const Qt::Key one : {Qt::Key_C, Qt::Key_H, Qt::Key_Space}) {
            key(one);
            EXPECT_EQ(said(), ui::ErrorText::of({base::Code::StoreFull})) << one;
        }
        EXPECT_EQ(entries(), kept) << "what was not kept is in the record";
        EXPECT_EQ(practice::recordInHand(state())->step, step) << "shown as done, and not kept";
    }
    key(Qt::Key_C);
    EXPECT_EQ(said(), QString()) << "there is room again";
    ASSERT_EQ(entries().size(), kept.size() + 1);
    EXPECT_EQ(types().last(), QStringLiteral("cue-given"));
    EXPECT_TRUE(std::equal(kept.begin(), kept.end(), entries().begin()));
}

TEST_F(FullDiskVisit, ANoteThatWasNotKeptIsStillThereToBeSentAgain) {
    beginVisit();
    const auto kept = entries().size();
    key(Qt::Key_N);
    auto* note = page().findChild<QLineEdit*>(QStringLiteral("note"));
    QTest::keyClicks(note, QStringLiteral("left hand"));
    {
        const NoRoom full;
        QTest::keyClick(note, Qt::Key_Return);
        EXPECT_EQ(said(), ui::ErrorText::of({base::Code::StoreFull}));
        EXPECT_EQ(entries().size(), kept);
        EXPECT_EQ(note->text(), QStringLiteral("left hand")) << "it would have to be written again";
    }
    m_clock.advanceMs(400);
    QTest::keyClick(note, Qt::Key_Return);
    EXPECT_EQ(said(), QString());
    EXPECT_EQ(entries().size(), kept + 1);
    EXPECT_EQ(entries().back().body.data["text"], "left hand");
}

// It is not freed before the program is closed: the next start has all that was acknowledged.
TEST_F(FullDiskVisit, WhatWasAcknowledgedIsThereAtTheNextStart) {
    beginVisit();
    const auto kept = entries();
    const auto steps = state().steps;
    {
        const NoRoom full;
        key(Qt::Key_Space);
        stopProgram();
    }
    openRecord();
    EXPECT_EQ(entries(), kept);
    EXPECT_TRUE(dynamic_cast<store::SqlLedger&>(*m_ledger).check()->isIntact());
    ASSERT_TRUE(m_desk->view().visit() != nullptr);
    EXPECT_EQ(state().steps.size(), steps.size());
    EXPECT_EQ(state().steps.front().cues, steps.front().cues);
    {
        const NoRoom full;
        key(Qt::Key_Space);
        EXPECT_EQ(said(), ui::ErrorText::of({base::Code::StoreFull}));
        EXPECT_EQ(entries(), kept);
        picture("visit-15-full-disk-at-coming-back");
    }
    // Nothing is said of a step before that somebody was away is in the record.
    key(Qt::Key_C);
    EXPECT_EQ(entries(), kept);
    key(Qt::Key_Space);
    EXPECT_EQ(said(), QString());
    ASSERT_EQ(entries().size(), kept.size() + 1);
    EXPECT_EQ(types().last(), QString::fromLatin1(practice::ComeBack::type));
    key(Qt::Key_C);
    EXPECT_EQ(types().last(), QStringLiteral("cue-given")) << "the visit does not go on";
}

}  // namespace
