// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown where nothing else may be done first, and after being away.
#include <QLabel>
#include <QLineEdit>

#include "gui/visit/visitdriver.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

QString shown(VisitDriver& visit, const char* name) {
    auto* label = visit.find<QLabel>(QLatin1String(name));
    return label != nullptr && label->isVisible() ? label->text() : QString();
}

TEST(VisitCards, StopAndCallShowsTheNumberOfTheUnit) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.ward().must(practice::SeeLapse{.lapses = {"breathless"}});
    EXPECT_TRUE(shown(visit, "cardCall").contains(QStringLiteral("112")))
        << shown(visit, "cardCall").toStdString();
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before) << "no step goes on";
    visit.picture(QStringLiteral("visit-08-call"));
    visit.click(QStringLiteral("takeOver"));
    EXPECT_TRUE(shown(visit, "sentence").startsWith(QStringLiteral("Stop and call")))
        << "not that all is done: " << shown(visit, "sentence").toStdString();
    EXPECT_TRUE(shown(visit, "callsDue").contains(QStringLiteral("112")));
    visit.click(QStringLiteral("takeOverWhy.0"));
    visit.click(QStringLiteral("accept"));
    EXPECT_TRUE(visit.state().takenOver);
    EXPECT_EQ(shown(visit, "cardCall"), QString());
    EXPECT_TRUE(shown(visit, "callsDue").contains(QStringLiteral("112"))) << "while it goes on";
    visit.picture(QStringLiteral("visit-08-call-taken-over"));
}

// A finding that is finished and then called about is not over with its way back.
TEST(VisitCards, ACallThatIsDueStaysInSightUntilItIsWithdrawn) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    EXPECT_EQ(shown(visit, "callsDue"), QString());
    visit.ward().must(practice::SeeLapse{.lapses = {"signs-found"}});
    for (int i = 0; visit.state().wayBack && i < 20; ++i) visit.press(Qt::Key_Space);
    ASSERT_FALSE(visit.state().wayBack);
    EXPECT_TRUE(shown(visit, "callsDue").contains(QStringLiteral("555")))
        << shown(visit, "callsDue").toStdString();
    visit.picture(QStringLiteral("visit-09-call-due"));
    visit.ward().must(practice::TakeBack{.entry = visit.state().lapses.back().entry});
    EXPECT_EQ(shown(visit, "callsDue"), QString());
}

// What was put right is not said on as if it were so.
TEST(VisitCards, ALapseThatIsPutRightIsNotSaidAnyMore) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("scrub-skin");
    visit.ward().must(practice::SeeLapse{.lapses = {"glove-touched"}});
    ASSERT_TRUE(visit.state().wayBack);
    for (int i = 0; visit.state().wayBack && i < 40; ++i) {
        visit.ward().clock().advanceMs(60'000);
        visit.press(Qt::Key_Space);
    }
    ASSERT_FALSE(visit.state().wayBack);
    EXPECT_EQ(shown(visit, "lapseSays"), QString());
}

// Whichever of them is said first.
TEST(VisitCards, OfSeveralCallsTheSoonestIsSaid) {
    for (const std::vector<std::string>& lapses : std::vector<std::vector<std::string>>{
             {"signs-found", "skin-hurt"}, {"skin-hurt", "signs-found"}}) {
        VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
        visit.ward().must(practice::SeeLapse{.lapses = lapses});
        for (int i = 0; visit.state().wayBack && i < 20; ++i) visit.press(Qt::Key_Space);
        ASSERT_FALSE(visit.state().wayBack);
        EXPECT_TRUE(shown(visit, "callsDue").contains(QStringLiteral("day and night")))
            << shown(visit, "callsDue").toStdString();
    }
}

TEST(VisitCards, OnAPracticeArmNobodyIsToBeCalledAfterwards) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    visit.ward().must(practice::SeeLapse{.lapses = {"signs-found"}});
    EXPECT_EQ(shown(visit, "callsDue"), QString());
}

