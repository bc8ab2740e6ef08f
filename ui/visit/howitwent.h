// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "keys/keys.h"
#include "pieces/moment.h"

class QGridLayout;

namespace ui {

class PressButton;
class Words;

/// How the step in hand went until now, and what else can be said of it.
class HowItWent : public QWidget {
    Q_OBJECT
  public:
    explicit HowItWent(QWidget* parent);
    void show(const Moment& moment, const Keys& keys);
    /// Two side by side where their words have room for that in `width`.
    void arrange(int width);

  Q_SIGNALS:
    void acted(ui::Act act);

  private:
    PressButton* button(Act act, const QString& name);
    void sayState(const Moment& moment);
    void sayMarks(const Moment& moment, const Keys& keys);

    Words* m_state;
    QGridLayout* m_marks;  ///< the five below, in two columns or in one
    int m_columns = 0;
    PressButton* m_cue;
    PressButton* m_handsOn;
    PressButton* m_notDone;
    PressButton* m_notSeen;
    PressButton* m_skip;
};

}  // namespace ui
