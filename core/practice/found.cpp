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

bool wasFound(const procedure::Taught& taught, const State& state, const std::string& lapse,
              const std::string* happened) {
    const packs::Lapse* known = packs::findLapse(taught.pack, lapse);
    if (!known || known->foundAt.empty()) return false;
    if (!happened && isAfterLapse(state)) return false;
    const std::string at = happened ? *happened : placeOf(taught, state, lapse);
    return std::ranges::count(known->foundAt, at) > 0;
}

bool wasFound(const procedure::Taught& taught, const State& state, const SeeLapse& said) {
    if (said.other && !said.other->found) return false;
    const std::string* happened = said.happened ? &*said.happened : nullptr;
    return std::ranges::all_of(said.lapses, [&](const std::string& lapse) {
        return wasFound(taught, state, lapse, happened);
    });
}

}  // namespace practice
