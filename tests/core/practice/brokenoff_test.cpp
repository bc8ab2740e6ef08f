// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is kept of a timed phase that was broken off. Rules of our own, no source.
#include <gtest/gtest.h>

#include "core/practice/sitting.h"

namespace practice {
namespace {

using sitting::Sitting;

class BrokenOff : public testing::Test {
  protected:
    BrokenOff() {
        visit.open();
        visit.goTo("scrub-skin");
        visit.begin();
        visit.pass(7'200);
    }
    PhaseRun first() { return visit.record("scrub-skin").phases.front(); }
    void expectMeasured() {
        EXPECT_EQ(first().end, PhaseEnd::Voided);
        EXPECT_EQ(first().measuredMs, 7'200);
    }
    Sitting visit{"weekly-dressing-upper-arm"};
};

TEST_F(BrokenOff, ByALapseKeepsHowLongItRan) {
    visit.must(SeeLapse{.lapses = {"skin-touched"}});
    expectMeasured();
}

TEST_F(BrokenOff, ByALapseAfterAPauseLeavesThePauseOut) {
    Sitting resting{"weekly-dressing-upper-arm"};
    resting.open();
    resting.goTo("let-dry");
    resting.begin();
    resting.pass(5'000);
    resting.must(Pause{});
    resting.pass(60'000);
    resting.must(Resume{});
    resting.pass(2'000);
    resting.must(SeeLapse{.lapses = {"skin-touched"}});
    EXPECT_EQ(resting.record("let-dry").phases.front().measuredMs, 7'000);
}

TEST_F(BrokenOff, ByAPauseOrTheEndKeepsHowLongItRan) {
    Sitting paused = visit;
    paused.must(Pause{});
    EXPECT_EQ(paused.record("scrub-skin").phases.front().measuredMs, 7'200);
    visit.must(StopVisit{.why = StopReason::CalledAway});
    expectMeasured();
}

TEST_F(BrokenOff, ByAStepThatWasNotSeenKeepsHowLongItRan) {
    visit.must(OverlookStep{{.step = "scrub-skin"}});
    expectMeasured();
}

// It had ended at some moment while nobody was there.
TEST_F(BrokenOff, ByAnAbsenceSaysNothingOfHowLong) {
    visit.must(ComeBack{.by = BackBy::Absence, .awayMs = 120'000});
    EXPECT_EQ(first().end, PhaseEnd::Voided);
    EXPECT_EQ(first().measuredMs, 0);
}

TEST_F(BrokenOff, KeepsTheFirstLengthWhenItIsBegunAgain) {
    visit.must(SeeLapse{.lapses = {"skin-touched"}});
    const std::int64_t before = first().measuredMs;
    visit.pass(30'000);
    visit.must(ShowWayBack{});
    EXPECT_EQ(first().measuredMs, before);
}

}  // namespace
}  // namespace practice
