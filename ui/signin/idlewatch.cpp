// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/idlewatch.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>
#include <utility>

namespace ui {
namespace {

constexpr int lookEveryMs = 500;
constexpr std::int64_t minuteMs = 60'000;
constexpr int usualMinutes = 5;

}  // namespace

IdleWatch::IdleWatch(const base::Clock& clock, QObject* parent)
    : QObject(parent), m_clock(clock), m_afterMs(usualMinutes * minuteMs) {
    m_timer.setInterval(lookEveryMs);
    connect(&m_timer, &QTimer::timeout, this, &IdleWatch::tick);
}

void IdleWatch::setAfterMinutes(int minutes) { m_afterMs = std::max(minutes, 1) * minuteMs; }

void IdleWatch::start() {
    m_last = m_clock.now();
    m_warnedSeconds = 0;
    m_timer.start();
    QCoreApplication::instance()->installEventFilter(this);
}

void IdleWatch::stop() {
    m_timer.stop();
    QCoreApplication::instance()->removeEventFilter(this);
}

void IdleWatch::tick() {
    if (!isOn()) return;
    const base::Instant now = m_clock.now();
    const std::int64_t left = m_afterMs - (now.bootMs - m_last.bootMs);
    if (left <= 0 || now.bootId != m_last.bootId) {
        stop();
        return Q_EMIT idle();
    }
    if (left > warnMs) return;
    const int seconds = static_cast<int>((left + 999) / 1000);
    if (seconds == m_warnedSeconds) return;
    m_warnedSeconds = seconds;
    Q_EMIT warned(seconds);
}

/// A key held down by something lying on it repeats by itself, and windows that move under a
/// pointer at rest make moves of no distance: neither is a person.
bool IdleWatch::isTouch(const QEvent* event) {
    if (!event->spontaneous()) return false;
    switch (event->type()) {
        case QEvent::KeyPress:
            return !static_cast<const QKeyEvent*>(event)->isAutoRepeat();
        case QEvent::MouseMove: {
            const QPointF now = static_cast<const QMouseEvent*>(event)->globalPosition();
            return std::exchange(m_pointer, now) != now;
        }
        case QEvent::MouseButtonPress:
        case QEvent::Wheel:
        case QEvent::TouchBegin:
        case QEvent::TabletPress:
            return true;
        default:  // all other kinds of events: not made by a person
            return false;
    }
}

bool IdleWatch::eventFilter(QObject*, QEvent* event) {
    if (isTouch(event)) touch();
    return false;
}

void IdleWatch::touch() {
    // What comes after it was over does not undo it: the tick that says so may be late.
    tick();
    if (!isOn()) return;
    m_last = m_clock.now();
    if (std::exchange(m_warnedSeconds, 0) > 0) Q_EMIT touched();
}

}  // namespace ui
