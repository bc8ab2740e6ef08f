// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "packs/pack.h"
#include "procedure/recovery.h"

namespace procedure {

enum class FindingLevel { Error, Advice };

/// What a check has to say: the place in the pack (JSON Pointer) and what to change.
struct Finding {
    FindingLevel level = FindingLevel::Error;
    std::string pointer;
    std::string sentence;
    std::string remedy;  ///< of an error: what to do

    bool operator==(const Finding&) const = default;
};

/// When a lapse is seen, in relation to the step that lists it.
enum class Seen { During, After };

/// The way back from one lapse at one step that lists it.
struct WayBack {
    std::string step;
    std::string lapse;
    Seen seen = Seen::During;
    Company company = Company::WithHelper;
    packs::Action action = packs::Action::Recover;
    PlanOutcome outcome = PlanOutcome::None;
    std::vector<std::string> plan;  ///< ids, only where Found
    std::int64_t seconds = 0;
    int strain = 0;
};

struct CheckLimits {
    std::size_t statesOfQuestion = mostStates;
    std::size_t statesOfCheck = 10'000'000;
    std::size_t statesAdvised = 10'000;  ///< beyond it other programs may not be able to answer
};

struct CheckReport {
    std::vector<Finding> findings;
    std::vector<WayBack> ways;
    std::int64_t leastSeconds = 0;  ///< hands on, and the least time of every phase
    std::int64_t usualSeconds = 0;  ///< hands on, and the time asked of every phase
    std::size_t statesStored = 0;   ///< by all searches together

    bool isRefused() const;
};

/// Points 2, 3 and 8 of the check of a pack, and where a step may be skipped. Point 1 is the
/// reader's: the pack has come out of it. Point 3 is left out where the nominal run fails, which
/// the findings then say.
CheckReport check(const packs::Pack& pack, const CheckLimits& limits = {});

}  // namespace procedure
