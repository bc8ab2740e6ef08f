// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Every way to say that something went wrong, by keys alone; looked at in what the ledger holds.
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <algorithm>
#include <set>

#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"
#include "visit/question.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

/// What the newest entry of the visit says.
template <class Said>
const Said* newest(VisitDriver& visit) {
    return std::get_if<Said>(&visit.ward().visit().events.back().said);
}

VisitDriver& atScrub(VisitDriver& visit) {
    visit.seeUntil("scrub-skin");
    return visit;
}

/// The number of a lapse in the list that is offered now.
Qt::Key digitOf(VisitDriver& visit, const std::string& lapse) {
    const auto offered = practice::lapsesToOffer(visit.ward().taught(), visit.state());
    const auto& all = visit.ward().taught().model.lapses;
    for (std::size_t i = 0; i < offered.size() && i < 9; ++i)
        if (all.at(static_cast<std::size_t>(offered[i])).id == lapse)
            return static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(i));
    ADD_FAILURE() << lapse << " has no digit";
    return Qt::Key_9;
}

bool holds(VisitDriver& visit, const std::string& condition) {
    const auto& ids = visit.ward().taught().model.conditionIds;
    return visit.state().holds.has(
        static_cast<int>(std::ranges::find(ids, condition) - ids.begin()));
}

bool planHas(VisitDriver& visit, packs::By by) {
    const auto& operators = visit.ward().taught().model.operators;
    for (const int op : visit.state().wayBack->operators)
        if (operators.at(static_cast<std::size_t>(op)).by == by) return true;
    return false;
}

/// Tab until the focus is on something whose name begins so.
void tabTo(VisitDriver& visit, const QString& name) {
    QCoreApplication::processEvents();  // what was just asked is shown by then
    for (int i = 0; i < 40; ++i) {
        if (visit.page().focusWidget()->objectName().startsWith(name)) return;
        visit.press(Qt::Key_Tab);
    }
    ADD_FAILURE() << name.toStdString() << " is not reached";
}

// pack-language.md: several seen at one moment are one lapse with all their breaks.
TEST(VisitLapses, SeveralAtOneMomentAreOneLapse) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    const std::size_t before = visit.entries();
    const Qt::Key mask = digitOf(visit, "mask-slipped");
    const Qt::Key swab = digitOf(visit, "used-swab");
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    ASSERT_NE(visit.page().question(), nullptr);
    visit.press(mask);
    visit.press(swab);
    EXPECT_EQ(visit.entries(), before) << "nothing is said before Enter";
    visit.press(Qt::Key_Return);
    ASSERT_EQ(visit.entries(), before + 1);
    const auto* seen = newest<practice::SeeLapse>(visit);
    ASSERT_NE(seen, nullptr);
    EXPECT_EQ(std::set<std::string>(seen->lapses.begin(), seen->lapses.end()),
              (std::set<std::string>{"mask-slipped", "used-swab"}));
    EXPECT_FALSE(seen->alone);
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    const auto& ids = visit.ward().taught().model.conditionIds;
    const std::set<std::string> broken{"mask-on", "skin-scrubbed", "line-scrubbed"};
    for (std::size_t i = 0; i < ids.size(); ++i)
        EXPECT_FALSE(broken.contains(ids[i]) && visit.state().holds.has(static_cast<int>(i)))
            << ids[i];
    EXPECT_EQ(visit.page().question(), nullptr);
}

// pack-language.md: all their breaks, and what was touched is what "something else" breaks.
TEST(VisitLapses, SeveralHoldSomethingElseTooByKeysAlone) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    const std::size_t before = visit.entries();
    const Qt::Key mask = digitOf(visit, "mask-slipped");
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    visit.press(mask);
    EXPECT_FALSE(visit.find<QWidget>(QStringLiteral("otherTouched"))->isVisible());
    tabTo(visit, QStringLiteral("otherWhat"));
    QTest::keyClicks(visit.page().focusWidget(), QStringLiteral("sleeve on field 2"));
    tabTo(visit, QStringLiteral("otherTouched.field-open"));
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before) << "nothing is said before Enter";
    visit.press(Qt::Key_Return);
    ASSERT_EQ(visit.entries(), before + 1);
    const auto* seen = newest<practice::SeeLapse>(visit);
    ASSERT_NE(seen, nullptr);
    EXPECT_EQ(seen->lapses, std::vector<std::string>{"mask-slipped"});
    ASSERT_TRUE(seen->other.has_value());
    EXPECT_EQ(*seen->other,
              (practice::OtherLapse{.what = "sleeve on field 2", .touched = {"field-open"}}));
    EXPECT_FALSE(holds(visit, "mask-on"));
    EXPECT_FALSE(holds(visit, "field-open"));
    EXPECT_TRUE(visit.state().wayBack.has_value());
    const QString title = visit.find<QLabel>(QStringLiteral("wayBackTitle"))->text();
    EXPECT_TRUE(title.contains(QStringLiteral("sleeve on field 2"))) << title.toStdString();
    EXPECT_EQ(visit.page().question(), nullptr);
}

