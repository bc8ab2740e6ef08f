// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A note that is being written, in the main window.
#include <QLineEdit>
#include <QtTest/QTest>

#include "gui/main/shell_fixture.h"
#include "visit/visitpage.h"

// Whoever goes elsewhere in the middle of a note wants to go there, and wants the note still there
// on coming back: nothing of it is said by that, and keys are keys again.
TEST_F(Shell, ANoteBegunInAVisitIsStillThereOnComingBack) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    beginVisit();
    auto* visit = m_window->findChild<ui::VisitPage*>();
    m_clock.advanceMs(1000);
    visit->act(ui::Act::Note);
    auto* note = qobject_cast<QLineEdit*>(m_window->focusWidget());
    ASSERT_NE(note, nullptr);
    QTest::keyClicks(note, QStringLiteral("left hand shakes"));
    const auto before = entries().size();
    QTest::mouseClick(find("place.1"), Qt::LeftButton);
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("learners"));
    QTest::mouseClick(find("place.2"), Qt::LeftButton);
    ASSERT_EQ(m_window->page(), visit);
    EXPECT_EQ(entries().size(), before);
    EXPECT_EQ(note->text(), QStringLiteral("left hand shakes"));
    EXPECT_EQ(m_window->focusWidget(), visit) << "letters are keys again";
    m_clock.advanceMs(1000);
    visit->act(ui::Act::Note);
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Return);
    ASSERT_EQ(m_desk->view().visit()->state.notes.size(), 1U);
    EXPECT_EQ(m_desk->view().visit()->state.notes[0].text, "left hand shakes");
}
