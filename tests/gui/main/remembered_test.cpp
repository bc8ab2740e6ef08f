// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the program comes back to: the place, the learner and the size of the window.
#include <QKeyEvent>
#include <QLineEdit>
#include <QtTest/QTest>

#include "gui/main/shell_fixture.h"
#include "learners/learnerspage.h"

class Remembered : public Shell {
  protected:
    void comeBack() {
        m_window->close();
        m_window.reset();
        m_desk->closeRecord();
        openWindow();
    }
    QString place() const { return m_window->page()->objectName(); }
    void openRecordOf(const char* name) {
        ASSERT_TRUE(m_desk->lookFor(name).ok());
        const auto card = m_desk->view().cards.front();
        ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
    }
};

TEST_F(Remembered, ThePlaceAndTheLearnerAreThereAgain) {
    begin(Begin::DemoWard);
    openRecordOf("okonjo");
    const auto learner = m_desk->view().learner;
    for (const ui::Place where : {ui::Place::AskBack, ui::Place::Sign, ui::Place::Papers}) {
        m_window->go(where);
        const QString before = place();
        comeBack();
        EXPECT_EQ(place(), before);
        EXPECT_EQ(m_desk->view().learner, learner) << before.toStdString();
    }
    m_window->go(ui::Place::Learners);
    comeBack();
    EXPECT_EQ(place(), QStringLiteral("learners"));
    EXPECT_FALSE(m_desk->view().record) << "no chart is opened that nobody looks at";
}

TEST_F(Remembered, AnOpenVisitIsThereAgainAndAClosedOneIsNot) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    beginVisit();
    comeBack();
    EXPECT_EQ(place(), QStringLiteral("visitPage"));
    ASSERT_TRUE(m_desk->say(practice::StopVisit{}).ok());
    comeBack();
    EXPECT_EQ(place(), QStringLiteral("learners"));
}

TEST_F(Remembered, WhoIsGoneIsNotLookedFor) {
    begin(Begin::DemoWard);
    openRecordOf("okonjo");
    m_window->go(ui::Place::Papers);
    m_settings->set(ui::Setting::LastPatient, QStringLiteral("nobody"));
    m_window.reset();
    openWindow();
    EXPECT_EQ(place(), QStringLiteral("learners"));
}

TEST_F(Remembered, TheWindowIsAsLargeAsItWas) {
    begin(Begin::DemoWard);
    const QSize least = m_window->minimumSizeHint();
    const QSize wanted = least + QSize(40, 90);  // narrow, the tools need a row of their own
    ASSERT_NE(m_window->size(), wanted);
    m_window->resize(wanted);
    comeBack();
    EXPECT_EQ(m_window->size(), wanted);
}

TEST_F(Remembered, TheNextLetterBeginsANewSearch) {
    begin(Begin::DemoWard);
    auto* search = qobject_cast<QLineEdit*>(find("search"));
    QTest::keyClicks(search, QStringLiteral("okonjo"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    QTest::keyClick(m_window.get(), Qt::Key_1, Qt::AltModifier);
    QTest::keyClicks(m_window->focusWidget(), QStringLiteral("lindq"));
    EXPECT_EQ(search->text(), QStringLiteral("lindq"));
    EXPECT_EQ(m_desk->view().cards.size(), 1u);
}

// One key, one meaning: that which locks the keys of a visit copies nothing.
TEST_F(Remembered, TheKeyOfWipingDoesNothingOnPapers) {
    begin(Begin::DemoWard);
    openRecordOf("okonjo");
    m_window->go(ui::Place::Papers);
    const auto before = entries().size();
    QTest::keyClick(m_window->focusWidget(), Qt::Key_F9);
    EXPECT_EQ(entries().size(), before);
    QTest::keyClick(m_window->focusWidget(), Qt::Key_F7);
    ASSERT_EQ(entries().size(), before + 1);
    EXPECT_EQ(entries().back().body.data["kind"], "chart-note");
}

// As core/desk/bounds.h: 300 letters of any script are a name.
TEST_F(Remembered, ANameOfThreeHundredLettersIsTaken) {
    begin(Begin::DemoWard);
    for (const QString& letter :
         {QStringLiteral("x"), QString::fromUtf8("\u0634"), QString::fromUcs4(U"\U00020BB7", 1)}) {
        m_window->go(ui::Place::Learners);
        press("addPatient");
        type("patientName", letter.repeated(300));
        type("born", QStringLiteral("3 May 1961"));
        type("number", QStringLiteral("D-") + letter);
        press("allergies.none-known");
        press("patientForm.primary");
        ASSERT_EQ(types().last(), QStringLiteral("allergies-asked"));
        const auto said = entries()[entries().size() - 2].body.data;
        EXPECT_EQ(said["name"], letter.repeated(300).toStdString());
    }
    m_window->go(ui::Place::Learners);
    picture("32-name-of-300");
}