// Whoever takes over with dirty hands goes on by judgement, and is told what does not hold.
TEST(VisitCards, TakenOverWhatDoesNotHoldIsSaid) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("scrub-skin");
    visit.ward().must(practice::SeeLapse{.lapses = {"glove-touched"}});
    visit.ward().must(practice::SeeLapse{.lapses = {"breathless"}});
    visit.ward().must(practice::TakeOver{.why = "bleeding"});
    ASSERT_EQ(shown(visit, "sentence").left(5), QStringLiteral("Scrub"));
    EXPECT_TRUE(shown(visit, "phaseNote").contains(QStringLiteral("Sterile gloves")))
        << shown(visit, "phaseNote").toStdString();
}

std::vector<std::string> offers(VisitDriver& visit) {
    std::vector<std::string> names;
    auto* card = visit.find<QWidget>(QStringLiteral("visitCard"));
    for (const auto* button : card->findChildren<QAbstractButton*>())
        if (button->isVisible()) names.push_back(button->objectName().toStdString());
    return names;
}

/// Spoils one condition after the other until there is no way back from it.
void loseEveryWay(VisitDriver& visit) {
    for (const packs::Condition& one : visit.ward().taught().pack.conditions) {
        visit.ward().must(practice::SeeLapse{
            .other = practice::OtherLapse{.what = "the hub was bitten", .touched = {one.id}}});
        if (visit.state().wayBack && visit.state().wayBack->outcome == procedure::PlanOutcome::None)
            return;
        visit.ward().must(practice::TakeBack{.entry = visit.state().lapses.back().entry});
    }
    ADD_FAILURE() << "the pack has a way back from everything";
}

// pack-language.md: where a visit finds no plan it says so, shows whom to call, and offers only
// take over and stop.
TEST(VisitCards, WithoutAPlanOnlyTakingOverAndStoppingAreOffered) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("scrub-skin");
    loseEveryWay(visit);
    EXPECT_TRUE(shown(visit, "cardTitle").startsWith(QStringLiteral("No way back was found")));
    EXPECT_TRUE(shown(visit, "cardCall").contains(QStringLiteral("555\u00A00100")));
    EXPECT_EQ(offers(visit), (std::vector<std::string>{"takeOver", "stop"}));
    auto* call = visit.find<QWidget>(QStringLiteral("cardCall"));
    EXPECT_GE(call->width(), visit.page().width() * 9 / 10) << "full width";
    visit.picture(QStringLiteral("visit-15-no-plan"));
    const std::size_t before = visit.entries();
    for (const Qt::Key key : {Qt::Key_Space, Qt::Key_C, Qt::Key_H, Qt::Key_D, Qt::Key_O, Qt::Key_L,
                              Qt::Key_1, Qt::Key_U, Qt::Key_E, Qt::Key_G, Qt::Key_K, Qt::Key_S,
                              Qt::Key_P, Qt::Key_M, Qt::Key_N, Qt::Key_F1}) {
        visit.press(key);
        EXPECT_EQ(visit.entries(), before) << key;
        EXPECT_EQ(visit.page().question(), nullptr) << key;
    }
    visit.press(Qt::Key_T);
    visit.press(Qt::Key_1);
    visit.press(Qt::Key_Return);
    EXPECT_TRUE(visit.state().takenOver);
    EXPECT_EQ(shown(visit, "cardTitle"), QString());
    visit.picture(QStringLiteral("visit-16-taken-over"));
}

TEST(VisitCards, ThePlanThatNeedsAHelperIsFoundWhenOneComes) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("scrub-skin");
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    loseEveryWay(visit);
    auto* after = visit.find<QLabel>(QStringLiteral("cardAfter"));
    EXPECT_TRUE(after->text().contains(QStringLiteral("Shift+H"))) << after->text().toStdString();
}

TEST(VisitCards, TheCallFillsTheWidth) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.ward().must(practice::SeeLapse{.lapses = {"breathless"}});
    auto* call = visit.find<QLabel>(QStringLiteral("cardCall"));
    EXPECT_GE(call->width(), visit.page().width() * 9 / 10);
    for (const auto* label :
         visit.find<QWidget>(QStringLiteral("visitCard"))->findChildren<QLabel*>())
        EXPECT_LE(label->font().pointSizeF(), call->font().pointSizeF()) << "nothing is larger";
}

