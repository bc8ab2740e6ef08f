// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/id.h"
#include "packs/step.h"
#include "practice/steprecord.h"
#include "procedure/recovery.h"

namespace practice {

enum class Caught { No, Alone, Shown };

struct LapseRecord {
    base::CommandId entry;
    std::vector<std::string> lapses;  ///< ids in the pack
    std::string other;                ///< what was seen, where the pack lists nothing
    std::vector<std::string> touched;
    std::string leftOut;        ///< id of the step that was left out
    std::string step;           ///< the step in hand when it was seen
    std::string happenedAfter;  ///< noticed late: after this step
    std::int64_t atMs = 0;
    base::StaffId seenBy;
    packs::Action action = packs::Action::Recover;
    Caught caught = Caught::No;
    bool withdrawn = false;  ///< kept, struck through
    bool solved = false;     ///< the way back was done to its end (or none was needed)
    bool byAbsence = false;  ///< the pack's `away`: nobody did it
    bool found = false;      ///< on the patient, before the learner did anything: nobody did it
    bool alone = false;      ///< no helper was at hand for the way back
    std::vector<std::string> plan;  ///< ids of the operators of the way back, as first planned
    /// Something that the pack does not list is among it.
    bool isBesides() const { return !other.empty() || !touched.empty(); }
    /// It counts as a lapse of the learner: what was found, and what was left because the machine
    /// stopped or slept, does not.
    bool isLearners() const { return !withdrawn && !byAbsence && !found; }
    bool operator==(const LapseRecord&) const = default;
};

/// The way back that is being worked through.
struct WayBack {
    std::size_t lapse = 0;  ///< index into State::lapses of the newest one
    procedure::PlanOutcome outcome = procedure::PlanOutcome::Found;
    std::vector<int> operators;
    std::size_t done = 0;           ///< so many of them are done
    std::vector<StepRecord> steps;  ///< one for each operator
    bool operator==(const WayBack&) const = default;
};

}  // namespace practice
