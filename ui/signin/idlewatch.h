// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointF>
#include <QTimer>

#include "base/clock.h"

namespace ui {

/// Notices that nobody touches the program: keys, pointer, wheel, fingers. Measured by the clock
/// that goes on through suspend, so that a computer put to sleep wakes up locked.
class IdleWatch : public QObject {
    Q_OBJECT
  public:
    static constexpr std::int64_t warnMs = 20'000;  ///< the warning before it is over

    explicit IdleWatch(const base::Clock& clock, QObject* parent = nullptr);

    /// After so long; at least one minute.
    void setAfterMinutes(int minutes);
    /// Counts from now on.
    void start();
    void stop();
    bool isOn() const { return m_timer.isActive(); }
    /// Looks at the clock; a timer calls it twice a second.
    void tick();

  Q_SIGNALS:
    void warned(int secondsLeft);
    void touched();  ///< during a warning
    void idle();     ///< stops by itself

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    bool isTouch(const QEvent* event);
    void touch();

    const base::Clock& m_clock;
    QTimer m_timer;
    std::int64_t m_afterMs;
    base::Instant m_last;
    QPointF m_pointer;
    int m_warnedSeconds = 0;  ///< 0: no warning is shown
};

}  // namespace ui
