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
#include "visit/visitpage.h"

namespace {

const char* const twoScreens = R"({"screens": [
    {"name": "teacher", "x": 0, "y": 0, "width": 1280, "height": 800},
    {"name": "learner", "x": 1280, "y": 0, "width": 1024, "height": 768}]})";

const char* const insideName = "NINEBARK_TEST_TWO_SCREENS";

TEST(TwoScreens, Inside) {
    if (!qEnvironmentVariableIsSet(insideName))
        GTEST_SKIP() << "started by TwoScreens.TheLearnersWindowOpensOnTheSecond";
    ASSERT_EQ(QGuiApplication::screens().size(), 2);
    support::Ward ward("clean-hands");
    ui::VisitPage page(ward.desk());
    page.resize(1280, 800);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    ui::LearnerWindow window(ward.desk(), &page);
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
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    EXPECT_FALSE(window.isVisible());
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
