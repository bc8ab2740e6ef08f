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
