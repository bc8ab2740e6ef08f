// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/guarding.h"

#include <QShortcut>

#include "visit/question.h"
#include "visit/visitpage.h"

namespace ui {

void MainWindow::setVeiled(std::function<Question*(QWidget*)> unlock) {
    m_unlock = std::move(unlock);
    if (m_unlock) showVisit();
    if (m_visit) m_visit->setVeiled(m_unlock);
    refreshTeacher();
}

/// Whether what is wanted can't be shown now; then it is asked for the passphrase first.
bool MainWindow::stayVeiled() {
    if (m_unlock) m_visit->askToUnlock();
    return static_cast<bool>(m_unlock);
}

void guard(MainWindow& window, DoorWork& work, Lock& lock, desk::Desk& desk,
           const Settings& settings) {
    const auto follow = [&lock, &desk] { lock.setVisitRunning(desk.view().openVisit.has_value()); };
    QObject::connect(&desk, &desk::Desk::changed, &lock, follow);
    follow();
    window.workBehind(work);
    window.setColleague([&lock](QWidget* parent) { return lock.askColleague(parent); });
    QObject::connect(&lock, &Lock::relieved, &window, &MainWindow::readHouse);
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
