// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/mainwindow.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QtTest/QTest>

#include "gui/main/shell_fixture.h"
#include "look.h"

namespace {

QString fromUtf8(const char* words) { return QString::fromUtf8(words); }

}  // namespace

// Nobody works here yet: the first thing is to say who; then the first patient.
TEST_F(Shell, FromNothingToALearnerByKeysAlone) {
    begin(Begin::Empty);
    picture("01-first-start");
    type("staffName", fromUtf8("Ilse Marchetti"));
    type("initials", fromUtf8("IM"));
    press("staff.primary");
    QTest::keyClick(m_window.get(), Qt::Key_1, Qt::AltModifier);
    picture("02-nobody-yet");
    press("addFirstPatient");
    type("patientName", fromUtf8("Señora Łucja ع Ó Dálaigh"));
    type("born", fromUtf8("3 May 1961"));
    type("number", fromUtf8("D-1"));
    press("allergies.latex");
    picture("03-patient-form");
    press("patientForm.primary");
    type("inserted", fromUtf8("26 February 2026"));
    type("outside", fromUtf8("30"));
    press("arm.right");
    press("lineKind.picc");
    picture("04-line-form");
    press("lineForm.primary");
    type("learnerName", fromUtf8("Amara Okonjo"));
    press("relationship.wife");
    press("consent.teach");
    type("givenBy", fromUtf8("The patient"));
    press("barriers.fear-of-harm");
    press("interpreterNeeded.no");
    picture("05-learner-form");
    for (QWidget* one : m_window->findChildren<QWidget*>(fromUtf8("relationship")))
        EXPECT_GE(one->height(), one->childrenRect().bottom()) << "no row of choices is cut";
    press("learnerForm.primary");
    picture("06-person");
    EXPECT_EQ(types(), QStringList({fromUtf8("staff-added"), fromUtf8("patient-added"),
                                    fromUtf8("allergies-asked"), fromUtf8("line-added"),
                                    fromUtf8("learner-added"), fromUtf8("consent-asked"),
                                    fromUtf8("needs-asked")}));
    const auto all = entries();
    EXPECT_EQ(all[1].body.data["name"], "Señora Łucja ع Ó Dálaigh");
    EXPECT_EQ(all[1].body.data["born"], "1961-05-03");
    EXPECT_EQ(all[3].body.data["outside_mm"], 30);
    EXPECT_EQ(all[3].body.data["arm"], "right");
    EXPECT_EQ(all[5].body.data["to_teach"], true);
}

TEST_F(Shell, ABirthInTheFutureAndALongNameAreSaidInPlaceAndNothingIsWritten) {
    begin(Begin::DemoWard);
    const auto before = m_ledger->head().size;
    press("addPatient");
    type("patientName", QString(1001, u'x'));
    type("born", fromUtf8("3 May 2061"));
    type("number", fromUtf8("D-1"));
    press("patientForm.primary");
    picture("07-errors-in-place");
    EXPECT_EQ(m_ledger->head().size, before);
    QStringList said;
    for (QLabel* label : m_window->findChildren<QLabel*>())
        if (label->isVisible()) said << label->text();
    EXPECT_TRUE(said.join(u' ').contains(fromUtf8("1001 letters")));
    EXPECT_TRUE(said.join(u' ').contains(fromUtf8("future")));
}

// What nobody asked is never written down as an answer: allergies are asked before a patient is
// saved, consent and needs may come later.
TEST_F(Shell, WhatWasNotAskedIsNotWrittenAsAnAnswer) {
    begin(Begin::DemoWard);
    const auto before = m_ledger->head().size;
    press("addPatient");
    type("patientName", fromUtf8("Jonna Abara"));
    type("born", fromUtf8("3 May 1961"));
    type("number", fromUtf8("D-2"));
    press("patientForm.primary");
    EXPECT_EQ(m_ledger->head().size, before) << "allergies were not asked";
    press("allergies.latex");
    press("allergies.none-known");
    press("patientForm.primary");
    EXPECT_EQ(m_ledger->head().size, before) << "none known, and one of them";
    press("allergies.latex");
    press("patientForm.primary");
    ASSERT_EQ(types().last(), fromUtf8("allergies-asked"));
    EXPECT_TRUE(entries().back().body.data["allergies"].empty());
    type("inserted", fromUtf8("26 February 2026"));
    type("outside", fromUtf8("30"));
    press("arm.right");
    press("lineKind.picc");
    press("lineForm.primary");
    type("learnerName", fromUtf8("Ode Abara"));
    press("relationship.son");
    press("learnerForm.primary");
    EXPECT_EQ(types().last(), fromUtf8("learner-added")) << "neither consent nor needs";
    press("person.next");
    press("consent.declined");
    type("givenBy", fromUtf8("The patient"));
    press("barriers.none-found");
    press("interpreterNeeded.no");
    press("learnerForm.primary");
    EXPECT_EQ(types().last(), fromUtf8("needs-asked"));
    const auto consent = entries()[entries().size() - 2].body.data;
    EXPECT_EQ(types().at(types().size() - 2), fromUtf8("consent-asked"));
    EXPECT_NE(consent["to_teach"], true);
    EXPECT_NE(consent["to_tell"], true);
}

