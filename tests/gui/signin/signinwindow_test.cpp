// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signinwindow.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QtTest/QTest>

#include <functional>

#include "gui/signin/fakedoor.h"
#include "look.h"
#include "parts/errorstrip.h"
#include "signin/letterslabel.h"
#include "signin/waitstrip.h"

/// The window over a door that holds no keys, driven as a person would.
class SignIn : public testing::Test {
  protected:
    void begin() {
        ui::Look::instance();
        m_window = std::make_unique<ui::SignInWindow>(m_work);
        QObject::connect(m_window.get(), &ui::SignInWindow::opened, [this] { m_isOpened = true; });
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(m_window.get()));
    }
    template <class W>
    W* find(const char* name) const {
        W* found = m_window->findChild<W*>(QString::fromLatin1(name));
        EXPECT_TRUE(found) << name;
        return found;
    }
    void type(const char* name, const char* words) {
        QTest::keyClicks(find<QLineEdit>(name), QString::fromLatin1(words));
    }
    void press(const char* page) {
        QWidget* shown = find<QWidget>(page);
        for (auto* button : shown->findChildren<QPushButton*>())
            if (button->property("part") == QLatin1String("primary")) button->click();
    }
    bool answered(const std::function<bool()>& isThere) { return QTest::qWaitFor(isThere, 20'000); }
    QString refused(const char* page) {
        return find<QWidget>(page)->findChild<ui::ErrorStrip*>()->words();
    }

    ui::FakeDoor m_door;
    ui::DoorWork m_work{m_door};
    std::unique_ptr<ui::SignInWindow> m_window;
    bool m_isOpened = false;
};

TEST_F(SignIn, OpensByNameAndPassphraseFromTheKeyboardAlone) {
    begin();
    type("signIn.name", "Ilse Marchetti");
    QTest::keyClick(find<QLineEdit>("signIn.name"), Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("signIn.passphrase"));
    type("signIn.passphrase", "four words that fit");
    QTest::keyClick(find<QLineEdit>("signIn.passphrase"), Qt::Key_Return);
    EXPECT_TRUE(find<QLineEdit>("signIn.passphrase")->text().isEmpty()) << "taken, not left lying";
    EXPECT_TRUE(answered([this] { return m_isOpened; }));
    EXPECT_EQ(m_door.said, "Ilse Marchetti: four words that fit");
}

TEST_F(SignIn, EnterPressesTheButtonThatHasTheFocus) {
    begin();
    auto* lost = find<QPushButton>("signIn.recovery");
    lost->setFocus();
    QTest::keyClick(lost, Qt::Key_Return);
    EXPECT_TRUE(find<QWidget>("recover")->isVisible());
}

TEST_F(SignIn, SaysNothingOfWhichOfTheTwoWasWrongAndWaits) {
    begin();
    type("signIn.name", "Somebody Else");
    type("signIn.passphrase", "four words that do not");
    m_door.waitAfterWrong = 4000;
    press("signIn");
    ASSERT_TRUE(answered([this] { return !refused("signIn").isEmpty(); }));
    EXPECT_TRUE(refused("signIn").contains(QLatin1String("The name or the passphrase")));
    EXPECT_FALSE(m_isOpened);
    EXPECT_EQ(find<QLineEdit>("signIn.name")->text(), QLatin1String("Somebody Else"));
    const auto* primary = find<QPushButton>("signIn.primary");
    EXPECT_FALSE(primary->isEnabled());
    const auto* wait = find<QWidget>("signIn")->findChild<ui::WaitStrip*>();
    EXPECT_TRUE(wait->isVisible());
    EXPECT_TRUE(wait->words().contains(QLatin1String("4 seconds"))) << wait->words().toStdString();
    EXPECT_EQ(wait->accessibleName(), wait->words()) << "said, not only shown";
    m_door.wait = 2500;
    m_work.tick();
    EXPECT_TRUE(wait->words().contains(QLatin1String("3 seconds"))) << "rounded up";
    m_door.said.clear();
    type("signIn.passphrase", "four words that fit");
    QTest::keyClick(find<QLineEdit>("signIn.passphrase"), Qt::Key_Return);
    EXPECT_EQ(m_door.said, "") << "nothing is tried while it waits";
    m_door.wait = 0;
    EXPECT_TRUE(answered([&] { return primary->isEnabled(); }));
    EXPECT_EQ(wait->accessibleName(), QLatin1String("You can try again now."));
    QTest::keyClick(find<QLineEdit>("signIn.passphrase"), Qt::Key_Return);
    ASSERT_TRUE(answered([this] { return !m_door.said.empty(); }));
    EXPECT_EQ(m_door.said, "Somebody Else: four words that fit") << "never locked for good";
}

TEST_F(SignIn, ListsNobodyAndItsTitleNamesNobody) {
    begin();
    type("signIn.name", "Ilse Marchetti");
    EXPECT_EQ(m_window->windowTitle(), QLatin1String("Ninebark"));
    EXPECT_TRUE(m_window->findChildren<QComboBox*>().isEmpty());
    EXPECT_FALSE(find<QLineEdit>("signIn.name")->completer());
}

TEST_F(SignIn, ShowsAPassphraseOnlyWhileItsBoxIsTicked) {
    begin();
    auto* edit = find<QLineEdit>("signIn.passphrase");
    EXPECT_EQ(edit->echoMode(), QLineEdit::Password);
    find<QCheckBox>("signIn.passphrase.show")->click();
    EXPECT_EQ(edit->echoMode(), QLineEdit::Normal);
    find<QCheckBox>("signIn.passphrase.show")->click();
    EXPECT_EQ(edit->echoMode(), QLineEdit::Password);
}

TEST_F(SignIn, TheFirstPersonGetsASheetAndShowsThatItIsAtHand) {
    m_door.founded = false;
    begin();
    ASSERT_TRUE(find<QWidget>("found")->isVisible());
    type("found.name", "Ilse Marchetti");
    type("found.initials", "IM");
    type("found.passphrase", "short");
    press("found");
    EXPECT_EQ(m_door.said, "") << "a weak passphrase does not get that far";
    auto* first = find<QLineEdit>("found.passphrase");
    first->clear();
    type("found.passphrase", "a garden under tall water");
    type("found.passphrase.again", "a garden under tall watre");
    press("found");
    EXPECT_EQ(m_door.said, "") << "the two differ";
    type("found.passphrase.again", "a garden under tall water");
    press("found");
    ASSERT_TRUE(answered([this] { return find<QWidget>("recoverySheet")->isVisible(); }));
    EXPECT_EQ(m_door.said, "Ilse Marchetti, IM: a garden under tall water");
    EXPECT_EQ(m_window->focusWidget(), find<QWidget>("recoverySheet.line"));
    const auto* lines = find<ui::LettersLabel>("recoverySheet.lines");
    EXPECT_NE(lines->letters().view().find("EEEEE-FFFFF"), std::string_view::npos);
    EXPECT_EQ(lines->text(), QString()) << "no copy lies in ordinary memory";
    EXPECT_EQ(find<QLabel>("recoverySheet.which")->text(),
              QLatin1String("Opens the record ABCD-EFGH. Made Monday, 24 November 2025, 17:00."));
    EXPECT_FALSE(m_isOpened);
    type("recoverySheet.line", "AAAAA-BBBBB");
    press("recoverySheet");
    EXPECT_FALSE(m_isOpened) << "that is the first line";
    find<QLineEdit>("recoverySheet.line")->clear();
    type("recoverySheet.line", "eeeee fffff");
    press("recoverySheet");
    EXPECT_TRUE(m_isOpened);
    EXPECT_EQ(lines->letters().size(), 0U) << "it is shown once";
}

TEST_F(SignIn, ByTheRecoverySheetSaysWhichLineIsWrong) {
    begin();
    find<QPushButton>("signIn.recovery")->click();
    EXPECT_TRUE(find<QLabel>("recover.record")->text().contains(QLatin1String("ABCD-EFGH")));
    press("recover");
    EXPECT_EQ(m_door.said, "");
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("recover.letters.1"));
    type("recover.letters.1", "aaaaabbbbb");
    type("recover.letters.2", "CCCCC-DDDD");
    type("recover.letters.3", "EEEEE-FFFFF");
    type("recover.letters.4", "GGGGG-HHHHH");
    type("recover.name", "Kwame Brandt");
    type("recover.initials", "KB");
    type("recover.passphrase", "a garden under tall water");
    type("recover.passphrase.again", "a garden under tall water");
    press("recover");
    EXPECT_EQ(m_door.said, "") << "a letter is missing";
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("recover.letters.2"));
    type("recover.letters.2", "D");
    press("recover");
    ASSERT_TRUE(answered([this] { return !refused("recover").isEmpty(); }));
    EXPECT_EQ(m_door.lettersSaid, "aaaaabbbbb\nCCCCC-DDDDD\nEEEEE-FFFFF\nGGGGG-HHHHH");
    EXPECT_TRUE(refused("recover").contains(u'2')) << refused("recover").toStdString();
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("recover.letters.2"));
    EXPECT_EQ(find<QLineEdit>("recover.letters.1")->text(), QLatin1String("aaaaabbbbb"))
        << "what was typed stays to be mended";
    find<QPushButton>("recover.back")->click();
    EXPECT_TRUE(find<QWidget>("signIn")->isVisible());
    EXPECT_TRUE(find<QLineEdit>("recover.letters.1")->text().isEmpty()) << "and not for ever";
}
