// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/tally.h"

#include <algorithm>

namespace practice {

bool hasLapse(const StepRecord& step, const State& state) {
    return std::ranges::any_of(
        step.lapses, [&](std::size_t index) { return state.lapses.at(index).isLearners(); });
}

Tally tallyOf(const State& state) {
    Tally tally;
    for (const StepRecord& step : state.steps) {
        const Help help = helpOf(step, state);
        if (help == Help::DoesNotApply) continue;
        ++tally.steps;
        tally.recorded += help != Help::NothingRecorded;
        tally.unprompted += help == Help::Unprompted && !step.byJudgement && !hasLapse(step, state);
    }
    for (const LapseRecord& lapse : state.lapses) {
        if (lapse.withdrawn) continue;
        tally.lapses += lapse.isLearners();
        tally.caughtAlone += lapse.isLearners() && lapse.caught == Caught::Alone;
        tally.found += lapse.found;
        tally.absences += lapse.byAbsence;
    }
    return tally;
}

}  // namespace practice