TEST_F(Shell, AnAnswerIsNeverItsOwnOppositeNorLetGo) {
    begin(Begin::DemoWard);
    const auto card = "card." + m_desk->view().cards.front().learner.text();
    press(card.c_str());
    press("person.addLearner");
    type("learnerName", fromUtf8("Ode Abara"));
    press("relationship.son");
    type("givenBy", fromUtf8("The patient"));
    press("interpreterNeeded.no");
    const auto before = entries().size();
    press("consent.teach");
    press("consent.declined");
    press("learnerForm.primary");
    EXPECT_EQ(entries().size(), before) << "agreed and not agreed";
    press("consent.declined");
    press("barriers.none-found");
    press("barriers.sight");
    press("learnerForm.primary");
    EXPECT_EQ(entries().size(), before) << "some and none";
    press("barriers.none-found");
    press("barriers.sight");
    type("fears", fromUtf8("hurting him"));
    press("learnerForm.primary");
    EXPECT_EQ(entries().size(), before) << "what was typed would be lost";
    picture("29-learner-refused");
    press("barriers.none-found");
    press("learnerForm.primary");
    EXPECT_EQ(entries().size(), before + 3);
    EXPECT_EQ(entries().back().body.data["fears"], "hurting him");
}

TEST_F(Shell, SearchFindsWhileTyping) {
    begin(Begin::DemoWard);
    picture("08-learners");
    type("search", fromUtf8("oko"));
    EXPECT_EQ(m_desk->view().cards.size(), 1u);
    type("search", fromUtf8("zzz"));
    EXPECT_NE(find("showAll"), nullptr);
    picture("09-nobody-found");
    press("showAll");
    EXPECT_EQ(m_desk->view().cards.size(), 4u);
}

// ui.md: an empty list offers the one action that fills it; of these pages each takes it by Enter.
TEST_F(Shell, WhereNobodyIsChosenEnterGoesToTheLearners) {
    begin(Begin::DemoWard);
    for (const auto place : {ui::Place::AskBack, ui::Place::Sign, ui::Place::Papers}) {
        m_window->go(place);
        QCoreApplication::processEvents();
        ASSERT_NE(m_window->focusWidget(), nullptr) << static_cast<int>(place);
        QTest::keyClick(m_window->focusWidget(), Qt::Key_Return);
        EXPECT_EQ(m_window->page()->objectName(), fromUtf8("learners")) << static_cast<int>(place);
    }
}

TEST_F(Shell, AFormThatIsBegunAnewBeginsAtItsFirstField) {
    begin(Begin::DemoWard);
    type("search", fromUtf8("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    for (int i = 0; i < 2; ++i) {
        press("person.correct");
        QCoreApplication::processEvents();
        EXPECT_EQ(m_window->focusWidget(), find("correctionKind.addendum")) << "time " << i + 1;
        find("correction.back")->setFocus();
        QTest::keyClick(m_window->focusWidget(), Qt::Key_Return);
    }
}

TEST_F(Shell, AVisitBeginsAfterTwoIdentifiersAndACheck) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    picture("10-start");
    answerOnWhom();
    EXPECT_FALSE(find("start.primary")->isEnabled());
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    picture("11-start-refused");
    EXPECT_FALSE(m_desk->view().openVisit);
    beginVisit();
    ASSERT_TRUE(m_desk->view().openVisit);
    picture("12-visit");
    EXPECT_EQ(types().last(), fromUtf8("visit-opened"));
    const auto said = entries().back().body.data;
    EXPECT_EQ(said["way"], "show") << "the first visit shows it";
    EXPECT_EQ(said["identifiers"].size(), 2u);
}

