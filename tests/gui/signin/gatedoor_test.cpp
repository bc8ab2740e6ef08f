// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The windows over the real keys of a ledger in memory, at the least cost the library allows.
#include "signin/gatedoor.h"

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QtTest/QTest>
#include <functional>

#include "core/gate/gatedward.h"
#include "gui/signin/shownparts.h"
#include "look.h"
#include "parts/errorstrip.h"
#include "signin/accountpage.h"
#include "signin/doorwork.h"
#include "signin/letterslabel.h"
#include "signin/peoplepage.h"
#include "signin/signinwindow.h"

class GateWindows : public gate::GatedWard {
  protected:
    void SetUp() override {
        GatedWard::SetUp();
        ui::Look::instance();
    }
    void showIt(QWidget& page) {
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
        m_page = &page;
    }
    template <class W>
    W* find(const QString& name) const {
        return gui::shownPart<W>(*m_page, name);
    }
    void type(const char* name, const std::string& words) {
        gui::typeInto(*m_page, name, QString::fromStdString(words));
    }
    void press(const QString& name) {
        auto* button = find<QAbstractButton>(name);
        ASSERT_TRUE(button) << name.toStdString();
        QTest::mouseClick(button, Qt::LeftButton);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_work.isBusy(); }, 60'000));
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    void press(const char* name) { press(QString::fromLatin1(name)); }
    QString seen() const {
        QStringList words;
        for (const auto* label : m_page->findChildren<QLabel*>())
            if (label->isVisible()) words << label->text();
        return words.join(u'\n');
    }
    QString shownLetters() const {
        const auto* shown = find<ui::LettersLabel>(QStringLiteral("recoverySheet.lines"));
        EXPECT_TRUE(shown);
        return QString::fromStdString(std::string(shown->letters().view()));
    }
    void signInAs(const std::string& name, const std::string& passphrase) {
        type("signIn.name", name);
        type("signIn.passphrase", passphrase);
        press("signIn.primary");
    }

    ui::GateDoor m_door{*m_gate};
    ui::DoorWork m_work{m_door};
    QWidget* m_page = nullptr;
};

