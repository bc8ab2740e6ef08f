// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The pages for who is signed in and for who may sign in, over a door without keys.
#include "signin/accountpage.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QtTest/QTest>
#include <functional>

#include "gui/signin/fakedoor.h"
#include "gui/signin/shownparts.h"
#include "look.h"
#include "signin/doorwork.h"
#include "signin/peoplepage.h"
#include "signin/waitstrip.h"

class SignedInPages : public testing::Test {
  protected:
    SignedInPages() { signedInAs(0); }
    void signedInAs(std::size_t index) { m_door.signedIn = m_door.known.at(index).member.staff; }
    void showIt(QWidget* page) {
        ui::Look::instance();
        m_page.reset(page);
        page->resize(1000, 760);
        page->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(page));
    }
    ui::AccountPage* showAccount() {
        auto* page = new ui::AccountPage(m_work);
        page->begin();
        showIt(page);
        return page;
    }
    void showPeople() {
        auto* page = new ui::PeoplePage(m_work);
        page->begin();
        showIt(page);
    }
    template <class W>
    W* find(const QString& name) const {
        return gui::shownPart<W>(*m_page, name);
    }
    void type(const char* name, const char* words) {
        gui::typeInto(*m_page, name, QString::fromLatin1(words));
    }
    void press(const QString& name) {
        auto* button = find<QAbstractButton>(name);
        ASSERT_TRUE(button) << name.toStdString();
        button->setFocus();
        QTest::keyClick(button, Qt::Key_Space);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_work.isBusy(); }, 20'000));
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    void press(const char* name) { press(QString::fromLatin1(name)); }
    QString idOf(std::size_t index) const {
        return QString::fromStdString(m_door.known.at(index).member.staff.text());
    }
    /// All that is seen.
    QString seen() const {
        QStringList words;
        for (const auto* label : m_page->findChildren<QLabel*>())
            if (label->isVisible()) words << label->text();
        return words.join(u'\n');
    }
    bool says(const char* words) const { return seen().contains(QLatin1String(words)); }

    ui::FakeDoor m_door;
    ui::DoorWork m_work{m_door};
    std::unique_ptr<QWidget> m_page;
};

TEST_F(SignedInPages, TheOwnPassphraseIsChangedByOldAndNewTwice) {
    showAccount();
    EXPECT_EQ(find<QLabel>(QStringLiteral("account.who"))->text(),
              QLatin1String("Ilse Marchetti (IM), educator"));
    press("account.primary");
    EXPECT_TRUE(find<QLineEdit>(QStringLiteral("account.old"))->hasFocus());
    type("account.old", "four words that fit");
    type("account.new", "Ilse Marchetti!");
    press("account.primary");
    EXPECT_TRUE(says("little more than your name"));
    type("account.new", "a garden under tall water");
    type("account.new.again", "a garden under tall wader");
    press("account.primary");
    EXPECT_TRUE(says("The two are not the same"));
    EXPECT_EQ(m_door.known.front().passphrase, "four words that fit");
    type("account.new.again", "a garden under tall water");
    press("account.primary");
    EXPECT_EQ(m_door.known.front().passphrase, "a garden under tall water");
    EXPECT_TRUE(says("From now on only the new one opens"));
    for (const char* name : {"account.old", "account.new", "account.new.again"})
        EXPECT_TRUE(find<QLineEdit>(QString::fromLatin1(name))->text().isEmpty()) << name;
}

TEST_F(SignedInPages, AWrongOldOneIsSaidThereAndWaits) {
    m_door.waitAfterWrong = 2000;
    showAccount();
    type("account.old", "three words that fit");
    type("account.new", "a garden under tall water");
    type("account.new.again", "a garden under tall water");
    press("account.primary");
    EXPECT_TRUE(says("This is not your passphrase"));
    EXPECT_TRUE(says("2 seconds"));
    EXPECT_TRUE(find<QLineEdit>(QStringLiteral("account.old"))->hasFocus());
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("account.primary"))->isEnabled());
    m_door.wait = 0;
    m_work.tick();
    type("account.old", "four words that fit");
    press("account.primary");
    EXPECT_EQ(m_door.known.front().passphrase, "a garden under tall water")
        << "the new one was kept to be tried again";
}

