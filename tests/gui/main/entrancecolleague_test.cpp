// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Signing by a passphrase, and a colleague who goes on with what somebody else began.
#include "gui/main/entering.h"

class EnteringTyped : public Entering {
  protected:
    /// In each field that is shown and takes letters.
    void typeHere() {
        for (auto* edit : shown().findChildren<QLineEdit*>())
            if (edit->isVisible() && edit->isEnabled() && !edit->isReadOnly()) {
                edit->setFocus();
                edit->selectAll();
                QTest::keyClicks(edit, QStringLiteral("of Solveig"));
            }
    }
    void typeEverywhere() {
        const QString card =
            QStringLiteral("card.") + QString::fromStdString(m_ward.learner().text());
        for (const char* next :
             {"person.correct", "person.line", "person.addLearner", "person.erase"}) {
            press("place.1");
            press(card);
            press(next);
            typeHere();
        }
        press("place.4");
        typeHere();
        press("settings");
        typeHere();
        press("teacher");
        typeHere();
        press("account.people");
        press("people.primary");
        typeHere();
        press("place.1");
        press("addPatient");
        typeHere();
        press("place.2");
        visitPage().act(ui::Act::Note);
        typeHere();
        press("place.1");
        typeHere();
        press("place.2");
    }
    /// Fields anywhere in the window that have what typeHere() types, after as much undoing as
    /// there is.
    QStringList leftOfSolveig() const {
        QStringList names;
        for (auto* edit : shown().findChildren<QLineEdit*>()) {
            bool has = edit->text().contains(QLatin1String("of Solveig"));
            for (int i = 0; i < 50 && edit->isUndoAvailable() && !has; ++i) {
                edit->undo();
                has = edit->text().contains(QLatin1String("of Solveig"));
            }
            if (has) names << edit->objectName();
        }
        return names;
    }
};

TEST_F(Entering, ASignOffWaitsForThePassphraseAndIsThenSigned) {
    withAllShown();
    const auto size = m_ward.ledger().head().size;
    toASignOff();
    EXPECT_EQ(m_ward.ledger().head().size, size) << "nothing before the passphrase";
    EXPECT_GE(shown().findChildren<QLabel*>(QStringLiteral("signing.line")).size(), 3);
    confirmAs(m_tams);
    EXPECT_EQ(m_ward.ledger().head().size, size);
    confirmAs(m_solveigs);
    const ledger::Entry entry = last();
    EXPECT_EQ(entry.body.type, record::SignOff::type);
    EXPECT_EQ(entry.body.sigs.size(), 1U);
}

TEST_F(Entering, AColleagueSignsInBesideTheVisitAndGoesOnWithIt) {
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    begin();
    asSolveig();
    press("place.2");
    handOverToTam();
    const auto& view = m_entrance.desk()->view();
    EXPECT_EQ(view.visit()->state.teachers.size(), 2U);
    EXPECT_EQ(view.visit()->state.teachers.back(), *view.teacher);
    EXPECT_EQ(last().body.type, practice::HandOver::type);
    EXPECT_EQ(visitPage().question(), nullptr);
}

TEST_F(EnteringTyped, NothingThatOnePersonTypedIsLeftForTheColleague) {
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    begin();
    asSolveig();
    typeEverywhere();
    EXPECT_GE(leftOfSolveig().size(), 12) << "the test typed less than it means to";
    handOverToTam();
    EXPECT_EQ(leftOfSolveig(), QStringList());
    press("place.1");
    EXPECT_EQ(m_entrance.desk()->view().search, "");
    EXPECT_FALSE(m_entrance.desk()->view().cards.empty()) << "the list is whole again";
    press("addPatient");
    press("place.4");
    press("teacher");
    EXPECT_TRUE(said("account.who").startsWith(QLatin1String("Tam Oduya")));
    EXPECT_EQ(leftOfSolveig(), QStringList());
}

TEST_F(Entering, WhoComesBackSignsOnceOnAPageOfTheirOwn) {
    m_ward.demonstrateAsAsked();
    m_ward.answerAllPrompts();
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    begin();
    asSolveig();
    press("place.4");
    handOver("Tam Oduya", m_tams, "TO");
    handOver("Solveig Aranda", m_solveigs, "SA");
    openRecord();
    press("place.4");
    EXPECT_EQ(gui::shownPart<QLineEdit>(shown(), QStringLiteral("typedName"))->text(), QString());
    toASignOff();
    confirmAs(m_solveigs);
    EXPECT_EQ(last().body.type, record::SignOff::type);
    EXPECT_TRUE(gui::shownPart<QWidget>(shown(), QStringLiteral("papers")));
    EXPECT_EQ(gui::shownPart<QWidget>(shown(), QStringLiteral("errorStrip")), nullptr)
        << "it was signed a second time";
}

TEST_F(Entering, AVisitThatSomebodyLeftCanBeGoneOnWith) {
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    m_ward.doStepInHand();
    begin();
    signInAs("Tam Oduya", m_tams);
    press("place.2");
    const auto size = m_ward.ledger().head().size;
    visitPage().act(ui::Act::Stop);
    EXPECT_EQ(m_ward.ledger().head().size, size) << "it is another's";
    press("takeOn");
    EXPECT_EQ(last().body.type, practice::HandOver::type);
    press("goOn");
    EXPECT_EQ(last().body.type, practice::ComeBack::type);
}
