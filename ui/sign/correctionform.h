// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

/// Something to add to the record: to an entry that is there, what was not written in time, or the
/// mark that something was written in the wrong chart.
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
    bool saveAddendum();
    bool saveLate();
    bool saveMark();
    /// What an addendum may be to.
    std::vector<Option> entries() const;
    /// What whoever works here may mark, of which nothing is marked yet.
    std::vector<Option> markable() const;
    void addWrongChart(QVBoxLayout* card);

    desk::Desk& m_desk;
    Choice *m_kind = nullptr, *m_to = nullptr, *m_wrong = nullptr;
    Field *m_toField = nullptr, *m_wrongField = nullptr;
    WordsField *m_text = nullptr, *m_reason = nullptr, *m_time = nullptr, *m_why = nullptr;
    QLabel* m_wrongSays = nullptr;
    DateField* m_day = nullptr;
};

}  // namespace ui