TEST(VisitLapses, AmongSeveralSomethingElseAloneIsEnough) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    ASSERT_NE(visit.page().question(), nullptr);
    tabTo(visit, QStringLiteral("otherWhat"));
    QTest::keyClicks(visit.page().focusWidget(), QStringLiteral("  "));
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_Return);
    EXPECT_EQ(visit.entries(), before) << "blanks say nothing";
    QTest::keyClicks(visit.page().focusWidget(), QStringLiteral("a fly"));
    visit.press(Qt::Key_Return);
    const auto* seen = newest<practice::SeeLapse>(visit);
    ASSERT_NE(seen, nullptr);
    EXPECT_TRUE(seen->lapses.empty());
    ASSERT_TRUE(seen->other.has_value());
    EXPECT_TRUE(seen->other->touched.empty());
}

TEST(VisitLapses, SeveralWithNoneChosenSaysNothing) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    visit.press(Qt::Key_1);
    visit.press(Qt::Key_1);
    visit.click(QStringLiteral("accept"));
    EXPECT_EQ(visit.entries(), before);
    visit.press(Qt::Key_Escape);
    EXPECT_EQ(visit.page().question(), nullptr);
}

// pack-language.md: with `alone` no operator of the way back is `by: "helper"`.
TEST(VisitLapses, WithNoHelperAtHandTheWayBackDoesWithoutOne) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    auto* toggle = visit.find<ui::PressButton>(QStringLiteral("noHelper"));
    ASSERT_TRUE(toggle->isVisible());
    EXPECT_FALSE(toggle->isChecked());
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    EXPECT_TRUE(toggle->isChecked());
    visit.press(Qt::Key_L);
    visit.press(digitOf(visit, "mask-slipped"));
    const auto* seen = newest<practice::SeeLapse>(visit);
    ASSERT_NE(seen, nullptr);
    EXPECT_TRUE(seen->alone);
    ASSERT_TRUE(visit.state().wayBack.has_value());
    EXPECT_FALSE(planHas(visit, packs::By::Helper));
    EXPECT_TRUE(visit.state().lapses.back().alone);
}

TEST(VisitLapses, WhenTheHelperIsGoneAnUntouchedWayBackIsPlannedAnew) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    visit.press(Qt::Key_L);
    visit.press(digitOf(visit, "mask-slipped"));
    ASSERT_TRUE(planHas(visit, packs::By::Helper));
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    EXPECT_EQ(visit.entries(), before + 2) << "withdrawn, and said again";
    ASSERT_EQ(visit.state().lapses.size(), 2U);
    EXPECT_TRUE(visit.state().lapses[0].withdrawn);
    EXPECT_FALSE(planHas(visit, packs::By::Helper));
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    EXPECT_TRUE(planHas(visit, packs::By::Helper)) << "one came";
    visit.seeStep();
    const std::size_t begun = visit.entries();
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    EXPECT_EQ(visit.entries(), begun) << "a way back that was begun goes on";
}

TEST(VisitLapses, APackWithoutHelpersDoesNotAskForOne) {
    VisitDriver visit("clean-hands");
    EXPECT_FALSE(visit.find<QWidget>(QStringLiteral("noHelper"))->isVisible());
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    ASSERT_NE(newest<practice::SeeLapse>(visit), nullptr);
    EXPECT_FALSE(newest<practice::SeeLapse>(visit)->alone);
}

TEST(VisitLapses, NotDoneAlsoKnowsThatNobodyHelps) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    visit.press(Qt::Key_D);
    ASSERT_NE(newest<practice::MissStep>(visit), nullptr);
    EXPECT_TRUE(newest<practice::MissStep>(visit)->alone);
}

