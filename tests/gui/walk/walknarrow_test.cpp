// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// In a window of 800 pixels, with text twice as large, everything wraps into its width: what
// scrolls up and down is cut nowhere at its side (WCAG 2.2, 1.4.4 and 1.4.10).
#include <QApplication>
#include <QScrollArea>

#include "gui/walk/walk_fixture.h"
#include "look.h"

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
        shown()->resize(800, 800);
        settle();
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