// Once no step is left there is no "at least 0 seconds".
TEST(VisitCards, AtTheEndNoTimeIsLeftToTell) {
    VisitDriver visit("clean-hands", Way::Guided);
    auto* left = visit.find<QLabel>(QStringLiteral("visitLeft"));
    EXPECT_TRUE(left->text().contains(QStringLiteral("at least")));
    while (practice::inHand(visit.state()) && !HasFailure()) visit.seeStep();
    visit.page().tick();
    EXPECT_EQ(left->text(), QStringLiteral("no steps left"));
}

TEST(VisitCards, PressedByMistakeIsTakenBack) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.ward().must(practice::SeeLapse{.lapses = {"breathless"}});
    visit.press(Qt::Key_B);
    EXPECT_EQ(shown(visit, "cardCall"), QString());
    EXPECT_TRUE(visit.state().lapses[0].withdrawn);
}

TEST(VisitCards, FinishAndCallStandsOverTheWayBack) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("stick-device");
    visit.ward().must(practice::SeeLapse{.lapses = {"line-moved"}});
    visit.picture(QStringLiteral("visit-09-finish-and-call"));
    EXPECT_EQ(shown(visit, "cardCall"), QString());
}

TEST(VisitCards, ARestartSaysWhatIsLostAndGoesOn) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.pass(10 * 60 * 1000);
    ui::VisitPage again(visit.ward().desk());
    again.resize(1280, 800);
    again.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&again));
    auto* title = again.findChild<QLabel*>(QStringLiteral("cardTitle"));
    ASSERT_TRUE(title->isVisible());
    EXPECT_TRUE(again.findChild<QLabel*>(QStringLiteral("cardSentence"))
                    ->text()
                    .contains(QStringLiteral("Hands rubbed")));
    const std::size_t before = visit.entries();
    QTest::keyClick(&again, Qt::Key_C);
    EXPECT_EQ(visit.entries(), before) << "nothing before it is said";
    visit.pass(400);
    QTest::keyClick(&again, Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before + 1);
    ASSERT_FALSE(visit.state().lapses.empty());
    EXPECT_TRUE(visit.state().lapses.back().byAbsence);
    EXPECT_TRUE(visit.state().wayBack.has_value());
}

TEST(VisitCards, LeftForLongIsAnAbsence) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.page().hide();
    visit.pass(5 * 60 * 1000);
    visit.page().show();
    visit.press(Qt::Key_Space);
    ASSERT_FALSE(visit.state().lapses.empty());
    EXPECT_TRUE(visit.state().lapses.back().byAbsence);
}

TEST(VisitCards, AVisitThatBeginsWhileThePageIsOutOfSightWasNotLeft) {
    VisitDriver visit("clean-hands");
    visit.ward().must(practice::StopVisit{.why = practice::StopReason::CalledAway});
    visit.page().hide();
    visit.pass(5 * 60 * 1000);
    visit.ward().openVisit(Way::ReturnDemonstration, On::PracticeArm);
    visit.page().show();
    EXPECT_FALSE(visit.find<QWidget>(QStringLiteral("visitCard"))->isVisible());
    const std::size_t before = visit.entries();
    visit.seeStep();
    EXPECT_EQ(visit.entries(), before + 1) << "the first press says that the step was seen";
    EXPECT_TRUE(visit.state().lapses.empty()) << "nobody was away";
}

// CLOCK_BOOTTIME goes on while a machine is suspended and CLOCK_MONOTONIC does not:
// clock_gettime(2).
TEST(VisitCards, AMachineThatSleptSaysSoAndTheRunningPhaseIsVoid) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("alcohol-rub");
    visit.press(Qt::Key_Space);
    ASSERT_NE(practice::runningPhase(visit.state()), nullptr);
    const std::size_t before = visit.entries();
    visit.pass(5000);
    visit.ward().clock().suspendMs(30'000);
    visit.press(Qt::Key_Space);  // meant for the clock that was running
    EXPECT_EQ(visit.entries(), before);
    auto* title = visit.find<QLabel>(QStringLiteral("cardTitle"));
    ASSERT_TRUE(title->isVisible());
    EXPECT_TRUE(title->text().contains(QStringLiteral("slept"))) << title->text().toStdString();
    visit.picture(QStringLiteral("visit-19-slept"));
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before + 1);
    EXPECT_TRUE(visit.state().suspendNoticed);
    EXPECT_EQ(practice::runningPhase(visit.state()), nullptr);
    EXPECT_EQ(practice::recordInHand(visit.state())->phases.back().end, practice::PhaseEnd::Voided);
    EXPECT_FALSE(title->isVisible());
}

