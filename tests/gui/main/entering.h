// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QLabel>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "audit/auditor.h"
#include "gui/signin/shownparts.h"
#include "look.h"
#include "main/entrance.h"
#include "main/mainwindow.h"
#include "settings/settings.h"
#include "signin/gatedoor.h"
#include "signin/lock.h"
#include "signin/signinwindow.h"
#include "support/ward.h"
#include "visit/visitpage.h"

/// Says that it looked, and at which papers.
class FakeAuditor : public ui::Auditor {
  public:
    mutable std::vector<std::string> papers;
    base::Result<proof::KnownHead> headOfPaper(const std::string& typed) const override {
        papers.push_back(typed);
        return proof::KnownHead{.size = 1};
    }
    base::Result<proof::KnownHead> headOfBackup(const std::string&) const override {
        return base::Error{base::Code::BackupNotOurs};
    }
    base::Result<Run> begin(const proof::KnownHeads&) override {
        return Run([](const GoOn&) -> base::Result<proof::Report> {
            return proof::Report{.head = {.size = 7, .root = "ab"}, .signatures = 1};
        });
    }
};

/// The sign-in window over a ward's real keys at the least cost.
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
    support::Ward m_ward{"clean-hands", support::Ward::Record::Sealed};
    ui::GateDoor m_door{m_ward.gate()};
    ui::Settings m_settings{m_folder.filePath(QStringLiteral("settings.ini"))};
    FakeAuditor m_auditor;
    ui::Entrance m_entrance{m_door, m_auditor, m_ward.clock(), m_settings, opener()};
};
