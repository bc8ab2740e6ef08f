// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "seal/secret.h"

namespace ui {

class DoorWork;
class PassphraseField;

/// Name and passphrase. No list of who works here: that would tell it to whoever finds the laptop.
class SignInPage : public Page {
    Q_OBJECT
  public:
    explicit SignInPage(DoorWork& work, QWidget* parent = nullptr);

    /// Everything empty again. A window that is only locked can be gone back to.
    void begin(bool isOnlyLocked);
    QString name() const { return m_name->typed(); }
    seal::Secret takePassphrase();
    /// Says why it was not opened; the name stays, the passphrase is typed again.
    void refuse(const base::Error& error);

  Q_SIGNALS:
    void wanted();
    void recoveryWanted();
    void backWanted();

  private:
    void press();

    DoorWork& m_work;
    WordsField* m_name;
    PassphraseField* m_passphrase;
    QPushButton *m_lost, *m_back;
};

/// Over everything while nobody was there: the passphrase of who is signed in, or somebody else.
class LockPage : public Page {
    Q_OBJECT
  public:
    explicit LockPage(DoorWork& work, QWidget* parent = nullptr);

    void begin(const QString& initials);
    seal::Secret takePassphrase();
    void refuse(const base::Error& error);

  Q_SIGNALS:
    void wanted();
    void otherWanted();

  private:
    void press();

    DoorWork& m_work;
    QLabel* m_whose;
    PassphraseField* m_passphrase;
};

}  // namespace ui
