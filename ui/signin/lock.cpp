// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/lock.h"

#include <QApplication>
#include <QWidget>

#include "signin/colleaguequestion.h"
#include "signin/lockwarning.h"
#include "signin/signinwindow.h"
#include "signin/unlockquestion.h"

namespace ui {

Lock::Lock(DoorWork& work, const base::Clock& clock, QWidget& window)
    : m_work(work),
      m_watch(clock),
      m_window(window),
      m_warning(new LockWarning(&window)),
      m_cover(std::make_unique<SignInWindow>(work)) {
    connect(&m_watch, &IdleWatch::warned, m_warning, &LockWarning::say);
    connect(&m_watch, &IdleWatch::touched, m_warning, &QWidget::hide);
    connect(&m_watch, &IdleWatch::idle, this, &Lock::lockNow);
    connect(m_cover.get(), &SignInWindow::opened, this, &Lock::uncover);
    connect(m_cover.get(), &SignInWindow::unlocked, this, &Lock::uncover);
    connect(m_cover.get(), &SignInWindow::given, this, &Lock::given);
    m_watch.start();
}

Lock::~Lock() { m_watch.stop(); }

void Lock::setVisitRunning(bool isRunning) {
    m_isVisitRunning = isRunning;
    if (!isRunning && m_isVeiled) coverAll();
}

void Lock::lockNow() {
    m_watch.stop();
    m_warning->hide();
    if (isCovered() || !m_work.door().who()) return;
    if (m_isVisitRunning) return setVeiled(true);
    coverAll();
}

void Lock::coverAll() {
    if (isCovered()) return;
    const auto who = m_work.door().who();
    m_whose = who ? std::optional(who->staff) : std::nullopt;
    m_cover->beginLocked();
    m_cover->setGeometry(m_window.geometry());
    m_cover->show();
    // Dialogs end as if nothing had been answered; windows are only put away.
    for (QWidget* window : QApplication::topLevelWidgets())
        if (window->isVisible() && window != m_cover.get() && window->windowType() != Qt::ToolTip) {
            m_hidden << window;
            window->hide();
        }
    m_cover->activateWindow();
    setVeiled(false);
}

void Lock::uncover() {
    const auto who = m_work.door().who();
    const bool isAnother = !who || m_whose != who->staff;
    for (const QPointer<QWidget>& window : std::exchange(m_hidden, {}))
        if (window && !window->isModal()) window->show();
    m_window.activateWindow();
    m_cover->hide();
    m_watch.start();
    Q_EMIT opened(isAnother);
}

void Lock::setVeiled(bool isVeiled) {
    if (std::exchange(m_isVeiled, isVeiled) != isVeiled) Q_EMIT veiled(isVeiled);
}

Question* Lock::askToUnlock(QWidget* parent) {
    auto* question = new UnlockQuestion(m_work, parent);
    connect(question, &UnlockQuestion::unlocked, this, [this] {
        m_watch.start();
        setVeiled(false);
    });
    return question;
}

Question* Lock::askColleague(QWidget* parent) {
    auto* question = new ColleagueQuestion(m_work, parent);
    connect(question, &ColleagueQuestion::signedIn, this, [this] {
        m_watch.start();
        Q_EMIT relieved();
        setVeiled(false);
    });
    return question;
}

}  // namespace ui
