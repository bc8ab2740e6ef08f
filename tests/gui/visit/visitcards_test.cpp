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
    visit.click(QStringLiteral("accept"));
    EXPECT_TRUE(visit.state().takenOver);
    EXPECT_EQ(shown(visit, "cardCall"), QString());
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
    EXPECT_TRUE(rule->text().contains(QStringLiteral("555 0101"))) << rule->text().toStdString();
    visit.picture(QStringLiteral("visit-11-measure"));
    QTest::keyClick(mm, Qt::Key_Return);
    ASSERT_EQ(visit.state().readings.size(), 1U);
    EXPECT_EQ(visit.state().readings[0].mm, 70);
}

}  // namespace
