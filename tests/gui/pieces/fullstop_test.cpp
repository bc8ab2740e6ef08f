// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// In a program that reads from the right a sentence in Latin letters is still one that reads from
// the left: its full stop stands behind its last word. Unicode, UAX 9, P2 and P3.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QRadioButton>

#include "gui/pieces/ink.h"
#include "look.h"
#include "pieces/pressbutton.h"
#include "visit/steplist.h"

namespace {

const QString sentence = QStringLiteral("TTTTTTT.");

/// T is high and a full stop is low.
void expectStopLast(QWidget& widget, int edge, const char* what) {
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const QImage image = gui::paintedIn(direction, widget);
        const QRect box = gui::inkOf(image, edge);
        ASSERT_GT(box.width(), 20) << what;
        EXPECT_LT(gui::topOf(image, box, edge, true), box.center().y()) << what << direction;
        EXPECT_GT(gui::topOf(image, box, edge, false), box.center().y()) << what << direction;
    }
}

class FullStop : public testing::Test {
  protected:
    FullStop() { ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0); }
};

TEST_F(FullStop, StandsBehindTheWordsOfAButton) {
    ui::PressButton press(sentence, ui::Dress::Plain, nullptr);
    press.resize(300, 48);
    expectStopLast(press, 6, "a mark");
    QPushButton plain(sentence);
    plain.resize(300, 48);
    expectStopLast(plain, 6, "a button");
}

TEST_F(FullStop, StandsBehindTheWordsOfAStep) {
    ui::StepRow row(nullptr);
    row.show({.kind = ui::StepRow::Kind::Step, .words = sentence});
    row.resize(300, row.heightForWidth(300));
    expectStopLast(row, 0, "a step");
}

TEST_F(FullStop, StandsBehindTheWordsOfAnAnswer) {
    QRadioButton answer(sentence);
    answer.setProperty("part", QStringLiteral("choice"));
    answer.resize(300, 48);
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const QImage whole = gui::paintedIn(direction, answer);
        const int dot = 42;  // its sign, where reading starts, and the room around
        const QImage words = whole.copy(direction == Qt::LeftToRight ? dot : 0, 0, 300 - dot, 48);
        const QRect box = gui::inkOf(words, 6);
        ASSERT_GT(box.width(), 20);
        EXPECT_LT(gui::topOf(words, box, 6, true), box.center().y()) << direction;
        EXPECT_GT(gui::topOf(words, box, 6, false), box.center().y()) << direction;
    }
}

}  // namespace
