// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "signin/door.h"

namespace ui {

class NewPassphrase;
class SheetLines;

enum class Newcoming { First, ByRecovery };

/// The first educator of a new record, or one who opens it by the recovery sheet because every
/// passphrase is lost: name, initials and a new passphrase.
class NewcomerPage : public Page {
    Q_OBJECT
  public:
    explicit NewcomerPage(Newcoming how, QWidget* parent = nullptr);

    /// Everything empty again.
    void begin();
    /// Which record the sheet has to be of.
    void tellRecord(const QString& name);
    Newcomer newcomer() const;
    /// What was typed of the recovery sheet.
    seal::Secret letters() const;
    seal::Secret takePassphrase();
    void refuse(const base::Error& error);

  Q_SIGNALS:
    void wanted();
    void left();

  private:
    void press();
    void addLetters();
    void showIn(QWidget* edit);

    SheetLines* m_letters = nullptr;  ///< null for the first person
    QLabel* m_record = nullptr;       ///< the same
    WordsField *m_name, *m_initials;
    NewPassphrase* m_passphrase;
};

}  // namespace ui
