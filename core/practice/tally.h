// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "practice/state.h"

namespace practice {

/// What is counted of a visit wherever it is told in figures. A step that does not apply is in none
/// of them; what was found on the patient, and what was left because the machine stopped, is no
/// lapse of the learner.
struct Tally {
    int steps = 0;       ///< those that apply
    int recorded = 0;    ///< of these: something was recorded
    int unprompted = 0;  ///< of these: without help, lapse or judgement of the teacher
    int lapses = 0;      ///< the learner's, withdrawn ones left out
    int caughtAlone = 0;
    int found = 0;     ///< on the patient, before the learner did anything
    int absences = 0;  ///< the visit was left, or the machine stopped or slept
    bool operator==(const Tally&) const = default;
};

Tally tallyOf(const State& state);
/// Whether a lapse of the learner was told of this step.
bool hasLapse(const StepRecord& step, const State& state);

}  // namespace practice
