// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
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

}  // namespace ui
