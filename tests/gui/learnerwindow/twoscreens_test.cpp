// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A second screen needs a program of its own: this one starts itself with two virtual screens.
#include <QGuiApplication>
#include <QLabel>
#include <QProcess>
#include <QScreen>
#include <QTemporaryDir>
#include <QWindow>
#include <QtTest/QTest>

#include "learnerwindow/learnerwindow.h"
#include "support/ward.h"
#include "visit/learnerfeed.h"
#include "visit/visitpage.h"

namespace {

const char* const twoScreens = R"({"screens": [
    {"name": "teacher", "x": 0, "y": 0, "width": 1280, "height": 800},
    {"name": "learner", "x": 1280, "y": 0, "width": 1024, "height": 768}]})";

const char* const insideName = "NINEBARK_TEST_TWO_SCREENS";

/// The learner's window, told which screens there are.
class ScreensOfOurs : public ui::LearnerWindow {
  public:
    using LearnerWindow::LearnerWindow;
    bool isSecondGone = false;

  protected:
    QList<QScreen*> screens() const override {
        auto all = QGuiApplication::screens();
        if (isSecondGone) all = {QGuiApplication::primaryScreen()};
        return all;
    }
};

/// What the platform says when a cable is pulled or put in, in its order: gone from the list
/// first, then told.
void pullOut(ScreensOfOurs& window, bool isOut) {
    window.isSecondGone = isOut;
    QScreen* second = QGuiApplication::screens().back();
    if (isOut)
        Q_EMIT qGuiApp->screenRemoved(second);
    else
        Q_EMIT qGuiApp->screenAdded(second);
    QCoreApplication::processEvents();
}

void pullTheSecondOutAndPutItBack(support::Ward& ward, ScreensOfOurs& window) {
    ward.must(practice::BeginPhase{.step = "soap-wash", .phase = "rub-with-soap"});
    const auto before = ward.visit().state;
    const auto entries = ward.ledger().head().size;
    pullOut(window, true);
    EXPECT_FALSE(window.isVisible()) << "the teacher's page is not covered";
    EXPECT_TRUE(ward.visit().state == before) << "the clock runs on";
    ward.clock().advanceMs(20'000);
    ward.must(practice::EndPhase{.step = "soap-wash", .phase = "rub-with-soap"});
    EXPECT_FALSE(window.isVisible());
    window.turn();
    EXPECT_TRUE(window.isVisible()) << "asked for, it is turned to";
    EXPECT_EQ(window.screen(), QGuiApplication::primaryScreen());
    pullOut(window, false);
    EXPECT_TRUE(window.isVisible());
    EXPECT_EQ(window.screen(), QGuiApplication::screens().back());
    EXPECT_EQ(window.geometry(), window.screen()->geometry());
    EXPECT_EQ(ward.ledger().head().size, entries + 1) << "and nothing else was written";
}

TEST(TwoScreens, Inside) {
    if (!qEnvironmentVariableIsSet(insideName))
        GTEST_SKIP() << "started by TwoScreens.TheLearnersWindowOpensOnTheSecond";
    ASSERT_EQ(QGuiApplication::screens().size(), 2);
    support::Ward ward("clean-hands");
    ui::VisitPage page(ward.desk());
    page.setScreen(QGuiApplication::primaryScreen());
    page.setGeometry(QGuiApplication::primaryScreen()->geometry());
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    ui::LearnerFeed feed(ward.desk(), nullptr);
    ScreensOfOurs window(feed, &page);
    EXPECT_FALSE(window.isVisible()) << "no visit is open yet";
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    EXPECT_TRUE(window.isVisible());
    EXPECT_NE(window.screen(), page.screen());
    EXPECT_EQ(window.geometry(), window.screen()->geometry());
    // The teacher's keys are untouched by it.
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    const auto before = ward.ledger().head().size;
    QTest::keyClick(&page, Qt::Key_Space);
    EXPECT_EQ(ward.ledger().head().size, before + 1);
    window.turn();
    EXPECT_FALSE(window.isVisible());
    window.turn();
    EXPECT_TRUE(window.isVisible());
    pullTheSecondOutAndPutItBack(ward, window);
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    EXPECT_FALSE(window.isVisible());
}

// The rule by which it comes and goes, for every case.
TEST(TwoScreens, OnOneScreenItCoversThePageOnlyWhenAsked) {
    for (int bits = 0; bits < 16; ++bits) {
        const ui::Placing now{.isVisitOpen = (bits & 1) != 0,
                              .hasSecondScreen = (bits & 2) != 0,
                              .isTurned = (bits & 4) != 0,
                              .isHiddenByHand = (bits & 8) != 0};
        const ui::Stand place = ui::standOf(now);
        EXPECT_EQ(place == ui::Stand::OverTeacher,
                  now.isVisitOpen && !now.hasSecondScreen && now.isTurned)
            << bits;
        EXPECT_EQ(place == ui::Stand::SecondScreen,
                  now.isVisitOpen && now.hasSecondScreen && !now.isHiddenByHand)
            << bits;
    }
}

TEST(TwoScreens, TheLearnersWindowOpensOnTheSecond) {
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("two.json")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(twoScreens);
    file.close();
    QProcess child;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QLatin1String(insideName), QStringLiteral("1"));
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"),
                       QStringLiteral("offscreen:configfile=") + file.fileName());
    child.setProcessEnvironment(environment);
    child.setProcessChannelMode(QProcess::MergedChannels);
    child.start(QCoreApplication::applicationFilePath(),
                {QStringLiteral("--gtest_filter=TwoScreens.Inside")});
    ASSERT_TRUE(child.waitForFinished(60'000));
    const QByteArray said = child.readAll();
    EXPECT_EQ(child.exitCode(), 0) << said.constData();
    EXPECT_TRUE(said.contains("[  PASSED  ] 1 test")) << said.constData();
    EXPECT_FALSE(said.contains("SKIPPED")) << said.constData();
}

}  // namespace
