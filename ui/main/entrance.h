// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>

#include "desk/desk.h"
#include "signin/doorwork.h"

namespace ui {

class Auditor;
class Lock;
class MainWindow;
class Settings;
class SignInWindow;

/// The way from signing in to the windows and back, as often as people come and go. Nothing of one
/// person's windows is left for the next: they are made anew for each.
class Entrance : public QObject {
    Q_OBJECT
  public:
    using OpenDesk = std::function<base::Result<std::unique_ptr<desk::Desk>>()>;

    /// All outlive it. `open` is called whenever somebody has signed in.
    Entrance(Door& door, Auditor& auditor, const base::Clock& clock, Settings& settings,
             OpenDesk open);
    ~Entrance() override;

    /// Shows the sign-in window.
    void begin();
    SignInWindow& signIn() const { return *m_signIn; }
    /// What is open for who is signed in; null before and after.
    MainWindow* window() const { return m_window.get(); }
    desk::Desk* desk() const { return m_desk.get(); }
    Lock* lock() const { return m_lock.get(); }

  Q_SIGNALS:
    /// The last window was closed by hand: the program ends.
    void given();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void enter();
    void leave();
    void signOut();

    DoorWork m_work;
    Auditor& m_auditor;
    const base::Clock& m_clock;
    Settings& m_settings;
    OpenDesk m_open;
    std::unique_ptr<SignInWindow> m_signIn;
    // The window and its lock look at the desk.
    std::unique_ptr<desk::Desk> m_desk;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<Lock> m_lock;
};

}  // namespace ui
