// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "base/result.h"

class QLabel;

namespace ui {

/// The first window when the record can't be opened: what happened, what is safe, what to do, and
/// a way to try again once that is done.
class RefusedWindow : public QWidget {
    Q_OBJECT
  public:
    /// `notice` stands above all of it, such as that nobody here is real; "" for none.
    RefusedWindow(const base::Error& error, const QString& folder, const QString& notice,
                  QWidget* parent = nullptr);
    /// Says it once more, or another thing, after a try that failed.
    void say(const base::Error& error);

  Q_SIGNALS:
    void again();
    void given();  ///< it is given up: close the program

  protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;  ///< Enter, Escape

  private:
    QLabel* m_words;
};

}  // namespace ui
