// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "practice/practice.h"

/// The measures that are the point of a step: on the patient none passes without its figure, or
/// without the reason why there is none.
namespace practice {

/// What became of the measure of one step.
struct MeasureOfStep {
    std::string step, measure;
    Moment moment = Moment::Found;
    Measured measured = Measured::No;
    std::string why;  ///< with Measured::CouldNot
    bool operator==(const MeasureOfStep&) const = default;
};

/// Whether this step, in hand or still to be done, would pass with its measure unknown.
bool owesMeasure(const packs::Pack& pack, const State& state, const std::string& step);
/// Every step that has a measure, in the order of the pack; none where the visit is not on the
/// patient. A figure written down beside the steps, or after them, counts too.
std::vector<MeasureOfStep> measuresOf(const packs::Pack& pack, const State& state);

void takeMeasure(const packs::Pack& pack, State& state, const Event& event,
                 const TakeMeasure& said);
void missMeasure(const packs::Pack& pack, State& state, const Event& event,
                 const MissMeasure& said);
/// What was measured for steps still to be done may no longer be so.
void forgetMeasures(State& state);

}  // namespace practice
