// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;

namespace ui {

/// Says at the top of a window that it locks in a moment. Takes no focus and no press: any key or
/// pointer move ends it, and does what it does besides.
class LockWarning : public QFrame {
    Q_OBJECT
  public:
    explicit LockWarning(QWidget* window);
    void say(int secondsLeft);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void place();

    QLabel* m_words;
};

}  // namespace ui
