// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/entrance.h"

#include <QEvent>

#include "main/guarding.h"
#include "signin/signinwindow.h"

namespace ui {

Entrance::Entrance(Door& door, Auditor& auditor, const base::Clock& clock, Settings& settings,
                   OpenDesk open)
    : m_work(door),
      m_auditor(auditor),
      m_clock(clock),
      m_settings(settings),
      m_open(std::move(open)),
      m_signIn(std::make_unique<SignInWindow>(m_work)) {
    connect(m_signIn.get(), &SignInWindow::opened, this, &Entrance::enter);
    connect(m_signIn.get(), &SignInWindow::given, this, &Entrance::given);
}

Entrance::~Entrance() { leave(); }

void Entrance::begin() {
    m_signIn->begin();
    m_signIn->show();
}

void Entrance::enter() {
    leave();
    auto desk = m_open();
    if (!desk) {
        m_work.door().signOut();
        m_signIn->refuse(desk.error());
        return m_signIn->show();
    }
    m_desk = std::move(*desk);
    m_window = std::make_unique<MainWindow>(*m_desk, m_settings);
    m_lock = std::make_unique<Lock>(m_work, m_clock, *m_window);
    guard(*m_window, m_work, m_auditor, *m_lock, *m_desk, m_settings);
    m_window->installEventFilter(this);
    // Not while what tells of it is still at work: it goes with the windows.
    connect(m_window.get(), &MainWindow::signOutWanted, this, &Entrance::signOut,
            Qt::QueuedConnection);
    connect(m_lock.get(), &Lock::opened, this, [this](bool isAnother) {
        if (!isAnother) return;
        m_window->hide();  // before it is painted: it is still what the one before saw
        QMetaObject::invokeMethod(this, &Entrance::enter, Qt::QueuedConnection);
    });
    connect(m_lock.get(), &Lock::given, this, &Entrance::given);
    m_window->show();
    m_signIn->hide();
}

void Entrance::leave() {
    m_lock.reset();
    m_window.reset();
    m_desk.reset();
}

void Entrance::signOut() {
    m_window->hide();  // what reads by the keys stops when nobody sees it
    m_work.door().signOut();
    begin();
    leave();
}

/// Closing the window ends the program, and closing it for good is nobody's to undo.
bool Entrance::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Close)
        QMetaObject::invokeMethod(this, &Entrance::given, Qt::QueuedConnection);
    return QObject::eventFilter(watched, event);
}

}  // namespace ui
