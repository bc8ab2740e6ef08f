// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// When nobody touches the program. The times are the project's own decision (five minutes, a
// warning of 20 seconds); no source.
#include "signin/idlewatch.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QtTest/QTest>

class IdleWatching : public testing::Test {
  protected:
    IdleWatching() {
        m_line.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_line));
        m_watch.start();
    }
    void pass(std::int64_t ms) {
        m_clock.advanceMs(ms);
        m_watch.tick();
    }

    /// As the system sends it.
    void fromOutside(QEvent* event) {
        QSpontaneKeyEvent::setSpontaneous(event);
        qApp->notify(&m_line, event);
    }

    base::ManualClock m_clock{{.wallMs = 1'772'445'600'000, .bootMs = 5'000, .bootId = "one"}};
    QLineEdit m_line;
    ui::IdleWatch m_watch{m_clock};
    QSignalSpy m_warned{&m_watch, &ui::IdleWatch::warned};
    QSignalSpy m_touched{&m_watch, &ui::IdleWatch::touched};
    QSignalSpy m_idle{&m_watch, &ui::IdleWatch::idle};
};

TEST_F(IdleWatching, WarnsTwentySecondsBeforeFiveMinutesAreOver) {
    pass(279'999);
    EXPECT_EQ(m_warned.count(), 0);
    pass(1);
    ASSERT_EQ(m_warned.count(), 1);
    EXPECT_EQ(m_warned.front().front().toInt(), 20);
    pass(500);
    EXPECT_EQ(m_warned.count(), 1) << "once a second";
    pass(500);
    EXPECT_EQ(m_warned.back().front().toInt(), 19);
    pass(18'999);
    EXPECT_EQ(m_idle.count(), 0);
    pass(1);
    EXPECT_EQ(m_idle.count(), 1);
    pass(600'000);
    EXPECT_EQ(m_idle.count(), 1) << "it has stopped";
}

TEST_F(IdleWatching, AnyKeyOrPointerMoveBeginsAnew) {
    pass(285'000);
    QTest::keyClick(&m_line, Qt::Key_Shift);
    EXPECT_EQ(m_touched.count(), 1) << "ends the warning";
    pass(285'000);
    QTest::mouseMove(&m_line, QPoint(3, 3));
    EXPECT_EQ(m_touched.count(), 2);
    pass(285'000);
    QTest::mouseMove(&m_line, QPoint(5, 3));
    EXPECT_EQ(m_touched.count(), 3);
    pass(270'000);
    QTest::mouseClick(&m_line, Qt::LeftButton);
    EXPECT_EQ(m_touched.count(), 3) << "no warning was shown";
    pass(270'000);
    EXPECT_EQ(m_idle.count(), 0);
    EXPECT_TRUE(m_line.text().isEmpty());
}

// Something lies on a key, a window moves under a pointer at rest.
TEST_F(IdleWatching, WhatNoPersonDoesDoesNotCount) {
    QTest::mouseMove(&m_line, QPoint(3, 3));
    pass(285'000);
    QKeyEvent held(QEvent::KeyPress, Qt::Key_A, Qt::NoModifier, QStringLiteral("a"), true);
    fromOutside(&held);
    const QPointF same = m_line.mapToGlobal(QPointF(3, 3));
    QMouseEvent rest(QEvent::MouseMove, QPointF(3, 3), same, Qt::NoButton, Qt::NoButton,
                     Qt::NoModifier);
    fromOutside(&rest);
    QKeyEvent made(QEvent::KeyPress, Qt::Key_A, Qt::NoModifier, QStringLiteral("a"));
    QCoreApplication::sendEvent(&m_line, &made);  // by the program itself
    EXPECT_EQ(m_touched.count(), 0);
    pass(15'000);
    EXPECT_EQ(m_idle.count(), 1);
}

TEST_F(IdleWatching, AKeyAfterItWasOverComesTooLate) {
    m_clock.advanceMs(301'000);  // the timer was late
    QTest::keyClick(&m_line, Qt::Key_A);
    EXPECT_EQ(m_idle.count(), 1);
    EXPECT_EQ(m_touched.count(), 0);
}

TEST_F(IdleWatching, SleepingAndStartingAnewCountAsIdle) {
    m_clock.suspendMs(400'000);
    m_watch.tick();
    EXPECT_EQ(m_idle.count(), 1);
    m_watch.start();
    base::Instant other = m_clock.now();
    other.bootId = "two";
    m_clock.set(other);
    m_watch.tick();
    EXPECT_EQ(m_idle.count(), 2);
}

TEST_F(IdleWatching, FollowsTheSettingButNeverLessThanAMinute) {
    m_watch.setAfterMinutes(15);
    pass(14 * 60'000);
    EXPECT_EQ(m_warned.count(), 0);
    pass(60'000);
    EXPECT_EQ(m_idle.count(), 1);
    m_watch.setAfterMinutes(0);
    m_watch.start();
    pass(59'000);
    EXPECT_EQ(m_idle.count(), 1);
    pass(1'000);
    EXPECT_EQ(m_idle.count(), 2);
}
