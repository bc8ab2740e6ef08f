// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// In a window of 800 pixels, with text twice as large, everything wraps into its width: what
// scrolls up and down is cut nowhere at its side (WCAG 2.2, 1.4.4 and 1.4.10).
#include <QApplication>
#include <QLabel>
#include <QScrollArea>
#include <QtTest/QTest>
#include <algorithm>

#include "gui/walk/walk_fixture.h"
#include "look.h"
#include "support/paths.h"

class WalkNarrow : public Walk {
  protected:
    void TearDown() override { ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0); }
};

TEST_F(WalkNarrow, NothingThatScrollsIsWiderThanItsRoom) {
    int seen = 0;
    for (const Place& place : places()) {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
        goTo(place);
        ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);  // a main window brings its own
        settle();
        shown()->resize(800, 800);
        settle();
        EXPECT_EQ(shown()->width(), 800) << place.name << ": it asks for more room than it has";
        // A stop-and-call card says whom without being scrolled.
        const auto* call = shown()->findChild<QWidget*>(QStringLiteral("cardCall"));
        const int said = call && call->isVisible() ? call->height() : 0;
        if (said > 0) {
            EXPECT_GE(call->visibleRegion().boundingRect().height(), said) << place.name;
        }
        for (const auto* area : shown()->findChildren<QScrollArea*>()) {
            if (!area->isVisible()) continue;
            ++seen;
            EXPECT_LE(area->widget()->width(), area->viewport()->width())
                << place.name << ": " << nameOf(area->widget());
        }
        if (HasFatalFailure()) return;
    }
    EXPECT_GE(seen, 60);
}

// What is said while one writes is a sentence, and wraps.
TEST_F(WalkNarrow, WhatIsSaidWhileOneWritesHasRoom) {
    const auto place = std::ranges::find_if(
        places(), [](const Place& one) { return std::string(one.name) == "visit"; });
    goTo(*place);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    settle();
    shown()->resize(800, 800);
    settle();
    QTest::keyClick(shown()->focusWidget(), Qt::Key_N);
    settle();
    const auto* said = shown()->findChild<QLabel*>(QStringLiteral("stripWriting"));
    ASSERT_TRUE(said->isVisible());
    shown()->grab().save(QString::fromStdString(support::forLooking("narrow-writing.png")));
    EXPECT_EQ(shown()->width(), 800);
    EXPECT_EQ(said->visibleRegion().boundingRect().size(), said->size());
    EXPECT_GE(said->width(), said->minimumSizeHint().width());
    EXPECT_GE(said->height(), said->heightForWidth(said->width()));
}

// A bar that was needed for a moment made the words narrower, and so stayed.
TEST_F(WalkNarrow, ACardThatFitsHasNoBar) {
    const auto place = std::ranges::find_if(
        places(), [](const Place& one) { return std::string(one.name) == "visit, another's"; });
    ASSERT_NE(place, places().end());
    goTo(*place);
    for (const int width : {700, 760, 800, 820, 900, 1000}) {
        shown()->resize(1280, 800);
        settle();
        shown()->resize(width, 800);
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        settle();
        const auto* card = shown()->findChild<QWidget*>(QStringLiteral("visitCard"));
        const auto* area = card->findChild<QScrollArea*>();
        EXPECT_LE(area->widget()->height(), area->viewport()->height()) << width;
    }
}

// One below another they took a third of the window from the visit.
TEST_F(WalkNarrow, ThePlacesStandInOneRow) {
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    goTo(places().front());
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    shown()->resize(800, 800);
    settle();
    const auto* first = find("place.1");
    const auto* tools = find("settings");
    for (const char* name : {"place.2", "place.3", "place.4", "place.5"})
        EXPECT_EQ(find(name)->y(), first->y()) << name;
    EXPECT_GT(tools->mapTo(shown(), QPoint()).y(), first->mapTo(shown(), QPoint()).y());
    shown()->resize(1280, 800);
    settle();
    EXPECT_LT(tools->mapTo(shown(), QPoint()).y(),
              first->mapTo(shown(), QPoint(0, first->height())).y())
        << "beside them where there is room";
}