TEST(VisitCards, AMachineThatSleptLongWatchedNothingClean) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.ward().clock().suspendMs(61'000);  // the pack's away is 60 s
    visit.page().tick();
    EXPECT_TRUE(visit.find<QLabel>(QStringLiteral("cardTitle"))->isVisible());
    visit.press(Qt::Key_Space);
    ASSERT_FALSE(visit.state().lapses.empty());
    EXPECT_TRUE(visit.state().lapses.back().byAbsence);
}

TEST(VisitCards, TimeThatPassesAwakeIsNoSleep) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.pass(10 * 60 * 1000);
    visit.page().tick();
    EXPECT_FALSE(visit.find<QLabel>(QStringLiteral("cardTitle"))->isVisible());
}

TEST(VisitCards, AnOpenPageWithoutAVisitTeaches) {
    support::Ward ward("clean-hands");
    ui::VisitPage page(ward.desk());
    page.show();
    EXPECT_EQ(page.findChild<QLabel*>(QStringLiteral("cardTitle"))->text(),
              QStringLiteral("No visit is open."));
}

TEST(VisitCards, OnThePatientTheChangeIsWrittenDownBeforeItCloses) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    for (int i = 0; i < 60 && practice::inHand(visit.state()); ++i) {
        visit.seeStep();
        ASSERT_FALSE(HasFailure());
    }
    visit.press(Qt::Key_Space);
    visit.picture(QStringLiteral("visit-10-change"));
    auto* site = visit.find<QLineEdit>(QStringLiteral("changeSite"));
    ASSERT_NE(site, nullptr);
    QTest::keyClicks(site, QStringLiteral("no redness, dry"));
    QTest::keyClick(site, Qt::Key_Return);
    ASSERT_TRUE(visit.ward().visit().change.has_value());
    EXPECT_EQ(visit.ward().visit().change->said.dressing, "transparent");
    // Local policy of the pack: a transparent dressing is due after seven days.
    EXPECT_EQ(visit.ward().visit().change->said.due, "2026-12-01");
    visit.press(Qt::Key_Space);
    EXPECT_FALSE(visit.ward().desk().view().openVisit.has_value());
}

TEST(VisitCards, AMeasureAtTheLimitSaysTheRule) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.press(Qt::Key_M);
    auto* mm = visit.find<QLineEdit>(QStringLiteral("measureMm"));
    ASSERT_NE(mm, nullptr);
    QTest::keyClicks(mm, QStringLiteral("69"));
    auto* rule = visit.find<QLabel>(QStringLiteral("measureRule"));
    EXPECT_FALSE(rule->text().contains(QStringLiteral("Call"))) << rule->text().toStdString();
    mm->clear();
    QTest::keyClicks(mm, QStringLiteral("70"));
    EXPECT_TRUE(rule->text().contains(QStringLiteral("555\u00A00101")))
        << rule->text().toStdString();
    visit.picture(QStringLiteral("visit-11-measure"));
    EXPECT_EQ(rule->visibleRegion().boundingRect().height(), rule->height()) << "in sight, whole";
    QTest::keyClick(mm, Qt::Key_Return);
    ASSERT_EQ(visit.state().readings.size(), 1U);
    EXPECT_EQ(visit.state().readings[0].mm, 70);
}

