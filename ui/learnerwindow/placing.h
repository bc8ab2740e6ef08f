// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ui {

/// Where the learner's window stands.
enum class Stand {
    Hidden,
    SecondScreen,
    OverTeacher,  ///< on the only screen, over the teacher's page
};

struct Placing {
    bool isVisitOpen = false;
    bool hasSecondScreen = false;
    bool isTurned = false;        ///< asked for on the only screen
    bool isHiddenByHand = false;  ///< sent away from the second screen
};

/// With one screen it covers the teacher's page only when that was asked for.
constexpr Stand standOf(const Placing& now) {
    if (!now.isVisitOpen) return Stand::Hidden;
    if (now.hasSecondScreen) return now.isHiddenByHand ? Stand::Hidden : Stand::SecondScreen;
    return now.isTurned ? Stand::OverTeacher : Stand::Hidden;
}

}  // namespace ui
