// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of every state of the page, to be looked at; and that nothing in them is clipped.
#include <QLabel>

#include "gui/visit/visitdriver.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

TEST(VisitPictures, TheWayThroughAVisit) {
    VisitDriver visit;
    visit.picture(QStringLiteral("visit-01-start"));
    visit.seeUntil("soap-wash");
    visit.press(Qt::Key_Space);
    visit.pass(9000);
    visit.picture(QStringLiteral("visit-02-wash"));
    visit.pass(21000);
    visit.press(Qt::Key_Space);
    visit.press(Qt::Key_Space);
    visit.seeUntil("scrub-skin");
    visit.press(Qt::Key_C);
    visit.press(Qt::Key_Space);
    visit.pass(9000);
    visit.picture(QStringLiteral("visit-03-scrub"));
    visit.click(QStringLiteral("lapse-") + visit.firstLapse());
    visit.picture(QStringLiteral("visit-04-way-back"));
    visit.press(Qt::Key_X);
    visit.picture(QStringLiteral("visit-05-stop"));
}

// As large as the page is in the window at 1280 by 800: what to watch for is read without
// scrolling.
TEST(VisitPictures, WhatToWatchForIsInSightAtEveryStep) {
    VisitDriver visit;
    visit.page().resize(1280, 718);
    auto* watch = visit.find<QLabel>(QStringLiteral("watchFor"));
    QWidget* viewport = watch->parentWidget()->parentWidget();
    int seen = 0;
    while (practice::recordInHand(visit.state()) && !HasFailure()) {
        QCoreApplication::processEvents();
        const auto& step = practice::recordInHand(visit.state())->step;
        const QPoint foot = watch->mapTo(viewport, QPoint(0, watch->height()));
        EXPECT_GE(watch->height(), watch->heightForWidth(watch->width())) << step;
        EXPECT_LE(foot.y(), viewport->height()) << step;
        ++seen;
        visit.seeStep();
    }
    EXPECT_EQ(seen, static_cast<int>(visit.state().steps.size()));
}

TEST(VisitPictures, DarkAndLarge) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("scrub-skin");
    visit.press(Qt::Key_Space);
    visit.pass(11000);
    ui::Look::instance().apply(ui::SchemeChoice::Dark, 1.0);
    visit.picture(QStringLiteral("visit-06-dark"));
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    visit.picture(QStringLiteral("visit-07-large"));
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

}  // namespace
