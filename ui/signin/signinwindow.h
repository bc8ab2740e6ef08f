// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "base/clock.h"
#include "signin/door.h"

class QStackedWidget;
class QTimer;

namespace ui {

class NewcomerPage;
class RecoverySheetPage;
class SignInPage;

/// What stands before the first page: signing in, the first person of a new record with the
/// recovery sheet, and opening by that sheet. Its title names nobody.
class SignInWindow : public QWidget {
    Q_OBJECT
  public:
    explicit SignInWindow(Door& door, QWidget* parent = nullptr);
    ~SignInWindow() override;
    /// Back to signing in, with nothing left of the one before.
    void begin();

  Q_SIGNALS:
    void opened();  ///< somebody is signed in
    void given();   ///< the window was closed

  protected:
    void closeEvent(QCloseEvent* event) override;
    bool focusNextPrevChild(bool isNext) override;

  private:
    void showPage(QWidget* page);
    void signIn();
    void found();
    void recover();
    void printSheet(const QStringList& lines);
    void setBusy(bool isBusy);
    void followWait();
    template <class Page>
    void took(Page* page, const base::Outcome& outcome);

    Door& m_door;
    QStackedWidget* m_stack;
    QTimer* m_wait;
    SignInPage* m_signIn;
    NewcomerPage *m_found, *m_recover;
    RecoverySheetPage* m_sheet;
    bool m_isBusy = false;
};

}  // namespace ui
