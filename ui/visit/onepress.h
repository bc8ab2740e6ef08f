// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <optional>

#include "keys/keys.h"

namespace ui {

/// Tells one press from its bounces and from a key that is held. Times are the desk's boot clock.
class OnePress {
  public:
    bool isBounce(Act what, std::int64_t nowMs);
    /// A touch bounces too, and what it hit may have made room for something else meanwhile.
    bool isSecondTouch(std::int64_t nowMs);
    /// This key did something that may have put the focus elsewhere.
    void pressed(int key, std::int64_t nowMs);
    /// It is not yet meant for where the focus is now.
    bool isStillThere(const QKeyEvent& key, std::int64_t nowMs);
    /// What came before does not count: another visit.
    void forget() { *this = {}; }

  private:
    std::map<Act, std::int64_t> m_acts;
    std::optional<std::int64_t> m_touched;
    int m_key = 0;
    std::int64_t m_keyMs = 0;
};

}  // namespace ui
