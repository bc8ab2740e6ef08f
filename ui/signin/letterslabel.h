// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QStringList>

#include "seal/secret.h"

namespace ui {

/// Zeros over the letters, in every copy that shares them; empty afterwards.
void wipe(QString& words);
void wipe(QStringList& lines);

/// Lines that open something, shown out of locked memory: each letter is painted by itself, so
/// that no text of them is left in a label, and none can be copied out.
class LettersLabel : public QLabel {
    Q_OBJECT
  public:
    explicit LettersLabel(const QString& objectName, QWidget* parent = nullptr);
    void setLetters(seal::Secret letters);
    /// They are gone from here, wiped.
    void forget() { setLetters({}); }
    const seal::Secret& letters() const { return m_letters; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int lineCount() const;
    int widest() const;  ///< px

    seal::Secret m_letters;
};

}  // namespace ui
