// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/main/shell_fixture.h"

#include <QAbstractButton>
#include <QDir>
#include <QLineEdit>
#include <QtTest/QTest>

#include "base/result.h"
#include "demo/demoward.h"
#include "dialogs/ask.h"
#include "look.h"
#include "support/paths.h"

namespace {

ledger::MemoryLedger filledLedger(procedure::Shelf& shelf, const base::Instant& now) {
    ledger::MemoryLedger made;
    const auto filled = app::fillDemoWard(made, shelf, now);
    EXPECT_TRUE(filled.ok()) << base::english(filled.error());
    return made;
}

}  // namespace

void Shell::begin(Begin how) {
    ui::ask::stayOffScreen();
    auto shelf = app::compiledShelf();
    ASSERT_TRUE(shelf.ok()) << base::english(shelf.error());
    m_shelf = std::move(*shelf);
    m_ledger = std::make_unique<ledger::MemoryLedger>();
    if (how == Begin::DemoWard) {
        // Filled once, each test begins with a copy.
        static const ledger::MemoryLedger demo = filledLedger(*m_shelf, m_clock.now());
        m_ledger = std::make_unique<ledger::MemoryLedger>(demo);
    }
    auto desk = desk::Desk::open(*m_ledger, *m_shelf, m_clock, desk::Ward::Demonstration);
    ASSERT_TRUE(desk.ok()) << base::english(desk.error());
    m_desk = std::move(*desk);
    m_settings = std::make_unique<ui::Settings>(m_folder.filePath(QStringLiteral("settings.ini")));
    if (how == Begin::DemoWard) m_desk->workAs(m_desk->view().house.staff.front().said.staff);
    openWindow();
}

void Shell::openWindow() {
    m_window = std::make_unique<ui::MainWindow>(*m_desk, *m_settings);
    m_window->show();
    m_window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Shell::goToStartOfAVisit() {
    type("search", QStringLiteral("lindq"));
    const auto card = "card." + m_desk->view().cards.front().learner.text();
    press(card.c_str());
    press("person.next");
}

void Shell::beginVisit() {
    answerOnWhom();
    for (const char* name :
         {"identifiers.name", "identifiers.born", "checked.yes", "start.primary"})
        press(name);
}

void Shell::answerOnWhom() {
    for (const char* name : {"on.patient", "homeKit.yes"}) press(name);
}

QWidget* Shell::find(const char* name) const {
    QCoreApplication::sendPostedEvents();
    QWidget* found = nullptr;
    for (QWidget* one : m_window->findChildren<QWidget*>(QString::fromLatin1(name)))
        if (one->isVisible()) found = one;
    return found;
}

void Shell::press(const char* name) {
    auto* button = qobject_cast<QAbstractButton*>(find(name));
    ASSERT_NE(button, nullptr) << name << " is not there to press";
    ASSERT_TRUE(button->isEnabled()) << name << " can't be pressed";
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Shell::type(const char* name, const QString& words) {
    auto* edit = qobject_cast<QLineEdit*>(find(name));
    ASSERT_NE(edit, nullptr) << name << " is not there to type into";
    edit->setFocus();
    edit->selectAll();
    // keyClicks can't send other letters than those of ASCII.
    QInputMethodEvent event;
    event.setCommitString(words);
    QCoreApplication::sendEvent(edit, &event);
}

QImage Shell::picture(const char* name) {
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
    const QImage image = m_window->grab().toImage();
    const QString folder =
        QString::fromStdString(support::buildDir()) + QStringLiteral("/pictures");
    QDir().mkpath(folder);
    image.save(folder + u'/' + QString::fromLatin1(name) + QStringLiteral(".png"));
    return image;
}

std::vector<ledger::Entry> Shell::entries() const {
    auto read = m_ledger->readFrom(0, 100000);
    return read.ok() ? *read : std::vector<ledger::Entry>();
}

QStringList Shell::types() const {
    QStringList types;
    for (const ledger::Entry& entry : entries()) types << QString::fromStdString(entry.body.type);
    return types;
}
