// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/page.h"

class QLabel;

namespace ui {

class DoorWork;
class NewPassphrase;
class PassphraseField;

/// Who is signed in: another passphrase, locking now, signing out.
class AccountPage : public Page {
    Q_OBJECT
  public:
    explicit AccountPage(DoorWork& work, QWidget* parent = nullptr);
    /// With everything empty and what is said of the person anew.
    void begin();

  Q_SIGNALS:
    void left();
    void lockWanted();
    void signOutWanted();
    void peopleWanted();
    void auditWanted();

  private:
    void addNew();
    void change();
    void changed();

    DoorWork& m_work;
    QLabel *m_who, *m_done;
    PassphraseField* m_old;
    NewPassphrase* m_new;
    QPushButton *m_people, *m_audit;
};

}  // namespace ui
