// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "render/papers/recoverysheet.h"
#include "signin/letterslabel.h"

namespace ui {

/// The recovery sheet, shown once: to be printed or written down, and one line typed back so that
/// it is sure to be at hand. The lines lie in locked memory and are wiped when the page is left;
/// what was printed of them is wiped as far as it is in the program's hands.
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
    QStringList lines() const;  ///< to be wiped by whoever asks
    bool isTypedBack() const;

    render::SheetMark m_mark;
    LettersLabel* m_shown;
    QLabel* m_which;
    WordsField* m_back;
};

}  // namespace ui