TEST_F(Shell, WhileTheKeysAreLockedTheBarIsDeadToo) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    beginVisit();
    QWidget* const visit = m_window->page();
    QTest::keyClick(visit, Qt::Key_F9);
    for (const char* name : {"place.1", "place.5", "teacher", "settings"}) {
        QTest::mouseClick(find(name), Qt::LeftButton);
        EXPECT_EQ(m_window->page(), visit) << name << " while a hand wipes the screen";
    }
    m_clock.advanceMs(1000);  // sooner it would be the same press again
    QTest::keyClick(visit, Qt::Key_F9);
    QTest::mouseClick(find("place.1"), Qt::LeftButton);
    EXPECT_NE(m_window->page(), visit);
}

TEST_F(Shell, NothingSaysThatItLocksWhereNothingDoes) {
    begin(Begin::DemoWard);
    press("settings");
    EXPECT_NE(m_window->page()->findChild<QWidget*>(QStringLiteral("settings.keys")), nullptr);
    EXPECT_EQ(m_window->page()->findChild<QWidget*>(QStringLiteral("lockAfter")), nullptr);
}

TEST_F(Shell, SettingsAreRememberedAndTheLookSwitchesLive) {
    begin(Begin::DemoWard);
    const QImage light = picture("13-light");
    press("textLarger");
    EXPECT_DOUBLE_EQ(ui::theme().textFactor(), 1.25);
    m_window->close();
    openWindow();
    EXPECT_DOUBLE_EQ(ui::theme().textFactor(), 1.25);
    press("scheme");
    press("scheme");
    EXPECT_TRUE(ui::theme().isDark());
    EXPECT_NE(picture("14-dark"), light);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

TEST_F(Shell, EverythingThatTakesFocusHasAName) {
    begin(Begin::DemoWard);
    const auto& card = m_desk->view().cards.front();
    ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
    for (const ui::Place place : {ui::Place::Learners, ui::Place::Visit, ui::Place::AskBack,
                                  ui::Place::Sign, ui::Place::Papers}) {
        m_window->go(place);
        for (QWidget* widget : m_window->findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
            QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(face, nullptr);
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty())
                << widget->metaObject()->className() << " " << widget->objectName().toStdString();
        }
    }
}

