// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "render/papers/recoverysheet.h"
#include "seal/secret.h"

namespace ui {

/// The recovery sheet, shown once: to be printed or written down, and one line typed back so that
/// it is sure to be at hand.
class RecoverySheetPage : public Page {
    Q_OBJECT
  public:
    explicit RecoverySheetPage(QWidget* parent = nullptr);
    /// As they were made just now, with what else stands on the sheet.
    void showLines(seal::Secret lines, const render::SheetMark& mark);

  Q_SIGNALS:
    void kept();  ///< the line was typed back

  private:
    void press();
    void printIt();
    QStringList lines() const;

    seal::Secret m_lines;
    render::SheetMark m_mark;
    QLabel *m_shown, *m_which;
    WordsField* m_back;
};

}  // namespace ui
