// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "signin/doorwork.h"

class QStackedWidget;

namespace ui {

class LockPage;
class NewcomerPage;
class RecoverySheetPage;
class SignInPage;

/// What stands before the first page, and over all others while they are locked: signing in, the
/// first person of a new record with the recovery sheet, opening by that sheet, the lock. Its title
/// names nobody.
class SignInWindow : public QWidget {
    Q_OBJECT
  public:
    explicit SignInWindow(DoorWork& work, QWidget* parent = nullptr);
    /// To signing in, with nothing left of the one before.
    void begin();
    /// To the lock of who is signed in.
    void beginLocked();
    /// To signing in, saying why what was opened could not be shown.
    void refuse(const base::Error& error);

  Q_SIGNALS:
    void opened();    ///< somebody signed in, the same person or another
    void unlocked();  ///< by who was signed in
    void given();     ///< the window was closed

  protected:
    void closeEvent(QCloseEvent* event) override;
    bool focusNextPrevChild(bool isNext) override;

  private:
    void connectPages();
    void forget();
    void showPage(QWidget* page);
    void signIn();
    void unlock();
    void found();
    void recover();
    void followWork();

    DoorWork& m_work;
    QStackedWidget* m_stack;
    SignInPage* m_signIn;
    LockPage* m_lock;
    NewcomerPage *m_found, *m_recover;
    RecoverySheetPage* m_sheet;
};

}  // namespace ui