TEST(VisitLapses, NoticedLateByKeysAlone) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("alcohol-rub");
    visit.press(Qt::Key_E);
    ASSERT_NE(visit.page().question(), nullptr);
    visit.press(Qt::Key_1);  // the newest step done, of three: towel-dry
    visit.press(Qt::Key_5);  // the first of what went wrong is "left out"
    visit.press(Qt::Key_Return);
    const auto* seen = newest<practice::SeeLapse>(visit);
    ASSERT_NE(seen, nullptr);
    EXPECT_EQ(seen->happened, "towel-dry");
    EXPECT_EQ(seen->lapses, std::vector<std::string>{"touched-tap"});
}

void bringIntoView(QWidget* part) {
    for (QWidget* around = part; around; around = around->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(around)) area->ensureWidgetVisible(part);
}

// By the weekly pack sore skin may be found in the step that looks at the site.
TEST(VisitLapses, NoticedLateTheTeacherTellsWhatWasFoundFromWhatHappenedAfter) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    visit.seeUntil("count-marks");
    for (const bool isFound : {false, true}) {
        visit.click(QStringLiteral("earlierLapse"));
        visit.click(QStringLiteral("earlierStep.look-site"));
        EXPECT_EQ(visit.find<QWidget>(QStringLiteral("earlierLapse.found-then.face-back")), nullptr)
            << "nobody comes with that";
        for (const double size : {2.0, 1.0}) {
            ui::Look::instance().apply(ui::SchemeChoice::Light, size);
            for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
            bringIntoView(visit.find<QWidget>(QStringLiteral("earlierLapse.skin-hurt")));
            visit.picture(size > 1 ? QStringLiteral("visit-23-found-then-200")
                                   : QStringLiteral("visit-23-found-then"));
        }
        visit.click(isFound ? QStringLiteral("earlierLapse.found-then.skin-hurt")
                            : QStringLiteral("earlierLapse.skin-hurt"));
        visit.click(QStringLiteral("accept"));
        const auto* seen = newest<practice::SeeLapse>(visit);
        ASSERT_NE(seen, nullptr);
        EXPECT_EQ(seen->lapses, std::vector<std::string>{"skin-hurt"});
        EXPECT_EQ(seen->happened, "look-site");
        EXPECT_EQ(seen->foundThen.value_or(false), isFound);
        EXPECT_EQ(visit.state().lapses.back().found, isFound);
    }
}

TEST(VisitLapses, LeftOutIsSaidOfAnEarlierStep) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("alcohol-rub");
    visit.press(Qt::Key_E);
    visit.press(Qt::Key_1);
    tabTo(visit, QStringLiteral("earlierLapse."));
    visit.press(Qt::Key_4);
    visit.press(Qt::Key_Return);
    const auto* missed = newest<practice::MissStep>(visit);
    ASSERT_NE(missed, nullptr);
    EXPECT_EQ(missed->step, "towel-dry");
    EXPECT_EQ(visit.state().lapses.back().leftOut, "towel-dry");
}

TEST(VisitLapses, SomethingElseByKeysAlone) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_U);
    ASSERT_NE(visit.page().question(), nullptr);
    QTest::keyClicks(visit.page().focusWidget(), QStringLiteral("sleeve brushed the hand 1"));
    visit.press(Qt::Key_Tab);
    visit.press(Qt::Key_Space);
    visit.press(Qt::Key_Return);
    const auto* seen = newest<practice::SeeLapse>(visit);
    ASSERT_NE(seen, nullptr);
    ASSERT_TRUE(seen->other.has_value());
    EXPECT_EQ(seen->other->what, "sleeve brushed the hand 1");
    EXPECT_EQ(seen->other->touched.size(), 1U);
}

TEST(VisitLapses, ZeroAmongTheLapsesIsSomethingElse) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_0);
    EXPECT_NE(visit.find<QLineEdit>(QStringLiteral("otherWhat")), nullptr);
}