TEST_F(Shell, AtTwiceTheTextNoButtonIsCut) {
    begin(Begin::DemoWard);
    const auto& card = m_desk->view().cards.front();
    ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    int seen = 0;
    for (const ui::Place place : {ui::Place::Learners, ui::Place::Sign, ui::Place::Papers}) {
        m_window->go(place);
        picture(place == ui::Place::Sign ? "27-sign-200" : "28-papers-200");
        for (QAbstractButton* button : m_window->findChildren<QAbstractButton*>()) {
            if (!button->isVisible()) continue;
            ++seen;
            EXPECT_GE(button->width(), button->minimumSizeHint().width())
                << button->objectName().toStdString();
            EXPECT_GE(button->height(), 40) << button->objectName().toStdString();
        }
    }
    EXPECT_GT(seen, 20);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

TEST_F(Shell, APaperIsInTheRecordBeforeItIsOnTheClipboard) {
    begin(Begin::DemoWard);
    ASSERT_TRUE(m_desk->lookFor("okonjo").ok());
    const auto card = m_desk->view().cards.front();
    ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
    m_window->go(ui::Place::Papers);
    press("papers.copy");
    EXPECT_EQ(types().last(), fromUtf8("paper-issued"));
    EXPECT_EQ(entries().back().body.data["kind"], "chart-note");
    const QString note = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(note.contains(fromUtf8("Okonjo")));
    EXPECT_LE(note.count(u'\n'), 15);
    EXPECT_EQ(find("paperKind.certificate"), nullptr) << "the rules say not yet";
}

TEST_F(Shell, PicturesOfSigningAndPapersInEveryLook) {
    begin(Begin::DemoWard);
    type("search", fromUtf8("okonjo"));
    const auto card = "card." + m_desk->view().cards.front().learner.text();
    press(card.c_str());
    picture("20-person");
    m_window->go(ui::Place::Sign);
    picture("21-sign");
    m_window->go(ui::Place::Papers);
    picture("22-papers");
    ui::Look::instance().apply(ui::SchemeChoice::Dark, 1.0);
    m_window->go(ui::Place::Sign);
    picture("23-sign-dark");
    ui::Look::instance().apply(ui::SchemeChoice::HighContrast, 1.0);
    picture("24-sign-contrast");
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    m_window->go(ui::Place::Learners);
    const QImage large = picture("25-learners-200");
    QApplication::setLayoutDirection(Qt::RightToLeft);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
    const QImage mirrored = picture("26-learners-rtl");
    QApplication::setLayoutDirection(Qt::LeftToRight);
    EXPECT_NE(large, mirrored);
}

// ui.md: one obvious next thing.
TEST_F(Shell, OneButtonOfThePageIsFilledAndItIsTheNextThing) {
    const auto filled = [this] {
        QStringList words;
        for (const auto* button : m_window->page()->findChildren<QPushButton*>())
            if (button->isVisible() && button->property("part") == QLatin1String("primary"))
                words << button->text();
        return words;
    };
    begin(Begin::Empty);
    EXPECT_EQ(filled(), QStringList{fromUtf8("Add to the staff")});
    begin(Begin::DemoWard);
    press("teacher");
    ASSERT_EQ(filled().size(), 1);
    EXPECT_TRUE(filled().front().startsWith(fromUtf8("Go on as")))
        << filled().front().toStdString();
    type("staffName", fromUtf8("Ilse Marchetti"));
    type("initials", fromUtf8("IX"));
    press("staff.add");
    EXPECT_EQ(filled(), QStringList{fromUtf8("Go on as Ilse Marchetti")});
    press("staff.primary");
    EXPECT_EQ(m_window->page()->objectName(), fromUtf8("learners"));
}

// With nobody chosen yet, the first name is in hand and Enter takes it.
TEST_F(Shell, EnterPressesWhatHasTheFocus) {
    begin(Begin::DemoWard);
    m_desk->workAs(base::StaffId::random());
    QTest::keyClick(m_window.get(), Qt::Key_6, Qt::AltModifier);
    QCoreApplication::processEvents();
    const auto first = m_desk->view().house.staff.front().said;
    QWidget* focus = m_window->focusWidget();
    ASSERT_TRUE(qobject_cast<QAbstractButton*>(focus));
    EXPECT_TRUE(focus->objectName().endsWith(QString::fromStdString(first.staff.text())))
        << focus->objectName().toStdString();
    QTest::keyClick(focus, Qt::Key_Return);
    EXPECT_EQ(m_desk->view().teacher, first.staff);
    press("staff.primary");
    EXPECT_EQ(m_window->page()->objectName(), fromUtf8("learners"));
    type("search", fromUtf8("okonjo"));
    QCoreApplication::processEvents();
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Tab);
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Enter);
    ASSERT_TRUE(m_desk->view().record) << m_window->focusWidget()->objectName().toStdString();
    EXPECT_EQ(m_window->page()->objectName(), fromUtf8("person"));
}

// The bar is left as it was come to: by one key, to where one was.
TEST_F(Shell, EscapeLeavesTheBar) {
    begin(Begin::DemoWard);
    type("search", fromUtf8("lindq"));
    for (const char* name : {"place.3", "textLarger", "teacher"}) {
        find(name)->setFocus();
        QTest::keyClick(m_window->focusWidget(), Qt::Key_Escape);
        EXPECT_EQ(m_window->focusWidget(), find("search")) << name;
    }
}

TEST_F(Shell, AskingBackBeginsAtTheFirstPoint) {
    begin(Begin::DemoWard);
    type("search", fromUtf8("okonjo"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    press("place.3");
    QCoreApplication::processEvents();
    const QString now = m_window->focusWidget()->objectName();
    EXPECT_TRUE(now.startsWith(fromUtf8("points.")) || now.startsWith(fromUtf8("drill-")))
        << now.toStdString();
}

TEST_F(Shell, EnterOpensTheOnlyOneThatIsFound) {
    begin(Begin::DemoWard);
    type("search", fromUtf8("o"));
    QTest::keyClick(find("search"), Qt::Key_Return);
    EXPECT_FALSE(m_desk->view().record) << "two are found";
    type("search", fromUtf8("okonjo"));
    QTest::keyClick(find("search"), Qt::Key_Return);
    ASSERT_TRUE(m_desk->view().record);
    EXPECT_EQ(m_window->page()->objectName(), fromUtf8("person"));
}

// Also where the window is the first thing that asks for a look.
TEST_F(Shell, BarIsWrittenInTheLettersOfTheLook) {
    begin(Begin::DemoWard);
    for (const char* name : {"textLarger", "settings", "teacher"})
        EXPECT_EQ(find(name)->font().pointSizeF(),
                  ui::theme().font(render::TextSize::Body).pointSizeF())
            << name;
}
