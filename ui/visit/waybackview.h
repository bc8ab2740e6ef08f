// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "pieces/moment.h"

class QScrollArea;
class QVBoxLayout;

namespace ui {

class Words;

/// The centre after a lapse: what to say, what to throw away and open, each step of the way back
/// with its own clock, and when the visit goes on.
class WayBackView : public QWidget {
    Q_OBJECT
  public:
    explicit WayBackView(QWidget* parent);
    void show(const Moment& moment, const base::Instant& now);
    void tick(const Moment& moment, const base::Instant& now);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit();
    void sayWho(const Moment& moment);
    void saySupplies(const Moment& moment);
    void showSteps(const Moment& moment);
    void sayGoingOn(const Moment& moment);

    QScrollArea* m_scroll;
    Words* m_title;
    Words* m_say;
    Words* m_call;
    Words* m_supplies;
    Words* m_now;
    Words* m_watch;
    Words* m_goesOn;
    Words* m_forWhom;
    Band* m_band;
    QVBoxLayout* m_steps;
    std::vector<Words*> m_rows;
};

}  // namespace ui
