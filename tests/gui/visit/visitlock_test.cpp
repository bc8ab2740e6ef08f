// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One key locks the keys for wiping: then nothing that a cloth can press or touch says anything.
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QSignalSpy>

#include "gui/visit/visitdriver.h"
#include "visit/question.h"

namespace {

using gui::VisitDriver;
using practice::Way;

/// Every key of a common keyboard that writes or moves, but the one that unlocks.
void wipeTheKeyboard(VisitDriver& visit) {
    std::vector<int> keys{Qt::Key_Space,  Qt::Key_Return,    Qt::Key_Enter, Qt::Key_Tab,
                          Qt::Key_Escape, Qt::Key_Backspace, Qt::Key_Up,    Qt::Key_Down};
    for (int key = Qt::Key_0; key <= Qt::Key_9; ++key) keys.push_back(key);
    for (int key = Qt::Key_A; key <= Qt::Key_Z; ++key) keys.push_back(key);
    for (int key = Qt::Key_F1; key <= Qt::Key_F12; ++key)
        if (key != Qt::Key_F9) keys.push_back(key);
    for (const int key : keys)
        for (const auto modifier : {Qt::NoModifier, Qt::ShiftModifier})
            visit.press(static_cast<Qt::Key>(key), modifier);
}

TEST(VisitLock, NothingOnTheKeyboardSaysAnything) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);  // a lapse has the focus: Enter would say it
    const std::size_t before = visit.entries();
    QSignalSpy turned(&visit.page(), &ui::VisitPage::turnScreenWanted);
    visit.press(Qt::Key_F9);
    ASSERT_TRUE(visit.page().isLocked());
    wipeTheKeyboard(visit);
    EXPECT_EQ(visit.entries(), before);
    EXPECT_EQ(turned.count(), 0);
    EXPECT_EQ(visit.page().question(), nullptr);
    EXPECT_TRUE(visit.page().isLocked());
    visit.picture(QStringLiteral("visit-14-locked"));
    visit.press(Qt::Key_F9);
    visit.seeStep();
    EXPECT_EQ(visit.entries(), before + 1);
}

TEST(VisitLock, TheMouseAndTouchAreDeadToo) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_F9);
    for (auto* button : visit.page().findChildren<QAbstractButton*>())
        if (button->isVisible()) QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(visit.entries(), before);
    EXPECT_EQ(visit.page().question(), nullptr);
}

TEST(VisitLock, ANoteBeingWrittenTakesNoLettersAndIsKept) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_N);
    auto* note = visit.find<QLineEdit>(QStringLiteral("note"));
    QTest::keyClicks(note, QStringLiteral("left hand"));
    visit.press(Qt::Key_F9);
    ASSERT_TRUE(visit.page().isLocked());
    const std::size_t before = visit.entries();
    wipeTheKeyboard(visit);
    EXPECT_EQ(note->text(), QStringLiteral("left hand"));
    EXPECT_EQ(visit.entries(), before);
    visit.press(Qt::Key_F9);
    visit.press(Qt::Key_N);
    QTest::keyClick(note, Qt::Key_Return);
    ASSERT_EQ(visit.state().notes.size(), 1U);
}

TEST(VisitLock, AnOpenQuestionWaitsUntilTheWipingIsDone) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_X);
    ASSERT_NE(visit.page().question(), nullptr);
    visit.press(Qt::Key_F9);
    ASSERT_TRUE(visit.page().isLocked());
    const std::size_t before = visit.entries();
    wipeTheKeyboard(visit);
    EXPECT_EQ(visit.entries(), before);
    ASSERT_NE(visit.page().question(), nullptr);
    visit.press(Qt::Key_F9);
    visit.press(Qt::Key_2);  // called away
    visit.press(Qt::Key_Return);
    EXPECT_EQ(visit.entries(), before + 1);
}

// The window around the page has shortcuts of its own.
TEST(VisitLock, ShortcutsOfTheWindowAroundItRest) {
    VisitDriver visit("clean-hands");
    QShortcut outer(QKeySequence(Qt::CTRL | Qt::Key_1), &visit.page());
    QSignalSpy went(&outer, &QShortcut::activated);
    visit.press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(went.count(), 1);
    visit.press(Qt::Key_F9);
    visit.press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(went.count(), 1);
}

}  // namespace
