// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

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
    record::AskAllergies allergies() const;
    bool checkAllergies();
    Field* firstWrong();  ///< says at each what is wrong; nothing when all is right

    desk::Desk& m_desk;
    WordsField* m_name = nullptr;
    DateField* m_born = nullptr;
    WordsField* m_number = nullptr;
    Choice* m_language = nullptr;
    Choice* m_allergies = nullptr;
    Field* m_reactsTo = nullptr;
    WordsField* m_reaction = nullptr;
};

/// A line with its insertion baseline: what later readings are held against.
class LineForm : public Page {
    Q_OBJECT
  public:
    explicit LineForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void saved();
    void left();

  private:
    void build();
    void sayMissing();
    void followKind();
    void addBaseline(QVBoxLayout* card);
    void addKit(QVBoxLayout* card);
    void save();
    record::AddLine said() const;

    desk::Desk& m_desk;
    Choice *m_kind = nullptr, *m_arm = nullptr;
    Choice *m_dressing = nullptr, *m_securement = nullptr, *m_antiseptic = nullptr;
    DateField *m_inserted = nullptr, *m_lastChange = nullptr;
    NumberField *m_outside = nullptr, *m_marks = nullptr, *m_girth = nullptr, *m_lumens = nullptr;
};

/// The local date at the desk.
QDate todayOf(const desk::Desk& desk);

}  // namespace ui
