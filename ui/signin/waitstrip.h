// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;

namespace ui {

class DoorWork;

/// Says how long the next passphrase is not looked at, and when it is again: to the eye every
/// second, to a screen reader when it begins and when it is over.
class WaitStrip : public QFrame {
    Q_OBJECT
  public:
    explicit WaitStrip(DoorWork& work, QWidget* parent = nullptr);
    QString words() const;

  private:
    void follow();
    void announce();

    DoorWork& m_work;
    QLabel* m_words;
    bool m_isWaiting = false;
};

}  // namespace ui
