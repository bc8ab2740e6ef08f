// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "visit/question.h"

namespace ui {

class DoorWork;
class PassphraseField;
class WordsField;

/// In a running visit: a colleague signs in, here, and goes on with it in their own name.
class ColleagueQuestion : public Question {
    Q_OBJECT
  public:
    ColleagueQuestion(DoorWork& work, QWidget* parent);

  Q_SIGNALS:
    /// They are signed in, and nobody else; the visit is not yet theirs.
    void signedIn();

  private:
    void signIn();
    void goOn();

    DoorWork& m_work;
    WordsField* m_name;
    PassphraseField* m_passphrase;
    Words* m_problem;
};

}  // namespace ui
