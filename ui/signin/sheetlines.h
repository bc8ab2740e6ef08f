// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>

#include "base/result.h"
#include "seal/checkedcode.h"

namespace ui {

class WordsField;

/// The lines of a recovery sheet being typed, each in a field of its own, so that a slip is shown
/// where it is.
class SheetLines : public QWidget {
    Q_OBJECT
  public:
    explicit SheetLines(const QString& objectName, QWidget* parent = nullptr);

    /// The lines in their order, in locked memory.
    seal::Secret typed() const;
    /// Says in place which line has too few or too many letters; gives the first such line.
    QWidget* firstWrong();
    /// Says in place what was found wrong with a line; gives it. Null when the error is not of one.
    QWidget* refuse(const base::Error& error);
    void clear();

  private:
    std::array<WordsField*, seal::codeLines> m_lines;
};

/// The letters alone, as capitals, and figures for the letters that look like them: dashes and
/// spaces are for reading.
QString bareLetters(const QString& typed);

}  // namespace ui
