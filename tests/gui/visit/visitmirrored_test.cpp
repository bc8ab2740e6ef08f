// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Where reading begins at the right, everything said in a visit begins there, in Latin letters too.
#include <QApplication>
#include <QLabel>

#include "gui/main/settled.h"
#include "gui/pieces/ink.h"
#include "gui/visit/visitdriver.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

/// How far what it says is from its left and from its right edge.
std::pair<int, int> besides(const QLabel& label) {
    const QImage image = const_cast<QLabel&>(label).grab().toImage();
    const QRect box = gui::inkOf(image, 0);
    return {box.left(), image.width() - 1 - box.right()};
}

class VisitMirrored : public testing::Test {
  protected:
    void TearDown() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

TEST_F(VisitMirrored, WhatIsSaidBeginsAtTheRight) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("scrub-skin");
    QApplication::setLayoutDirection(Qt::RightToLeft);
    gui::settle(visit.page());
    visit.picture(QStringLiteral("visit-22-mirrored"));
    for (const char* name : {"visitPatient", "howItWent", "sentence", "watchFor"}) {
        const auto [left, right] = besides(*visit.find<QLabel>(QLatin1String(name)));
        EXPECT_LT(right, left) << name;
    }
    const auto [left, right] = besides(*visit.find<QLabel>(QStringLiteral("visitLeft")));
    EXPECT_LT(left, right) << "what ends a line ends it";
}

TEST_F(VisitMirrored, SoItDoesWhenTheProgramTurnsRound) {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    gui::settle(visit.page());
    const auto* patient = visit.find<QLabel>(QStringLiteral("visitPatient"));
    const auto mirrored = besides(*patient);
    EXPECT_LT(mirrored.second, mirrored.first);
    QApplication::setLayoutDirection(Qt::LeftToRight);
    gui::settle(visit.page());
    const auto straight = besides(*patient);
    EXPECT_LT(straight.first, straight.second);
}

}  // namespace
