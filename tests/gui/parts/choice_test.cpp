// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Where the focus comes to in a choice: its chosen button, as with Tab, else the first that can be
// pressed (WAI-ARIA Authoring Practices, radio group, from memory).
#include "parts/choice.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QLineEdit>
#include <QVBoxLayout>
#include <QtTest/QTest>

#include "look.h"

namespace {

class ChoiceFocus : public testing::Test {
  protected:
    ChoiceFocus() { ui::Look::instance(); }
    QString focusedOf(ui::Choice& choice) {
        choice.show();
        choice.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&choice));
        choice.setFocus();
        return choice.focusWidget() ? choice.focusWidget()->objectName() : QString();
    }
    const std::vector<ui::Option> m_three{{QStringLiteral("a"), QStringLiteral("A")},
                                          {QStringLiteral("b"), QStringLiteral("B")},
                                          {QStringLiteral("c"), QStringLiteral("C")}};
};

TEST_F(ChoiceFocus, ComesToTheChosenOne) {
    ui::Choice choice(QStringLiteral("of"), ui::Pick::One, m_three);
    choice.choose(QStringLiteral("c"));
    EXPECT_EQ(focusedOf(choice), QStringLiteral("of.c"));
}

TEST_F(ChoiceFocus, ComesToTheFirstThatCanBePressed) {
    ui::Choice choice(QStringLiteral("of"), ui::Pick::One, m_three);
    choice.button(QStringLiteral("a"))->setEnabled(false);
    EXPECT_EQ(focusedOf(choice), QStringLiteral("of.b"));
}

TEST_F(ChoiceFocus, DoesNotComeToAChosenOneThatCannotBePressed) {
    ui::Choice choice(QStringLiteral("of"), ui::Pick::One, m_three);
    choice.choose(QStringLiteral("c"));
    choice.button(QStringLiteral("c"))->setEnabled(false);
    EXPECT_EQ(focusedOf(choice), QStringLiteral("of.a"));
}

TEST_F(ChoiceFocus, WhereManyMayBeChosenItBeginsAtTheFirst) {
    ui::Choice choice(QStringLiteral("of"), ui::Pick::Any, m_three);
    choice.choose(QStringLiteral("c"));
    EXPECT_EQ(focusedOf(choice), QStringLiteral("of.a"));
}

TEST_F(ChoiceFocus, TabComesToTheChosenOneWhoeverChoseIt) {
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    auto* before = new QLineEdit;
    auto* choice = new ui::Choice(QStringLiteral("of"), ui::Pick::One, m_three);
    column->addWidget(before);
    column->addWidget(choice);
    const auto tabbed = [&] {
        before->setFocus();
        QTest::keyClick(before, Qt::Key_Tab);
        return window.focusWidget()->objectName();
    };
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    EXPECT_EQ(tabbed(), QStringLiteral("of.a")) << "none is chosen";
    choice->choose(QStringLiteral("c"));
    EXPECT_EQ(tabbed(), QStringLiteral("of.c"));
    choice->choose(QStringLiteral("b"));
    EXPECT_EQ(tabbed(), QStringLiteral("of.b"));
    choice->clearChoice();
    choice->choose(QStringLiteral("c"));
    EXPECT_EQ(tabbed(), QStringLiteral("of.c"));
    QTest::keyClick(window.focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_TRUE(before->hasFocus());
}

}  // namespace
