// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

class QPushButton;

namespace ui {

/// Who works here now. No passphrases yet: one press changes it, and everything recorded carries
/// the name that is chosen here.
class StaffPage : public Page {
    Q_OBJECT
  public:
    explicit StaffPage(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void chose();
    void left();

  protected:
    /// Who has begun to write a name adds it, whoever may go on meanwhile.
    void goOn(QWidget* from) override;

  private:
    void fill();
    const record::Staff* whoWorks() const;
    void sayWho();
    void add();

    desk::Desk& m_desk;
    WordsField *m_name = nullptr, *m_initials = nullptr;
    Choice* m_role = nullptr;
    QPushButton* m_add = nullptr;
};

}  // namespace ui
