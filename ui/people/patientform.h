// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

class AllergiesField;

/// A patient and what they can't bear. Opens the new record when it is saved.
class PatientForm : public Page {
    Q_OBJECT
  public:
    explicit PatientForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void saved();
    void left();

  private:
    void build();
    void save();

    desk::Desk& m_desk;
    WordsField* m_name = nullptr;
    DateField* m_born = nullptr;
    WordsField* m_number = nullptr;
    Choice* m_language = nullptr;
    AllergiesField* m_allergies = nullptr;
};

/// Allergies asked again, of a patient whose record is open. What was answered before stays in the
/// record.
class AllergiesForm : public Page {
    Q_OBJECT
  public:
    explicit AllergiesForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void saved(const QString& done);  ///< with what is said of it on the next page
    void left();

  private:
    void save();

    desk::Desk& m_desk;
    AllergiesField* m_allergies = nullptr;
};

/// The local date at the desk.
QDate todayOf(const desk::Desk& desk);

}  // namespace ui
