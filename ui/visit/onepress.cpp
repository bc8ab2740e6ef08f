// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/onepress.h"

#include <QKeyEvent>

namespace ui {

namespace {

// Common practice, no source: foot pedals and worn keys bounce for well under this.
constexpr std::int64_t bounceMs = 300;

bool isSoonAfter(std::int64_t last, std::int64_t nowMs) {
    return nowMs >= last && nowMs - last < bounceMs;
}

}  // namespace

bool OnePress::isBounce(Act what, std::int64_t nowMs) {
    const auto last = m_acts.find(what);
    const bool isSoon = last != m_acts.end() && isSoonAfter(last->second, nowMs);
    if (!isSoon) m_acts[what] = nowMs;
    return isSoon;
}

bool OnePress::isSecondTouch(std::int64_t nowMs) {
    const bool isSoon = m_touched && isSoonAfter(*m_touched, nowMs);
    if (!isSoon) m_touched = nowMs;
    return isSoon;
}

void OnePress::pressed(int key, std::int64_t nowMs) {
    m_key = key;
    m_keyMs = nowMs;
}

bool OnePress::isStillThere(const QKeyEvent& key, std::int64_t nowMs) {
    const bool isSame = key.key() == m_key;
    if (isSame && (key.isAutoRepeat() || isSoonAfter(m_keyMs, nowMs))) return true;
    if (!key.isAutoRepeat()) m_key = 0;  // another key, or another press: the first is let go
    return false;
}

}  // namespace ui
