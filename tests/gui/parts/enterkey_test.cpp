// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What Enter does, in whatever window a page stands: it presses and chooses, it goes on from what
// is filled in or chosen, and takes nothing back. The rule is our own.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtTest/QTest>

#include "look.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace {

class EnterKey : public testing::Test {
  protected:
    void SetUp() override {
        ui::Look::instance();
        for (ui::WordsField* field : {m_name, m_telephone, m_number})
            m_page.column()->addWidget(field);
        m_page.column()->addWidget(m_agreed);
        m_back = m_page.addSecondary(QStringLiteral("Back"), QStringLiteral("back"));
        m_page.setPrimary(QStringLiteral("Save"));
        QObject::connect(&m_page, &ui::Page::pressed, [this] { ++m_pressed; });
        QObject::connect(m_back, &QPushButton::clicked, [this] { ++m_left; });
        m_page.show();
        m_page.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&m_page));
    }
    void enterOn(QWidget* widget, Qt::Key key = Qt::Key_Return) {
        widget->setFocus();
        QTest::keyClick(widget, key);
    }
    static ui::WordsField* line(const char* name, ui::Must must) {
        return new ui::WordsField(QString::fromLatin1(name), QString::fromLatin1(name), must);
    }

    ui::Page m_page{QStringLiteral("page")};
    ui::WordsField *m_name = line("name", ui::Must::Fill),
                   *m_telephone = line("telephone", ui::Must::MayStayEmpty),
                   *m_number = line("number", ui::Must::Fill);
    ui::Choice* m_agreed = new ui::Choice(QStringLiteral("agreed"), ui::Pick::Any,
                                          {{QStringLiteral("yes"), QStringLiteral("May")}});
    QPushButton* m_back = nullptr;
    int m_pressed = 0, m_left = 0;
};

TEST_F(EnterKey, GoesFromALineToTheNextThatHasToBeFilledAndThenPresses) {
    enterOn(m_name->edit());
    EXPECT_TRUE(m_number->edit()->hasFocus()) << "the telephone may stay empty";
    EXPECT_EQ(m_pressed, 0);
    m_number->setWords(QStringLiteral("N-1042"));
    enterOn(m_name->edit(), Qt::Key_Enter);
    EXPECT_EQ(m_pressed, 1);
    enterOn(m_number->edit());
    EXPECT_EQ(m_pressed, 2) << "what stands before it is the page's to check";
}

TEST_F(EnterKey, PressesTheButtonThatHasTheFocus) {
    enterOn(m_back);
    EXPECT_EQ(m_left, 1);
    enterOn(m_page.primary(), Qt::Key_Enter);
    EXPECT_EQ(m_pressed, 1);
}

TEST_F(EnterKey, ChoosesAnAnswerAndGoesOnFromOneThatIsChosen) {
    QAbstractButton* yes = m_agreed->button(QStringLiteral("yes"));
    enterOn(yes);
    EXPECT_TRUE(yes->isChecked());
    EXPECT_EQ(m_pressed, 0);
    enterOn(yes);
    EXPECT_TRUE(yes->isChecked()) << "taken back";
    EXPECT_EQ(m_pressed, 1);
    QTest::keyClick(yes, Qt::Key_Space);
    EXPECT_FALSE(yes->isChecked()) << "Space takes it back";
}

TEST_F(EnterKey, OnlyGoesToWhatCannotBeTakenBack) {
    m_page.setEnter(ui::Page::Enter::GoesTo);
    enterOn(m_number->edit());
    EXPECT_EQ(m_pressed, 0);
    EXPECT_TRUE(m_page.primary()->hasFocus());
    enterOn(m_page.primary());
    EXPECT_EQ(m_pressed, 1);
}

TEST_F(EnterKey, HeldIsPressedOnce) {
    m_number->edit()->setFocus();
    QKeyEvent held(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), true);
    QCoreApplication::sendEvent(m_number->edit(), &held);
    EXPECT_EQ(m_pressed, 0);
}

TEST_F(EnterKey, WithControlPressesFromAnywhere) {
    m_back->setFocus();
    QTest::keyClick(m_back, Qt::Key_Enter, Qt::ControlModifier);
    EXPECT_EQ(m_pressed, 1);
    EXPECT_EQ(m_left, 0);
}

}  // namespace
