// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From the sign-in window to the windows and back, over real keys at the least cost.
#include "main/entrance.h"

#include <QAbstractButton>
#include <QLabel>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "audit/auditor.h"
#include "gui/signin/shownparts.h"
#include "look.h"
#include "main/mainwindow.h"
#include "settings/settings.h"
#include "signin/gatedoor.h"
#include "signin/lock.h"
#include "signin/signinwindow.h"
#include "support/ward.h"
#include "visit/visitpage.h"

using support::Ward;

/// Says that it looked, and at which paper.
class FakeAuditor : public ui::Auditor {
  public:
    std::vector<std::string> papers;
    base::Result<Run> begin(const std::string& paper) override {
        papers.push_back(paper);
        return Run([](const GoOn&) -> base::Result<proof::Report> {
            return proof::Report{.head = {.size = 7, .root = "ab"}, .signatures = 1};
        });
    }
};

class Entering : public testing::Test {
  protected:
    void SetUp() override {
        ui::Look::instance();
        const gate::Newcomer tam{"Tam Oduya", "TO", record::Role::Teacher};
        ASSERT_TRUE(m_ward.gate().admit(tam, seal::Secret::copyOf(m_tams)).now().ok());
    }
    ui::Entrance::OpenDesk opener() {
        return [this] {
            return desk::Desk::open(m_ward.ledger(), m_ward.shelf(), m_ward.clock(),
                                    desk::Ward::Real, &m_ward.gate());
        };
    }
    void begin() {
        m_ward.gate().signOut();
        m_entrance.begin();
    }
    void wait() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return isQuiet(); }, 60'000));
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    /// No thread looks at a passphrase.
    bool isQuiet() const { return m_entrance.signIn().cursor().shape() != Qt::WaitCursor; }
    QWidget& shown() const {
        if (m_entrance.window()) return *m_entrance.window();
        return m_entrance.signIn();
    }
    void press(const QString& name) {
        auto* button = gui::shownPart<QAbstractButton>(shown(), name);
        ASSERT_TRUE(button) << name.toStdString();
        ASSERT_TRUE(button->isEnabled()) << name.toStdString();
        button->click();
        wait();
    }
    void press(const char* name) { press(QString::fromLatin1(name)); }
    void type(const char* name, const std::string& words) {
        gui::typeInto(shown(), name, QString::fromStdString(words));
    }
    void signInAs(const std::string& name, const std::string& passphrase) {
        type("signIn.name", name);
        type("signIn.passphrase", passphrase);
        press("signIn.primary");
    }
    void asSolveig() { signInAs("Solveig Aranda", m_solveigs); }
    QString said(const char* name) const {
        auto* label = gui::shownPart<QWidget>(shown(), QString::fromLatin1(name));
        return label ? label->property("text").toString() : QString();
    }
    void openRecord() {
        const auto& cards = m_entrance.desk()->view().cards;
        ASSERT_FALSE(cards.empty());
        ASSERT_TRUE(m_entrance.desk()->openRecord(cards.front().patient, {}).ok());
    }
    ledger::Entry last() {
        return m_ward.ledger().readFrom(m_ward.ledger().head().size - 1, 1)->front();
    }
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
    /// Solveig is in, with the record open in which all is shown and answered.
    void withAllShown() {
        m_ward.demonstrateAsAsked();
        m_ward.answerAllPrompts();
        begin();
        asSolveig();
        openRecord();
    }
    /// To the page that asks for the passphrase.
    void toASignOff() {
        press("place.4");
        type("typedName", "Ana Petrova");
        press("sign.primary");
    }
    void confirmAs(const std::string& passphrase) {
        type("signing.passphrase", passphrase);
        press("signing.primary");
    }
    void handOver(const char* name, const std::string& own, const char* initials) {
        press("place.2");
        m_ward.clock().advanceMs(1000);
        visitPage().act(ui::Act::HandOver);
        type("colleague.name", name);
        type("colleague.passphrase", own);
        QTest::keyClick(gui::shownPart<QLineEdit>(shown(), QStringLiteral("colleague.passphrase")),
                        Qt::Key_Return);
        EXPECT_TRUE(
            QTest::qWaitFor([&] { return said("teacher") == QLatin1String(initials); }, 60'000));
        wait();
    }
    void handOverToTam() { handOver("Tam Oduya", m_tams, "TO"); }
    ui::VisitPage& visitPage() const { return *shown().findChild<ui::VisitPage*>(); }

    const std::string m_solveigs = "nine slow herons wade", m_tams = "a cellar full of quinces";
    QTemporaryDir m_folder;
    Ward m_ward{"clean-hands", Ward::Record::Sealed};
    ui::GateDoor m_door{m_ward.gate()};
    ui::Settings m_settings{m_folder.filePath(QStringLiteral("settings.ini"))};
    FakeAuditor m_auditor;
    ui::Entrance m_entrance{m_door, m_auditor, m_ward.clock(), m_settings, opener()};
};

TEST_F(Entering, OnlyWhoSignsInSeesTheWindows) {
    begin();
    EXPECT_TRUE(m_entrance.signIn().isVisible());
    signInAs("Solveig Aranda", m_tams);
    EXPECT_EQ(m_entrance.window(), nullptr);
    asSolveig();
    ASSERT_NE(m_entrance.window(), nullptr);
    EXPECT_TRUE(m_entrance.window()->isVisible());
    EXPECT_FALSE(m_entrance.signIn().isVisible());
    EXPECT_EQ(said("teacher"), QStringLiteral("SA"));
}

TEST_F(Entering, SigningOutLeavesNothingOfTheWindows) {
    begin();
    asSolveig();
    press("teacher");
    press("account.signOut");
    EXPECT_EQ(m_entrance.window(), nullptr);
    EXPECT_EQ(m_entrance.desk(), nullptr);
    EXPECT_FALSE(m_ward.gate().isSignedIn());
    EXPECT_TRUE(m_entrance.signIn().isVisible());
    signInAs("Tam Oduya", m_tams);
    EXPECT_EQ(said("teacher"), QStringLiteral("TO"));
}

TEST_F(Entering, AnotherAtTheLockGetsWindowsOfTheirOwn) {
    begin();
    asSolveig();
    const ui::MainWindow* before = m_entrance.window();
    openRecord();
    m_entrance.lock()->lockNow();
    auto& cover = m_entrance.lock()->cover();
    EXPECT_FALSE(before->isVisible());
    gui::shownPart<QAbstractButton>(cover, QStringLiteral("lock.other"))->click();
    gui::typeInto(cover, "signIn.name", QStringLiteral("Tam Oduya"));
    gui::typeInto(cover, "signIn.passphrase", QString::fromStdString(m_tams));
    gui::shownPart<QAbstractButton>(cover, QStringLiteral("signIn.primary"))->click();
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return m_entrance.window() && m_entrance.window()->isVisible(); }, 60'000));
    wait();
    EXPECT_EQ(said("teacher"), QStringLiteral("TO"));
    EXPECT_FALSE(m_entrance.desk()->view().record) << "nobody's record is left open";
}

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

