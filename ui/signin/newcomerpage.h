// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "signin/door.h"

class QPlainTextEdit;

namespace ui {

class NewPassphrase;

enum class Newcoming { First, ByRecovery };

/// The first educator of a new record, or one who opens it by the recovery sheet because every
/// passphrase is lost: name, initials and a new passphrase.
class NewcomerPage : public Page {
    Q_OBJECT
  public:
    explicit NewcomerPage(Newcoming how, QWidget* parent = nullptr);

    Newcomer newcomer() const;
    QString letters() const;
    seal::Secret takePassphrase();
    void refuse(const base::Error& error);

  Q_SIGNALS:
    void wanted();
    void left();

  private:
    void press();
    void addLetters();

    QPlainTextEdit* m_letters = nullptr;
    Field* m_lettersField = nullptr;
    WordsField *m_name, *m_initials;
    NewPassphrase* m_passphrase;
};

}  // namespace ui
