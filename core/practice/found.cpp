// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/found.h"

#include <algorithm>

namespace practice {
namespace {

bool lists(const packs::Step* step, const std::string& lapse) {
    return step && std::ranges::count(step->lapses, lapse) > 0;
}

/// Where it is seen: at the operator in hand if that lists it, else at the one done last.
std::string placeOf(const procedure::Taught& taught, const State& state, const std::string& lapse) {
    const StepRecord* hand = recordInHand(state);
    const std::string now = hand ? hand->step : std::string();
    if (state.done.empty() || lists(packs::findStep(taught.pack, now).step, lapse)) return now;
    const auto last = static_cast<std::size_t>(state.done.back().op);
    const std::string& done = taught.model.operators.at(last).id;
    return lists(packs::findStep(taught.pack, done).step, lapse) ? done : now;
}

/// On the way back from a lapse of the learner: it may be what that lapse did.
bool isAfterLapse(const State& state) {
    const StepRecord* hand = recordInHand(state);
    return hand && hand->afterLapse &&
           std::ranges::any_of(state.lapses, [](const LapseRecord& lapse) {
               return !lapse.solved && lapse.isLearners();
           });
}

}  // namespace

bool isFoundAt(const packs::Pack& pack, const std::string& lapse, const std::string& step) {
    const packs::Lapse* known = packs::findLapse(pack, lapse);
    return known && std::ranges::count(known->foundAt, step) > 0;
}

bool wasFound(const procedure::Taught& taught, const State& state, const std::string& lapse) {
    return !isAfterLapse(state) && isFoundAt(taught.pack, lapse, placeOf(taught, state, lapse));
}

bool wasFound(const procedure::Taught& taught, const State& state, const SeeLapse& said) {
    if (said.other && !said.other->found) return false;
    return std::ranges::all_of(said.lapses, [&](const std::string& lapse) {
        if (!said.happened) return wasFound(taught, state, lapse);
        return said.foundThen == true && isFoundAt(taught.pack, lapse, *said.happened);
    });
}

}  // namespace practice
