// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include "signin/doorwork.h"
#include "signin/idlewatch.h"

class QWidget;

namespace ui {

class LockWarning;
class Question;
class SignInWindow;

/// Locks the windows when nobody touches them. Outside a visit all of them are hidden behind the
/// lock page. In a running visit the page stays, so that its keys and clocks go on, and its names
/// and notes are veiled; a visit that ends while veiled takes the lock page with it.
class Lock : public QObject {
    Q_OBJECT
  public:
    /// `window` is warned in, and goes first when all are hidden.
    Lock(DoorWork& work, const base::Clock& clock, QWidget& window);
    ~Lock() override;

    void setAfterMinutes(int minutes) { m_watch.setAfterMinutes(minutes); }
    void setVisitRunning(bool isRunning);
    void lockNow();

    bool isVeiled() const { return m_isVeiled; }
    bool isCovered() const { return !m_hidden.isEmpty(); }
    /// Asks in place, beside a running visit, for the passphrase of who is signed in.
    Question* askToUnlock(QWidget* parent);
    /// Asks in place for a colleague, who signs in and goes on with the visit.
    Question* askColleague(QWidget* parent);
    IdleWatch& watch() { return m_watch; }
    SignInWindow& cover() { return *m_cover; }

  Q_SIGNALS:
    /// Names and notes have to go, or may come back.
    void veiled(bool isVeiled);
    /// A colleague signed in beside a running visit, which is not yet theirs.
    void relieved();
    /// The windows are back. Another person has signed in: they go to their first page.
    void opened(bool isAnother);
    /// The lock page was closed by hand: the program ends.
    void given();

  private:
    void coverAll();
    void uncover();
    void setVeiled(bool isVeiled);

    DoorWork& m_work;
    IdleWatch m_watch;
    QWidget& m_window;
    LockWarning* m_warning;
    std::unique_ptr<SignInWindow> m_cover;
    QList<QPointer<QWidget>> m_hidden;     ///< to be shown again
    std::optional<base::StaffId> m_whose;  ///< who was signed in when it was locked
    bool m_isVisitRunning = false;
    bool m_isVeiled = false;
};

}  // namespace ui
