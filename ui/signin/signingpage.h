// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "parts/page.h"

class QLabel;

namespace ui {

class DoorWork;
class PassphraseField;

/// What somebody is about to sign.
struct ToSign {
    QStringList lines;   ///< exactly what is signed, one thing a line
    QString meaning;     ///< for instance "I saw this myself"
    base::Instant when;  ///< what the signature will say
};

/// Before a signature: exactly what is signed, by whom and in which role, what it means, and the
/// passphrase once for all of it. Whoever asks signs on confirmed(), and nothing before.
class SigningPage : public Page {
    Q_OBJECT
  public:
    explicit SigningPage(DoorWork& work, QWidget* parent = nullptr);
    void begin(const ToSign& toSign);

  Q_SIGNALS:
    void confirmed();
    void left();

  private:
    void fill(const ToSign& toSign);
    void confirm();

    DoorWork& m_work;
    QVBoxLayout *m_what, *m_who;
    PassphraseField* m_passphrase;
};

}  // namespace ui
