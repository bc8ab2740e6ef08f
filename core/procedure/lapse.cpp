// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "procedure/model.h"

namespace procedure {

Conditions afterLapse(const ModelLapse& lapse, Conditions state) {
    return state.without(lapse.breaks).with(lapse.sets);
}

Conditions noticedLate(const Model& model, const ModelLapse& lapse, std::span<const int> doneSince,
                       Conditions present) {
    Conditions spoiled = lapse.breaks;
    Conditions set = lapse.sets;
    for (const int index : doneSince) {
        const Operator& op = model.operators.at(static_cast<std::size_t>(index));
        // What is done with something spoiled hands the spoiling on to all that a touch can spoil.
        const bool usesSpoiled = op.needs.meets(spoiled);
        spoiled = spoiled.without(op.gives);
        if (usesSpoiled) spoiled = spoiled.with(op.gives.within(model.clean));
        spoiled = spoiled.without(op.ends);
        set = set.without(op.ends);
    }
    return present.without(spoiled).with(set);
}

ModelLapse leftOut(const Operator& op, Conditions before) {
    return {op.id, op.gives, op.ends.within(before), packs::Action::Recover};
}

ModelLapse together(std::span<const ModelLapse> lapses) {
    ModelLapse all;
    for (const ModelLapse& lapse : lapses) {
        if (!all.id.empty()) all.id += '+';
        all.id += lapse.id;
        all.breaks = all.breaks.with(lapse.breaks);
        all.sets = all.sets.with(lapse.sets);
        all.action = std::max(all.action, lapse.action);
    }
    return all;
}

}  // namespace procedure