TEST_F(GateWindows, TheFirstPersonBeginsARecordAndKeepsItsSheet) {
    gate::RefusingLedger empty;
    const auto opened = gate::Gate::open(empty, m_clock, cheap());
    ASSERT_TRUE(opened.ok());
    ui::GateDoor door(**opened);
    ui::DoorWork work(door);
    ui::SignInWindow window(work);
    QSignalSpy in(&window, &ui::SignInWindow::opened);
    showIt(window);
    type("found.name", "Iris Mora");
    type("found.initials", "IM");
    type("found.passphrase", m_irises);
    type("found.passphrase.again", m_irises);
    press("found.primary");
    EXPECT_TRUE(QTest::qWaitFor([&work] { return !work.isBusy(); }, 60'000));
    const QString shown = shownLetters();
    EXPECT_EQ(door.sheetMark().record, render::recordName(empty.id()));
    EXPECT_EQ(door.sheetMark().madeMs, m_clock.now().wallMs);
    EXPECT_EQ(in.count(), 0) << "not before the sheet is in somebody's hands";
    type("recoverySheet.line", shown.split(u'\n').at(2).toStdString());
    press("recoverySheet.primary");
    EXPECT_EQ(in.count(), 1);
    ASSERT_TRUE(door.who());
    EXPECT_EQ(door.who()->role, record::Role::Educator);
    EXPECT_GT(empty.head().size, 0U);
    const gate::Newcomer noor{"Noor Castellan", "NC"};
    EXPECT_TRUE((*opened)
                    ->recover(gate::phrase(shown.toStdString()), noor, gate::phrase(m_fresh))
                    .now()
                    .ok());
}

TEST_F(GateWindows, SigningInOpensAndAWrongPassphraseDoesNot) {
    m_gate->signOut();
    ui::SignInWindow window(m_work);
    QSignalSpy opened(&window, &ui::SignInWindow::opened);
    showIt(window);
    signInAs("Iris Mora", m_tams);
    EXPECT_EQ(opened.count(), 0);
    EXPECT_TRUE(seen().contains(QLatin1String("The name or the passphrase is not right")));
    signInAs("Iris Mora", m_irises);
    EXPECT_EQ(opened.count(), 1);
    ASSERT_TRUE(m_door.who());
    EXPECT_EQ(m_door.who()->initials, QLatin1String("IM"));
}

// The first two are slips; the third has to wait a second, and after that is looked at.
TEST_F(GateWindows, WrongOnesWaitAndNeverForEver) {
    m_gate->signOut();
    ui::SignInWindow window(m_work);
    QSignalSpy opened(&window, &ui::SignInWindow::opened);
    showIt(window);
    while (m_gate->waitMs() == 0) signInAs("Iris Mora", m_tams);
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("signIn.primary"))->isEnabled());
    EXPECT_TRUE(seen().contains(QLatin1String("Nobody is locked out for good")));
    m_clock.advanceMs(60'000);
    m_work.tick();
    EXPECT_TRUE(seen().contains(QLatin1String("You can try again now")));
    signInAs("Iris Mora", m_irises);
    EXPECT_EQ(opened.count(), 1);
}

TEST_F(GateWindows, TheSheetOpensWhenEveryPassphraseIsLost) {
    m_gate->signOut();
    ui::SignInWindow window(m_work);
    QSignalSpy opened(&window, &ui::SignInWindow::opened);
    showIt(window);
    press("signIn.recovery");
    const QStringList lines = QString::fromStdString(m_sheet).split(u'\n');
    ASSERT_EQ(lines.size(), 4);
    for (int i = 0; i < 4; ++i)
        type(("recover.letters." + std::to_string(i + 1)).c_str(),
             lines[i].toLower().toStdString());
    QString slipped = lines[2];
    slipped[1] = slipped[1] == u'7' ? u'8' : u'7';
    type("recover.letters.3", slipped.toStdString());
    type("recover.name", "Noor Castellan");
    type("recover.initials", "NC");
    type("recover.passphrase", m_fresh);
    type("recover.passphrase.again", m_fresh);
    press("recover.primary");
    EXPECT_EQ(opened.count(), 0);
    EXPECT_TRUE(find<QLineEdit>(QStringLiteral("recover.letters.3"))->hasFocus());
    type("recover.letters.3", lines[2].toStdString());
    type("recover.passphrase", m_fresh);
    type("recover.passphrase.again", m_fresh);
    press("recover.primary");
    EXPECT_EQ(opened.count(), 1);
    EXPECT_EQ(m_door.who()->role, record::Role::Educator);
}

TEST_F(GateWindows, TheOwnPassphraseIsAnotherAfterwards) {
    ASSERT_TRUE(asTam().ok());
    ui::AccountPage page(m_work);
    page.begin();
    showIt(page);
    type("account.old", m_tams);
    type("account.new", m_fresh);
    type("account.new.again", m_fresh);
    press("account.primary");
    EXPECT_TRUE(seen().contains(QLatin1String("From now on only the new one opens")));
    EXPECT_FALSE(asTam().ok());
    EXPECT_TRUE(signIn("Tam Oduya", m_fresh).ok());
}

TEST_F(GateWindows, PeopleAreLetInGivenNewKeysAndRetired) {
    ASSERT_TRUE(asIris().ok());
    ui::PeoplePage page(m_work);
    page.begin();
    showIt(page);
    press("people.primary");
    type("admit.name", "Tam Oduya");
    type("admit.initials", "TO");
    type("admit.passphrase", m_fresh);
    type("admit.passphrase.again", m_fresh);
    press("admit.primary");
    EXPECT_TRUE(seen().contains(QLatin1String("Somebody signs in by this name already")));
    type("admit.name", "Noor Castellan");
    type("admit.passphrase", m_fresh);
    type("admit.passphrase.again", m_fresh);
    press("admit.primary");
    EXPECT_TRUE(seen().contains(QLatin1String("Noor Castellan can sign in now")));
    const QString tam = QString::fromStdString(idOf("Tam Oduya").text());
    const QString noor = QString::fromStdString(idOf("Noor Castellan").text());
    press(QStringLiteral("people.reset.") + tam);
    type("reset.passphrase", "seven geese on thin ice");
    type("reset.passphrase.again", "seven geese on thin ice");
    press("reset.primary");
    press(QStringLiteral("people.retire.") + noor);
    press("retire.primary");
    EXPECT_TRUE(seen().contains(QLatin1String("teacher, retired")));
    EXPECT_FALSE(asTam().ok());
    EXPECT_TRUE(signIn("Tam Oduya", "seven geese on thin ice").ok());
    EXPECT_TRUE(m_door.people().empty()) << "not for a teacher";
    EXPECT_FALSE(signIn("Noor Castellan", m_fresh).ok());
}

TEST_F(GateWindows, ANewSheetTakesThePlaceOfTheOld) {
    ASSERT_TRUE(asIris().ok());
    ui::PeoplePage page(m_work);
    page.begin();
    showIt(page);
    press("people.sheet");
    const QString shown = shownLetters();
    EXPECT_NE(shown.toStdString(), m_sheet);
    type("recoverySheet.line", shown.split(u'\n').at(2).toStdString());
    press("recoverySheet.primary");
    EXPECT_TRUE(seen().contains(QLatin1String("Destroy the old one")));
    m_gate->signOut();
    const gate::Newcomer noor{"Noor Castellan", "NC"};
    EXPECT_FALSE(m_gate->recover(gate::phrase(m_sheet), noor, gate::phrase(m_fresh)).now().ok());
    EXPECT_TRUE(
        m_gate->recover(gate::phrase(shown.toStdString()), noor, gate::phrase(m_fresh)).now().ok());
}
