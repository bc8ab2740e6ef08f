// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "signin/door.h"

class QLabel;

namespace ui {

class DoorWork;
class PassphraseField;

/// A patient's record is destroyed by an educator and an auditor together; both are here and type
/// their own passphrase.
class ErasePage : public Page {
    Q_OBJECT
  public:
    explicit ErasePage(DoorWork& work, QWidget* parent = nullptr);
    /// `who` says whose record it is, by two identifiers.
    void begin(const base::PatientId& patient, const QString& who);

  Q_SIGNALS:
    void done();
    void left();

  private:
    void addPeople();
    bool isFilled();
    void erase();

    DoorWork& m_work;
    base::PatientId m_patient;
    QLabel *m_whose, *m_who;
    WordsField *m_why, *m_second;
    PassphraseField *m_own, *m_others;
};

}  // namespace ui