TEST_F(SignedInPages, AsksToLockToSignOutAndToSeeWhoMaySignIn) {
    ui::AccountPage* page = showAccount();
    QSignalSpy lock(page, &ui::AccountPage::lockWanted), out(page, &ui::AccountPage::signOutWanted),
        people(page, &ui::AccountPage::peopleWanted);
    press("account.lock");
    press("account.signOut");
    press("account.people");
    EXPECT_EQ(lock.count() + out.count() + people.count(), 3);
    signedInAs(1);
    page->begin();
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("account.people"))) << "a teacher";
}

TEST_F(SignedInPages, AnEducatorLetsSomebodyIn) {
    showPeople();
    press("people.primary");
    EXPECT_TRUE(find<QLineEdit>(QStringLiteral("admit.name"))->hasFocus());
    press("admit.primary");
    EXPECT_TRUE(find<QLineEdit>(QStringLiteral("admit.name"))->hasFocus());
    type("admit.name", "Noor Castellan");
    type("admit.initials", "NC");
    press("admit.role.auditor");
    type("admit.passphrase", "too short");
    press("admit.primary");
    EXPECT_EQ(m_door.known.size(), 2U);
    type("admit.passphrase", "seven geese on ice");
    type("admit.passphrase.again", "seven geese on ice");
    press("admit.primary");
    ASSERT_EQ(m_door.known.size(), 3U);
    EXPECT_EQ(m_door.known.back().member.name, QLatin1String("Noor Castellan"));
    EXPECT_EQ(m_door.known.back().member.role, record::Role::Auditor);
    EXPECT_EQ(m_door.known.back().passphrase, "seven geese on ice");
    EXPECT_TRUE(says("Noor Castellan can sign in now"));
    press("people.primary");
    EXPECT_TRUE(find<QLineEdit>(QStringLiteral("admit.name"))->text().isEmpty());
}

// A press made without looking lets nobody go and makes no sheet void.
TEST_F(SignedInPages, TheListBeginsOnWhatDoesNoHarm) {
    showPeople();
    EXPECT_EQ(m_page->focusWidget(), find<QAbstractButton>(QStringLiteral("people.primary")));
    m_door.known[0].member.role = record::Role::Auditor;
    showPeople();
    EXPECT_EQ(m_page->focusWidget(), find<QAbstractButton>(QStringLiteral("people.back")));
}

TEST_F(SignedInPages, ASecondPersonGivesNewKeys) {
    showPeople();
    press(QStringLiteral("people.reset.") + idOf(1));
    EXPECT_TRUE(says("They get new keys"));
    EXPECT_TRUE(says("signed until now still verifies"));
    type("reset.passphrase", "Kwame Brandt Kwame");
    press("reset.primary");
    EXPECT_EQ(m_door.known[1].passphrase, "a lamp beside the sea");
    type("reset.passphrase", "seven geese on ice");
    type("reset.passphrase.again", "seven geese on ice");
    press("reset.primary");
    EXPECT_EQ(m_door.known[1].passphrase, "seven geese on ice");
    EXPECT_TRUE(says("signs in by the new passphrase"));
}

TEST_F(SignedInPages, RetiringSaysFirstThatItCannotBeTakenBack) {
    showPeople();
    press(QStringLiteral("people.retire.") + idOf(1));
    EXPECT_TRUE(says("can't be taken back"));
    EXPECT_FALSE(m_door.known[1].member.isRetired) << "nothing yet";
    press("retire.back");
    press(QStringLiteral("people.retire.") + idOf(1));
    press("retire.primary");
    EXPECT_TRUE(m_door.known[1].member.isRetired);
    EXPECT_TRUE(says("teacher, retired"));
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("people.reset.") + idOf(1)));
}

TEST_F(SignedInPages, NobodyResetsOrRetiresThemselves) {
    showPeople();
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("people.reset.") + idOf(0)));
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("people.retire.") + idOf(0)));
    EXPECT_TRUE(find<QAbstractButton>(QStringLiteral("people.retire.") + idOf(1)));
}

TEST_F(SignedInPages, AnAuditorReadsTheListAndATeacherDoesNot) {
    m_door.known[0].member.role = record::Role::Auditor;
    showPeople();
    EXPECT_TRUE(says("Kwame Brandt"));
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("people.primary")));
    EXPECT_FALSE(find<QAbstractButton>(QStringLiteral("people.retire.") + idOf(1)));
    signedInAs(1);
    showPeople();
    EXPECT_FALSE(says("Ilse Marchetti"));
    EXPECT_TRUE(says("Educators and auditors see who works here"));
}
