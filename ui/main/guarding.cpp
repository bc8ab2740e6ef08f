// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/guarding.h"

#include <QPushButton>
#include <QShortcut>

#include "learners/learnerspage.h"
#include "main/guardedpages.h"
#include "sign/signpage.h"
#include "visit/question.h"
#include "visit/visitpage.h"

namespace ui {

void MainWindow::setVeiled(std::function<Question*(QWidget*)> unlock) {
    m_unlock = std::move(unlock);
    if (m_unlock) showVisit();
    if (m_visit) m_visit->setVeiled(m_unlock);
    refreshTeacher();
}

void MainWindow::workBehind(DoorWork& work, Auditor& auditor) {
    m_guarded = new GuardedPages(work, auditor, m_desk, *m_stack, this);
    connect(m_guarded, &GuardedPages::wanted, this, &MainWindow::showPage);
    connect(m_guarded, &GuardedPages::left, this, [this] { showPage(m_beforeStaff); });
    connect(m_guarded, &GuardedPages::lockWanted, this, &MainWindow::lockWanted);
    connect(m_guarded, &GuardedPages::signOutWanted, this, &MainWindow::signOutWanted);
    connect(m_guarded, &GuardedPages::houseChanged, this, &MainWindow::readHouse);
    connect(m_guarded, &GuardedPages::erasingLeft, this, &MainWindow::showPerson);
    connect(m_guarded, &GuardedPages::erased, this, [this] {
        const auto all = m_desk.readErased();
        go(Place::Learners);
        m_learners->errors()->took(all);  // where it did not reach, on the page that is shown now
    });
    connect(m_guarded, &GuardedPages::signingLeft, this, [this] { showPage(m_sign); });
    connect(m_guarded, &GuardedPages::confirmed, this, [this] {
        showPage(m_sign);
        m_sign->signNow();
    });
    if (m_sign) guardSigning(*m_sign);
}

/// Each signature waits for the passphrase.
void MainWindow::guardSigning(SignPage& page) {
    page.askFirst();
    connect(&page, &SignPage::confirmationWanted, m_guarded, &GuardedPages::showSigning);
}

void MainWindow::setColleague(std::function<Question*(QWidget*)> question) {
    m_colleague = std::move(question);
    if (m_visit) m_visit->setColleague(m_colleague);
}

void MainWindow::readHouse() { m_learners->errors()->took(m_desk.readHouse()); }

/// Whether what is wanted can't be shown now; then it is asked for the passphrase first.
bool MainWindow::stayVeiled() {
    if (!m_unlock) return false;
    m_tabs[Place::Visit]->setChecked(true);  // pressed, another one shows itself as chosen
    m_visit->askToUnlock();
    return true;
}

void guard(MainWindow& window, DoorWork& work, Auditor& auditor, Lock& lock, desk::Desk& desk,
           const Settings& settings) {
    const auto follow = [&lock, &desk] { lock.setVisitRunning(desk.view().openVisit.has_value()); };
    QObject::connect(&desk, &desk::Desk::changed, &lock, follow);
    follow();
    window.workBehind(work, auditor);
    window.setColleague([&lock](QWidget* parent) { return lock.askColleague(parent); });
    QObject::connect(&lock, &Lock::relieved, &window, &MainWindow::relieve);
    QObject::connect(&window, &MainWindow::lockWanted, &lock, &Lock::lockNow);
    lock.setAfterMinutes(settings.value(Setting::LockAfterMinutes).toInt());
    QObject::connect(&window, &MainWindow::lockAfterChanged, &lock, &Lock::setAfterMinutes);
    QObject::connect(&lock, &Lock::veiled, &window, [&window, &lock](bool isVeiled) {
        if (!isVeiled) return window.setVeiled({});
        window.setVeiled([&lock](QWidget* parent) { return lock.askToUnlock(parent); });
    });
    QObject::connect(&lock, &Lock::opened, &window, [&window](bool isAnother) {
        if (isAnother) window.go(Place::Learners);
    });
    QObject::connect(&lock, &Lock::given, &window, &QWidget::close);
    auto* key = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_L), &window);
    QObject::connect(key, &QShortcut::activated, &lock, &Lock::lockNow);
}

}  // namespace ui