TEST(VisitLapses, WithdrawnByKeysAloneAndShownStruckThrough) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    auto* row = visit.find<ui::PressButton>(QStringLiteral("withdraw-0"));
    ASSERT_NE(row, nullptr);
    for (int i = 0; i < 60 && !row->hasFocus(); ++i) visit.press(Qt::Key_Tab);
    ASSERT_TRUE(row->hasFocus());
    visit.press(Qt::Key_Return);
    const auto* back = newest<practice::TakeBack>(visit);
    ASSERT_NE(back, nullptr);
    EXPECT_EQ(back->entry, visit.state().lapses[0].entry);
    EXPECT_TRUE(visit.state().lapses[0].withdrawn);
    EXPECT_TRUE(row->isVisible());
    EXPECT_FALSE(row->isEnabled());
    EXPECT_TRUE(row->accessibleName().startsWith(QStringLiteral("Withdrawn")));
    visit.picture(QStringLiteral("visit-13-withdrawn"));
}

TEST(VisitLapses, OneOfSeveralIsWithdrawnAloneAndTheOthersStay) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    const Qt::Key mask = digitOf(visit, "mask-slipped");
    const Qt::Key glove = digitOf(visit, "glove-torn");
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    visit.press(mask);
    visit.press(glove);
    visit.press(Qt::Key_Return);
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    visit.click(QStringLiteral("withdraw-0-glove-torn"));
    const auto* withdrawn = newest<practice::WithdrawLapse>(visit);
    ASSERT_NE(withdrawn, nullptr);
    EXPECT_EQ(withdrawn->lapse, "glove-torn");
    ASSERT_EQ(visit.state().lapses.size(), 2U);
    EXPECT_EQ(visit.state().lapses[1].lapses, std::vector<std::string>{"mask-slipped"});
    EXPECT_TRUE(holds(visit, "gloves-sterile"));
    auto* gone = visit.find<ui::PressButton>(QStringLiteral("withdraw-0"));
    ASSERT_NE(gone, nullptr);
    EXPECT_TRUE(gone->isVisible());
    EXPECT_FALSE(gone->isEnabled());
    visit.picture(QStringLiteral("visit-20-one-of-several"));
    visit.click(QStringLiteral("withdraw-1"));  // the last one goes as a whole
    ASSERT_NE(newest<practice::TakeBack>(visit), nullptr);
    EXPECT_TRUE(visit.state().lapses[1].withdrawn);
    EXPECT_FALSE(visit.state().wayBack.has_value());
}

TEST(VisitLapses, WhatWasWithdrawnAloneIsNotSaidAgainWhenTheHelperIsGone) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    atScrub(visit);
    const Qt::Key mask = digitOf(visit, "mask-slipped");
    const Qt::Key glove = digitOf(visit, "glove-torn");
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    visit.press(mask);
    visit.press(glove);
    visit.press(Qt::Key_Return);
    visit.click(QStringLiteral("withdraw-0-glove-torn"));
    ASSERT_TRUE(planHas(visit, packs::By::Helper));
    visit.click(QStringLiteral("noHelper"));
    const auto* again = newest<practice::SeeLapse>(visit);
    ASSERT_NE(again, nullptr);
    EXPECT_TRUE(again->alone);
    EXPECT_EQ(again->lapses, std::vector<std::string>{"mask-slipped"});
}

TEST(VisitLapses, WithdrawnHalfwayAsksForTheGlovesThatCameOff) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::ReturnDemonstration, On::PracticeArm);
    atScrub(visit);
    visit.press(Qt::Key_L);
    visit.press(digitOf(visit, "glove-torn"));
    ASSERT_EQ(practice::recordInHand(visit.state())->step, "drop-gloves");
    visit.seeStep();
    visit.click(QStringLiteral("withdraw-0"));
    ASSERT_TRUE(visit.state().lapses[0].withdrawn);
    ASSERT_TRUE(visit.state().wayBack.has_value());
    const QString title = visit.find<QLabel>(QStringLiteral("wayBackTitle"))->text();
    EXPECT_TRUE(title.contains(QStringLiteral("withdrawing"))) << title.toStdString();
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_K);  // nobody catches what was none
    EXPECT_EQ(visit.entries(), before);
    visit.picture(QStringLiteral("visit-17-withdrawn-halfway"));
    visit.seeStep(), visit.seeStep();
    EXPECT_FALSE(visit.state().wayBack.has_value());
    EXPECT_EQ(practice::recordInHand(visit.state())->step, "scrub-skin");
}

}  // namespace
