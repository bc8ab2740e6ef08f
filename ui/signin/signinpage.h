// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "seal/secret.h"

namespace ui {

class PassphraseField;

/// Name and passphrase. No list of who works here: that would tell it to whoever finds the laptop.
class SignInPage : public Page {
    Q_OBJECT
  public:
    explicit SignInPage(QWidget* parent = nullptr);

    /// Everything empty again.
    void begin();
    QString name() const { return m_name->typed(); }
    seal::Secret takePassphrase();
    /// Says why it was not opened; the name stays, the passphrase is typed again.
    void refuse(const base::Error& error);
    /// So long the next try is not looked at; 0: at once.
    void sayWait(std::int64_t ms);

  Q_SIGNALS:
    void wanted();
    void recoveryWanted();

  private:
    void press();

    WordsField* m_name;
    PassphraseField* m_passphrase;
    bool m_waits = false;
};

}  // namespace ui
