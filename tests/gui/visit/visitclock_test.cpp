// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The computer is started again in the middle of a visit, and its clock is behind what it was.
#include "gui/visit/filedvisit.h"

namespace {

class ClockSetBack : public FiledVisit {};

TEST_F(ClockSetBack, BetweenTwoStartsTheVisitGoesOnInItsOrder) {
    beginVisit();
    for (int i = 0; i < 20 && practice::runningPhase(state()) == nullptr; ++i) seeNext();
    ASSERT_NE(practice::runningPhase(state()), nullptr) << "no clock runs when it is stopped";
    const auto kept = entries();
    stopProgram();
    base::Instant early = m_clock.now();
    early.wallMs -= 86'400'000;  // a day
    early.bootMs = early.monoMs = 60'000;
    early.bootId = "the next start";
    m_clock.set(early);
    openRecord();
    ASSERT_NE(m_desk->view().visit(), nullptr);
    EXPECT_EQ(entries(), kept);
    picture("visit-16-after-a-clock-set-back");
    key(Qt::Key_Space);
    ASSERT_EQ(types().last(), QString::fromLatin1(practice::ComeBack::type));
    for (const Qt::Key one : {Qt::Key_C, Qt::Key_Space, Qt::Key_Space}) {
        key(one);
        EXPECT_EQ(said(), QString()) << one;
    }
    const auto all = entries();
    ASSERT_GE(all.size(), kept.size() + 3);
    EXPECT_TRUE(std::equal(kept.begin(), kept.end(), all.begin()));
    for (std::size_t i = 1; i < all.size(); ++i) EXPECT_GT(all[i].tick, all[i - 1].tick);
    EXPECT_LT(all.back().wallMs, kept.back().wallMs) << "the time stands as it was given";
    for (const practice::StepRecord& step : state().steps)
        for (const practice::PhaseRun& run : step.phases) EXPECT_GE(run.measuredMs, 0) << run.phase;
    EXPECT_TRUE(dynamic_cast<store::SqlLedger&>(*m_ledger).check()->isIntact());
}

}  // namespace