// Common practice, no source: three marks are the limit. The pack has a mark each 10 mm and calls
// at 30 mm, local policy; four marks were in view when this line was put in.
TEST(VisitCards, ACountOfMarksAloneIsHeldAgainstTheRule) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.press(Qt::Key_M);
    auto* marks = visit.find<QLineEdit>(QStringLiteral("measureMarks"));
    auto* rule = visit.find<QLabel>(QStringLiteral("measureRule"));
    const auto said = [&](const char* count) {
        marks->setFocus();
        marks->clear();
        QTest::keyClicks(marks, QString::fromLatin1(count));
        return rule->text();
    };
    for (const char* within : {"2", "4", "6"})
        EXPECT_FALSE(said(within).contains(QStringLiteral("Call"))) << within;
    EXPECT_TRUE(said("6").contains(QStringLiteral("changed by 20 mm")))
        << rule->text().toStdString();
    for (const char* beyond : {"1", "7"}) {
        EXPECT_TRUE(said(beyond).contains(QStringLiteral("changed by 30 mm"))) << beyond;
        EXPECT_TRUE(said(beyond).contains(QStringLiteral("Never push the line in"))) << beyond;
        EXPECT_TRUE(said(beyond).contains(QStringLiteral("555\u00A00101"))) << beyond;
    }
    visit.picture(QStringLiteral("visit-18-marks"));
    EXPECT_EQ(rule->visibleRegion().boundingRect().height(), rule->height()) << "in sight, whole";
    visit.press(Qt::Key_Return);
    ASSERT_EQ(visit.state().readings.size(), 1U);
    EXPECT_EQ(visit.state().readings[0].marks, 7);
    EXPECT_FALSE(visit.state().readings[0].mm.has_value());
}

TEST(VisitCards, MarksThatDoNotAgreeWithTheMillimetresAreSaid) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.press(Qt::Key_M);
    auto* rule = visit.find<QLabel>(QStringLiteral("measureRule"));
    QTest::keyClicks(visit.find<QLineEdit>(QStringLiteral("measureMm")), QStringLiteral("42"));
    auto* marks = visit.find<QLineEdit>(QStringLiteral("measureMarks"));
    QTest::keyClicks(marks, QStringLiteral("7"));
    const QString said = rule->text();
    EXPECT_TRUE(said.contains(QStringLiteral("changed by 2 mm"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("marks say 30 mm"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("555\u00A00101"))) << "the graver counts";
    marks->clear();
    QTest::keyClicks(marks, QStringLiteral("5"));
    EXPECT_FALSE(rule->text().contains(QStringLiteral("marks say"))) << rule->text().toStdString();
}

// Four marks, 10 mm apart, have 30 mm between the first and the last (reckoned by hand).
TEST(VisitCards, MarksThatDoNotFitIntoTheMillimetresAreSaidBeforeTheyAreWritten) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    record::AddLine line = visit.ward().desk().view().record->lines.front().said;
    line.marks.reset();  // so that only the two readings can be held against each other
    visit.ward().must(record::CorrectLine{line, ""});
    visit.press(Qt::Key_M);
    auto* rule = visit.find<QLabel>(QStringLiteral("measureRule"));
    auto* mm = visit.find<QLineEdit>(QStringLiteral("measureMm"));
    QTest::keyClicks(visit.find<QLineEdit>(QStringLiteral("measureMarks")), QStringLiteral("4"));
    QTest::keyClicks(mm, QStringLiteral("20"));
    EXPECT_TRUE(rule->text().contains(QStringLiteral("4 marks, 10 mm apart")))
        << rule->text().toStdString();
    EXPECT_TRUE(rule->text().contains(QStringLiteral("changed by 20 mm"))) << "the rest is said";
    mm->clear();
    QTest::keyClicks(mm, QStringLiteral("30"));
    EXPECT_FALSE(rule->text().contains(QStringLiteral("apart"))) << rule->text().toStdString();
}

// A line without printed marks is measured in millimetres alone, and girth has no marks at all.
TEST(VisitCards, MarksAreAskedOnlyOfAMeasureThatHasThem) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.press(Qt::Key_M);
    auto* marks = visit.find<QLineEdit>(QStringLiteral("measureMarks"));
    EXPECT_TRUE(marks->isVisible());
    visit.click(QStringLiteral("measureWhich.arm-girth"));
    EXPECT_FALSE(marks->isVisible());
    auto* mm = visit.find<QLineEdit>(QStringLiteral("measureMm"));
    mm->setFocus();
    QTest::keyClicks(mm, QStringLiteral("320"));
    // Local policy of the pack: thirty millimetres more round the arm, 290 when it was put in.
    auto* rule = visit.find<QLabel>(QStringLiteral("measureRule"));
    EXPECT_TRUE(rule->text().contains(QStringLiteral("555\u00A00101")))
        << rule->text().toStdString();
    EXPECT_FALSE(rule->text().contains(QStringLiteral("push the line")));
}

}  // namespace
