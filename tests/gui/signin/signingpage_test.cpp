// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signingpage.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QtTest/QTest>

#include "gui/main/settled.h"
#include "gui/signin/fakedoor.h"
#include "look.h"
#include "signin/doorwork.h"
#include "support/paths.h"

class Signing : public testing::Test {
  protected:
    Signing() {
        ui::Look::instance();
        m_door.signedIn = m_door.known.front().member.staff;
        m_page.begin(toSign());
        m_page.resize(1000, 760);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
    }
    static ui::ToSign toSign() {
        return {{QStringLiteral("Cleans the hands"), QStringLiteral("Changes the dressing")},
                QStringLiteral("I saw this myself."),
                {.wallMs = 1'772'445'600'000, .offsetMinutes = 60}};
    }
    QString seen() const {
        QCoreApplication::processEvents();  // what was just laid out is shown then
        QStringList words;
        for (const auto* label : m_page.findChildren<QLabel*>())
            if (label->isVisible()) words << label->text();
        return words.join(u'\n');
    }
    void enter(const char* words) {
        QTest::keyClicks(m_edit, QString::fromLatin1(words));
        QTest::keyClick(m_edit, Qt::Key_Return);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_work.isBusy(); }, 20'000));
    }

    ui::FakeDoor m_door;
    ui::DoorWork m_work{m_door};
    ui::SigningPage m_page{m_work};
    QLineEdit* m_edit = m_page.findChild<QLineEdit*>(QStringLiteral("signing.passphrase"));
    QSignalSpy m_confirmed{&m_page, &ui::SigningPage::confirmed};
};

// 21 CFR 11.50 (a): a signature shows the signer's printed name, date and time, and the meaning.
// The moment is 2 March 2026, 11:00 one hour east of UTC (`date -d @1772445600`).
TEST_F(Signing, ShowsWhatByWhomWhenAndWhatItMeans) {
    const QString seen = this->seen();
    for (const char* words :
         {"Cleans the hands", "Changes the dressing", "I saw this myself.",
          "Ilse Marchetti (IM), educator", "Monday, 2 March 2026", "11:00", "UTC+01:00"})
        EXPECT_TRUE(seen.contains(QLatin1String(words))) << words << " in " << seen.toStdString();
}

TEST_F(Signing, OnlyTheOwnPassphraseConfirmsAndItIsAskedOnce) {
    enter("");
    EXPECT_EQ(m_door.said, "") << "nothing was typed";
    enter("a lamp beside the sea");  // a colleague's
    EXPECT_EQ(m_confirmed.count(), 0);
    EXPECT_TRUE(seen().contains(QLatin1String("This is not your passphrase")));
    EXPECT_TRUE(m_edit->hasFocus());
    enter("four words that fit");
    EXPECT_EQ(m_confirmed.count(), 1) << "two lines, one passphrase";
    EXPECT_TRUE(m_edit->text().isEmpty());
}

// Where the line to type on ends the window, what is wrong with what was typed would be below it.
TEST_F(Signing, WhatIsSaidOfAWrongPassphraseIsInSight) {
    gui::settle(m_page);
    const QWidget* foot = m_page.primary()->parentWidget();
    const int below = m_edit->mapTo(&m_page, QPoint(0, m_edit->height())).y() + 8;
    m_page.resize(1000, below + foot->height());
    gui::settle(m_page);
    enter("a lamp beside the sea");
    gui::settle(m_page);
    m_page.grab().toImage().save(QString::fromStdString(support::forLooking("signing-wrong.png")));
    const QLabel* said = nullptr;
    for (const auto* label : m_page.findChildren<QLabel*>())
        if (label->text().contains(QLatin1String("This is not your passphrase"))) said = label;
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->visibleRegion().boundingRect().size(), said->size());
    EXPECT_EQ(m_edit->visibleRegion().boundingRect().size(), m_edit->size());
}

TEST_F(Signing, BackSignsNothingAndForgetsWhatWasTyped) {
    QSignalSpy left(&m_page, &ui::SigningPage::left);
    QTest::keyClicks(m_edit, QStringLiteral("four words that fit"));
    m_page.findChild<QPushButton*>(QStringLiteral("signing.back"))->click();
    EXPECT_EQ(left.count(), 1);
    EXPECT_EQ(m_confirmed.count(), 0);
    EXPECT_TRUE(m_edit->text().isEmpty());
}

TEST_F(Signing, BeginningAgainShowsNothingOfTheOneBefore) {
    m_page.begin({{QStringLiteral("Only this")}, QStringLiteral("As a witness."), {}});
    EXPECT_FALSE(seen().contains(QLatin1String("Cleans the hands")));
    EXPECT_TRUE(seen().contains(QLatin1String("Only this")));
    m_page.begin({});
    EXPECT_FALSE(m_page.primary()->isEnabled()) << "there is nothing to sign";
    enter("four words that fit");
    EXPECT_EQ(m_confirmed.count(), 0);
}
