// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "visit/question.h"

namespace ui {

class DoorWork;
class PassphraseField;

/// Beside a running visit whose names and notes are veiled: the passphrase of who is signed in.
class UnlockQuestion : public Question {
    Q_OBJECT
  public:
    UnlockQuestion(DoorWork& work, QWidget* parent);

  Q_SIGNALS:
    void unlocked();

  private:
    void unlock();

    DoorWork& m_work;
    PassphraseField* m_passphrase;
    Words* m_problem;
};

}  // namespace ui
