// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

/// The learner goes home while the rules say not yet: who does what until then.
class HelpForm : public Page {
    Q_OBJECT
  public:
    explicit HelpForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void saved();
    void left();

  private:
    void fillInDue();
    /// Says where the day that was typed is later than the dressing may stay; no barrier.
    void compareWithDue();
    void save();

    desk::Desk& m_desk;
    std::optional<QDate> m_due;
    QLabel* m_late = nullptr;
    WordsField *m_why = nullptr, *m_decidedBy = nullptr, *m_told = nullptr, *m_nextBy = nullptr,
               *m_call = nullptr;
    DateField* m_nextOn = nullptr;
};

/// Something to add to the record: to an entry that is there, or what was not written in time.
class CorrectionForm : public Page {
    Q_OBJECT
  public:
    explicit CorrectionForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void saved();
    void left();

  private:
    void follow();
    void save();
    bool saveLate();
    std::vector<Option> entries() const;

    desk::Desk& m_desk;
    Choice *m_kind = nullptr, *m_to = nullptr;
    Field* m_toField = nullptr;
    WordsField *m_text = nullptr, *m_reason = nullptr, *m_time = nullptr;
    DateField* m_day = nullptr;
};

}  // namespace ui
