// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "parts/page.h"
#include "signin/door.h"

class QStackedWidget;

namespace ui {

class AdmitPage;
class DoorWork;
class RecoverySheetPage;
class ResetPage;
class RetirePage;

/// Everybody who can sign in, or could. An educator changes it, an auditor reads it, a teacher is
/// told who may.
class PeopleList : public Page {
    Q_OBJECT
  public:
    explicit PeopleList(DoorWork& work, QWidget* parent = nullptr);
    /// `done` is what was just done, to be said once.
    void begin(const QString& done = {});
    void restFocus();

  Q_SIGNALS:
    void left();
    void admitWanted();
    void sheetWanted();
    void resetWanted(const ui::Member& whom);
    void retireWanted(const ui::Member& whom);

  private:
    void addSheet();
    void addPerson(const Member& person, const Member& own);

    DoorWork& m_work;
    QPushButton* m_back;
};

/// The list and what is done with it.
class PeoplePage : public QWidget {
    Q_OBJECT
  public:
    explicit PeoplePage(DoorWork& work, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void left();

  private:
    template <class P>
    void connectBack(P* page);
    void makeSheet();
    void toList(const QString& done);
    void showPage(QWidget* page);

    DoorWork& m_work;
    QStackedWidget* m_stack;
    PeopleList* m_list;
    AdmitPage* m_admit;
    ResetPage* m_reset;
    RetirePage* m_retire;
    RecoverySheetPage* m_sheet;
};

}  // namespace ui
