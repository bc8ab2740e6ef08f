// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the patient came with, and what a machine that stopped costs, is no lapse of the learner; a
// step that does not apply is counted nowhere. Rules of our own, no source.
#include "practice/found.h"

#include <gtest/gtest.h>

#include "core/practice/sitting.h"
#include "practice/tally.h"

namespace practice {
namespace {

using sitting::Sitting;

class Found : public testing::Test {
  protected:
    Found() { visit.open(); }
    const LapseRecord& newest() const { return visit.state.lapses.back(); }
    Sitting visit{"weekly-dressing-upper-arm"};
};

TEST_F(Found, RednessIsNoLapseOfWhoFindsIt) {
    visit.goTo("look-site");
    visit.must(Sitting::lapse({"signs-found"}));
    EXPECT_TRUE(newest().found);
    EXPECT_FALSE(newest().isLearners());
    visit.goBack();
    visit.doStep();
    EXPECT_EQ(visit.help("look-site"), Help::Unprompted);
}

TEST_F(Found, SeenAfterTheStepItIsStillFoundThere) {
    visit.goTo("look-site");
    visit.doStep();
    ASSERT_EQ(visit.hand(), "count-marks");
    visit.must(Sitting::lapse({"signs-found"}));
    EXPECT_TRUE(newest().found);
}

// Skin that was whole when it was looked at, and is sore now, was hurt in between.
TEST_F(Found, WhatHappenedAfterThePatientWasLookedAtIsALapse) {
    visit.goTo("open-device");
    SeeLapse late = Sitting::lapse({"skin-hurt"});
    late.happened = "look-site";
    visit.must(late);
    EXPECT_FALSE(newest().found);
    EXPECT_TRUE(newest().isLearners());
    late.foundThen = false;
    visit.must(late);
    EXPECT_FALSE(newest().found);
    late.foundThen = true;
    visit.must(late);
    EXPECT_TRUE(newest().found) << "seen then, told now";
    late.happened = "count-marks";
    visit.must(late);
    EXPECT_FALSE(newest().found) << "the pack says where it is looked for";
    late.happened.reset();
    visit.must(late);
    EXPECT_FALSE(newest().found) << "it is seen now, in a step where it is none";
}

TEST_F(Found, WhoHadToBeShownItWasHelped) {
    visit.goTo("look-site");
    visit.must(Sitting::lapse({"signs-found"}));
    visit.must(ShowWayBack{});
    visit.goBack();
    visit.doStep();
    EXPECT_EQ(visit.help("look-site"), Help::Cued);
    EXPECT_EQ(tallyOf(visit.state).lapses, 0);
}

TEST_F(Found, TheSameBroughtAboutLaterIsALapse) {
    visit.goTo("lift-pad");
    visit.must(Sitting::lapse({"skin-hurt"}));
    EXPECT_FALSE(newest().found);
    visit.goBack();
    visit.doStep();
    EXPECT_EQ(visit.help("lift-pad"), Help::Cued);
}

// The length is measured again after the line was pulled: what is seen then may be of the pull.
TEST_F(Found, SeenOnTheWayBackFromALapseItMayBeWhatThatLapseDid) {
    visit.goTo("measure-length");
    visit.must(Sitting::lapse({"line-moved"}));
    EXPECT_TRUE(newest().found);
    visit.goBack();
    visit.must(Sitting::lapse({"line-tugged"}));
    ASSERT_TRUE(newest().isLearners());
    visit.must(Sitting::lapse({"line-moved"}));
    EXPECT_FALSE(newest().found) << visit.hand();
}

TEST_F(Found, WithALapseOfTheLearnerAmongThemItIsOne) {
    visit.goTo("look-site");
    visit.must(Sitting::lapse({"signs-found", "face-back"}));
    EXPECT_FALSE(newest().found);
    EXPECT_TRUE(newest().isLearners());
}

TEST_F(Found, WhatThePackDoesNotListIsWhatTheTeacherSays) {
    visit.goTo("feel-through");
    for (const bool isFound : {true, false}) {
        visit.must(SeeLapse{.other = OtherLapse{.what = "The dressing is wet", .found = isFound}});
        EXPECT_EQ(newest().found, isFound);
    }
    SeeLapse both = Sitting::lapse({"signs-found"});
    both.other = OtherLapse{.what = "The dressing is wet", .found = true};
    visit.must(both);
    EXPECT_TRUE(newest().found);
}

TEST_F(Found, OfTwoAtOneMomentWhatIsLeftDecides) {
    visit.goTo("look-site");
    const auto said = visit.must(Sitting::lapse({"signs-found", "face-back"}));
    visit.must(WithdrawLapse{.entry = said, .lapse = "face-back"});
    EXPECT_TRUE(newest().found);
}

TEST(Tallies, LeaveOutWhatDoesNotApplyWhatWasFoundAndACrash) {
    Sitting visit("weekly-dressing-upper-arm");
    visit.open();
    visit.goTo("measure-arm");
    const Tally before = tallyOf(visit.state);
    EXPECT_EQ(before.recorded, before.unprompted);
    visit.must(SkipStep{{.step = "measure-arm"}});
    Tally now = tallyOf(visit.state);
    EXPECT_EQ(now.steps, before.steps - 1);
    EXPECT_EQ(now.recorded, before.recorded);
    EXPECT_EQ(now.unprompted, before.unprompted);
    visit.goTo("look-site");
    visit.must(Sitting::lapse({"signs-found"}));
    visit.must(CatchAlone{});
    visit.must(ComeBack{.by = BackBy::Restart});
    visit.goBack();
    now = tallyOf(visit.state);
    EXPECT_EQ(now.lapses, 0);
    EXPECT_EQ(now.caughtAlone, 0);
    EXPECT_EQ(now.found, 1);
    EXPECT_EQ(now.absences, 1);
    visit.must(Sitting::lapse({"face-back"}));
    visit.must(CatchAlone{});
    const auto gone = visit.must(Sitting::lapse({"mask-slipped"}));
    visit.must(TakeBack{.entry = gone});
    visit.goBack();
    visit.doStep();
    now = tallyOf(visit.state);
    EXPECT_EQ(now.lapses, 1);
    EXPECT_EQ(now.caughtAlone, 1);
    EXPECT_EQ(now.unprompted, now.recorded - 1) << "the step with the lapse alone";
}

}  // namespace
}  // namespace practice
