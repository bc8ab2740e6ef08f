// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Where no visit is open there is one sensible thing to press, and keys come to it at once.
#include <QAbstractButton>
#include <QtTest/QTest>

#include "gui/main/settled.h"
#include "gui/main/shell_fixture.h"

class NoVisit : public Shell {
  protected:
    void comeThere() {
        m_window.reset();
        m_desk.reset();
        begin(Begin::DemoWard);
        m_window->go(ui::Place::Visit);
        gui::settle(*m_window);
    }
    QString page() const { return m_window->page()->objectName(); }
};

TEST_F(NoVisit, EnterAndSpaceGoToTheLearnersAtOnce) {
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space}) {
        comeThere();
        ASSERT_EQ(page(), QStringLiteral("visitPage"));
        EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("learners")) << key;
        QTest::keyClick(m_window->focusWidget(), key);
        gui::settle(*m_window);
        EXPECT_EQ(page(), QStringLiteral("learners")) << key;
    }
}

TEST_F(NoVisit, EscapeLeavesTheFocusThere) {
    comeThere();
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Escape);
    gui::settle(*m_window);
    EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("learners"));
}

TEST_F(NoVisit, OnceAVisitIsOpenItsPageHasTheKeys) {
    comeThere();
    m_window->go(ui::Place::Learners);
    goToStartOfAVisit();
    beginVisit();
    gui::settle(*m_window);
    ASSERT_TRUE(m_desk->view().openVisit);
    EXPECT_EQ(m_window->focusWidget(), m_window->page());
}
