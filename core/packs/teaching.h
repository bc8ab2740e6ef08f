// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "packs/text.h"

namespace packs {

/// A long word that the learner is taught and may then be told.
struct Word {
    std::string id;
    Text term;
    Text meaning;

    bool operator==(const Word&) const = default;
};

struct Point {
    std::string id;
    Text text;
    bool essential = false;

    bool operator==(const Point&) const = default;
};

/// One open question of the teach-back.
struct Prompt {
    std::string id;
    std::string competency;
    Text ask;
    std::vector<Point> points;
    Text again;  ///< said differently, when it is taught again
    std::optional<std::string> source;

    bool operator==(const Prompt&) const = default;
};

enum class Call { Emergency, TeamNow, TeamToday };

struct Drill {
    std::string id;
    Text title;
    Text when;
    std::vector<Text> doTexts;  ///< "do"
    Call call = Call::Emergency;
    std::optional<std::string> source;

    bool operator==(const Drill&) const = default;
};

/// What the pack asks for before a learner counts as ready; all are least numbers.
struct Readiness {
    int unpromptedInARow = 0;
    int observedAtLeast = 0;
    int onPatientAtLeast = 0;
    int onDaysAtLeast = 0;
    std::vector<std::string> drills;
    bool homeKitSeen = false;
    int teachBackRounds = 1;
    int validDays = 0;
    std::string source;

    bool operator==(const Readiness&) const = default;
};

}  // namespace packs