TEST_F(Entering, FromThePassphraseToTheAccountAndBack) {
    withAllShown();
    toASignOff();
    press("teacher");
    press("account.back");
    confirmAs(m_solveigs);
    EXPECT_EQ(last().body.type, record::SignOff::type);
}

TEST_F(Entering, ComingBackFromALockIsNoReasonToSign) {
    m_ward.demonstrateAsAsked();
    begin();
    asSolveig();
    ASSERT_TRUE(m_door.unlock(seal::Secret::copyOf(m_solveigs)).now().ok());
    EXPECT_FALSE(m_ward.gate().takeConfirmation());
    ASSERT_TRUE(m_door.confirm(seal::Secret::copyOf(m_solveigs)).now().ok());
    EXPECT_TRUE(m_ward.gate().takeConfirmation());
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

TEST_F(Entering, NothingThatOnePersonTypedIsLeftForTheColleague) {
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

TEST_F(Entering, APassphraseThatWasTypedIsGoneWhenThePageIsOutOfSight) {
    begin();
    asSolveig();
    press("teacher");
    auto* field = gui::shownPart<QLineEdit>(shown(), QStringLiteral("account.old"));
    type("account.old", m_solveigs);
    press("place.1");
    EXPECT_EQ(field->text(), QString());
    press("teacher");
    type("account.old", m_solveigs);
    m_entrance.lock()->lockNow();
    EXPECT_EQ(field->text(), QString()) << "somebody else may come back to it";
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

TEST_F(Entering, OnlyWhoMayVerifiesAndSeesWhoLooked) {
    begin();
    signInAs("Tam Oduya", m_tams);
    press("teacher");
    EXPECT_EQ(gui::shownPart<QAbstractButton>(shown(), QStringLiteral("account.audit")), nullptr);
    press("account.signOut");
    asSolveig();
    press("teacher");
    press("account.audit");
    EXPECT_TRUE(said("audit.verdict").isEmpty());
    type("audit.paper", "some letters");
    press("audit.primary");
    EXPECT_EQ(m_auditor.papers, std::vector<std::string>{"some letters"});
    EXPECT_TRUE(QTest::qWaitFor([this] { return !said("audit.verdict").isEmpty(); }));
}

TEST_F(Entering, TwoPeopleDestroyARecord) {
    const gate::Newcomer vera{"Vera Lund", "VL", record::Role::Auditor};
    const std::string veras = "copper kettle on a raft";
    ASSERT_TRUE(m_ward.gate().admit(vera, seal::Secret::copyOf(veras)).now().ok());
    begin();
    asSolveig();
    press(QStringLiteral("card.") + QString::fromStdString(m_ward.learner().text()));
    press("person.erase");
    EXPECT_TRUE(said("erase.whose").contains(QStringLiteral("born")));
    type("erase.why", "the time to keep it is over");
    type("erase.own", m_solveigs);
    type("erase.second", "Tam Oduya");
    type("erase.others", m_tams);
    press("erase.primary");
    EXPECT_FALSE(m_entrance.desk()->view().cards.empty()) << "a teacher is not an auditor";
    type("erase.own", m_solveigs);
    type("erase.second", "Vera Lund");
    type("erase.others", veras);
    press("erase.primary");
    EXPECT_TRUE(m_entrance.desk()->view().cards.empty());
    EXPECT_FALSE(m_entrance.desk()->view().record);
    EXPECT_EQ(last().body.type, record::ErasePatient::type);
    EXPECT_EQ(last().body.sigs.size(), 2U);
}

TEST(EnteringNothing, WhatCannotBeOpenedIsSaidAtTheDoor) {
    ui::Look::instance();
    QTemporaryDir folder;
    Ward ward("clean-hands", Ward::Record::Sealed);
    ward.gate().signOut();
    ui::GateDoor door(ward.gate());
    ui::Settings settings(folder.filePath(QStringLiteral("settings.ini")));
    FakeAuditor auditor;
    ui::Entrance entrance(door, auditor, ward.clock(), settings,
                          [] { return base::Error{base::Code::StoreDamaged}; });
    entrance.begin();
    gui::typeInto(entrance.signIn(), "signIn.name", QStringLiteral("Solveig Aranda"));
    gui::typeInto(entrance.signIn(), "signIn.passphrase", QStringLiteral("nine slow herons wade"));
    gui::shownPart<QAbstractButton>(entrance.signIn(), QStringLiteral("signIn.primary"))->click();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            return !ward.gate().isSignedIn() &&
                   gui::shownPart<QWidget>(entrance.signIn(), QStringLiteral("errorStrip"));
        },
        60'000));
    EXPECT_EQ(entrance.window(), nullptr);
    EXPECT_TRUE(entrance.signIn().isVisible());
}
