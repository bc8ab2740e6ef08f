// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A bouncing pedal or key, a held key, a second touch: each does what one press does, no more.
// Times are common practice, no source.
#include <QLineEdit>
#include <QRadioButton>
#include <QSignalSpy>

#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"
#include "visit/question.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

constexpr std::int64_t bouncesAfterMs = 5;

/// All that a press can have changed.
struct Came {
    std::size_t entries = 0;
    bool isLocked = false;
    bool hasTone = false;
    qsizetype asked = 0;  ///< of the window around the page
    QString question, written, focus;
    QStringList checked;
    bool operator==(const Came&) const = default;
};

/// What a press asks of the window around the page.
struct Asked {
    explicit Asked(const ui::VisitPage& page)
        : turned(&page, &ui::VisitPage::turnScreenWanted),
          read(&page, &ui::VisitPage::readAloudWanted) {}
    QSignalSpy turned, read;
    qsizetype count() const { return turned.count() + read.count(); }
};

Came whatCame(VisitDriver& visit, const Asked& asked) {
    Came came{.entries = visit.entries(),
              .isLocked = visit.page().isLocked(),
              .hasTone = visit.page().hasTone(),
              .asked = asked.count()};
    if (const QWidget* inside = visit.page().focusWidget()) came.focus = inside->objectName();
    if (const QWidget* open = visit.page().question()) came.question = open->accessibleName();
    for (const auto* line : visit.page().findChildren<QLineEdit*>()) came.written += line->text();
    for (const auto* button : visit.page().findChildren<QAbstractButton*>())
        if (button->isChecked()) came.checked << button->objectName();
    return came;
}

QWidget* focusOf(VisitDriver& visit) {
    QWidget* inside = visit.page().focusWidget();
    return inside != nullptr ? inside : &visit.page();
}

/// As a window system sends it: to what has the focus by then.
void hold(VisitDriver& visit, int key, Qt::KeyboardModifiers modifiers, const QString& text) {
    for (int i = 0; i < 10; ++i) {
        visit.pass(40);
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent held(type, key, modifiers, text, true);
            QApplication::sendEvent(focusOf(visit), &held);
        }
    }
}

/// Whether the press did anything at all.
bool expectOnePress(VisitDriver& visit, int key, Qt::KeyboardModifiers modifiers,
                    const std::string& what) {
    const Asked asked(visit.page());
    const Came before = whatCame(visit, asked);
    const QString text = key < 0x80 ? QString(QChar(key)).toLower() : QString();
    visit.press(static_cast<Qt::Key>(key), modifiers);
    const Came once = whatCame(visit, asked);
    visit.pass(bouncesAfterMs);
    QTest::keyClick(focusOf(visit), static_cast<Qt::Key>(key), modifiers);
    EXPECT_EQ(whatCame(visit, asked), once) << what << " bounces";
    hold(visit, key, modifiers, text);
    EXPECT_EQ(whatCame(visit, asked), once) << what << " is held";
    return !(once == before);
}

/// To where the key has something to do.
void goWhereItCounts(VisitDriver& visit, ui::Act act) {
    visit.seeStep();
    if (act == ui::Act::CueBack) visit.press(Qt::Key_C);
    if (act == ui::Act::DoesNotApply) visit.seeUntil("measure-arm");
    if (act != ui::Act::CaughtAlone && act != ui::Act::ShowWayBack) return;
    visit.seeUntil("scrub-skin");
    visit.click(QStringLiteral("lapse-") + visit.firstLapse());
}

TEST(VisitBounce, EveryKeyOfAVisitCountsOnce) {
    for (const ui::Act act : ui::allActs()) {
        // In a return demonstration the learner sees nothing that could be read aloud.
        const Way way = act == ui::Act::ReadAloud ? Way::Guided : Way::ReturnDemonstration;
        VisitDriver visit("weekly-dressing-upper-arm", way, On::PracticeArm);
        goWhereItCounts(visit, act);
        const QKeyCombination key = visit.page().keys().of(act)[0];
        const std::string words = ui::actWords(act).toStdString();
        const bool did = expectOnePress(visit, key.key(), key.keyboardModifiers(), words);
        EXPECT_TRUE(did) << words;
    }
}

TEST(VisitBounce, TheDigitOfALapseCountsOnce) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    const std::size_t before = visit.entries();
    expectOnePress(visit, Qt::Key_2, Qt::NoModifier, "a digit");
    EXPECT_EQ(visit.entries(), before + 1);
}

// What is asked has the focus on its first choice: Space would take it.
TEST(VisitBounce, ThePressThatAsksDoesNotAnswer) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.ward().doAllSteps();
    expectOnePress(visit, Qt::Key_Space, Qt::NoModifier, "Space");
    ASSERT_NE(visit.page().question(), nullptr);
    visit.press(Qt::Key_Space);
    EXPECT_FALSE(whatCame(visit, Asked(visit.page())).checked.isEmpty()) << "a later one does";
}

TEST(VisitBounce, EnterThatAnswersSaysItOnce) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_T);
    ASSERT_NE(visit.page().question(), nullptr);
    visit.press(Qt::Key_1);
    const std::size_t before = visit.entries();
    expectOnePress(visit, Qt::Key_Return, Qt::NoModifier, "Enter");
    EXPECT_EQ(visit.entries(), before + 1);
}

TEST(VisitBounce, LettersTypedLaterAreHeldAsEver) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_N);
    auto* note = visit.find<QLineEdit>(QStringLiteral("note"));
    visit.pass(400);
    QTest::keyClick(note, Qt::Key_N);
    hold(visit, Qt::Key_N, Qt::NoModifier, QStringLiteral("n"));
    EXPECT_EQ(note->text(), QString(11, QLatin1Char('n')));
}

TEST(VisitBounce, ASecondTouchSaysNoOtherLapse) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    visit.seeUntil("scrub-skin");
    visit.click(QStringLiteral("lapse-") + visit.firstLapse());
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    visit.pass(100);
    QTest::mouseClick(visit.find<QAbstractButton>(QStringLiteral("lapse-") + visit.firstLapse()),
                      Qt::LeftButton);
    EXPECT_EQ(visit.state().lapses.size(), 1U);
    visit.click(QStringLiteral("lapse-") + visit.firstLapse());
    EXPECT_EQ(visit.state().lapses.size(), 2U) << "a later one does";
}

}  // namespace
