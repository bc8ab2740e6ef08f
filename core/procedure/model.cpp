// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/model.h"

#include <algorithm>
#include <unordered_map>

#include "base/check.h"

namespace procedure {
namespace {

using ConditionIndex = std::unordered_map<std::string, int>;

Conditions maskOf(const std::vector<std::string>& ids, const ConditionIndex& index) {
    Conditions mask;
    for (const std::string& id : ids) {
        const auto found = index.find(id);
        CHECK_OR(found != index.end()) { continue; }
        mask = mask.with(Conditions::single(found->second));
    }
    return mask;
}

Operator compileStep(const packs::Step& step, const ConditionIndex& index, const Model& model) {
    Operator op;
    op.id = step.id;
    op.needs = maskOf(step.needs, index);
    op.forbids = maskOf(step.forbids, index);
    op.gives = maskOf(step.gives, index);
    op.ends = maskOf(step.ends, index);
    op.seconds = op.usualSeconds = step.handsOnSeconds;
    for (const packs::Phase& phase : step.phases) {
        op.seconds += phase.minSeconds;
        op.usualSeconds += phase.targetSeconds;
    }
    op.strain = step.strain;
    op.by = step.by;
    op.isRepeatable = step.repeatable;
    for (const std::string& lapse : step.lapses)
        if (const auto at = model.lapseIndex(lapse)) op.lapses.push_back(*at);
    return op;
}

template <class Item>
std::optional<int> indexOf(const std::vector<Item>& items, const std::string& id) {
    const auto found = std::ranges::find(items, id, &Item::id);
    if (found == items.end()) return std::nullopt;
    return static_cast<int>(found - items.begin());
}

}  // namespace

std::optional<int> Model::operatorIndex(const std::string& id) const {
    return indexOf(operators, id);
}

std::optional<int> Model::lapseIndex(const std::string& id) const { return indexOf(lapses, id); }

Model compile(const packs::Pack& pack) {
    REQUIRE(pack.conditions.size() <= Conditions::most);
    Model model;
    ConditionIndex index;
    for (const packs::Condition& condition : pack.conditions) {
        const int at = static_cast<int>(model.conditionIds.size());
        index.emplace(condition.id, at);
        model.conditionIds.push_back(condition.id);
        if (condition.clean) model.clean = model.clean.with(Conditions::single(at));
    }
    model.start = maskOf(pack.start, index);
    model.goal = maskOf(pack.goal, index);
    for (const packs::Guard& guard : pack.guards)
        model.guards.push_back(
            {guard.id, maskOf(guard.whileAll, index), maskOf(guard.holds, index)});
    for (const packs::Lapse& lapse : pack.lapses)
        model.lapses.push_back(
            {lapse.id, maskOf(lapse.breaks, index), maskOf(lapse.sets, index), lapse.action});
    for (const packs::StepPlace& place : packs::stepsInOrder(pack))
        model.operators.push_back(compileStep(*place.step, index, model));
    model.stepCount = static_cast<int>(model.operators.size());
    for (const packs::Step& step : pack.recoveries)
        model.operators.push_back(compileStep(step, index, model));
    return model;
}

bool fits(const Operator& op, Conditions state) {
    return state.contains(op.needs) && !state.meets(op.forbids);
}

Conditions apply(const Operator& op, Conditions state) {
    return state.without(op.ends).with(op.gives);
}

bool isKept(const ModelGuard& guard, Conditions state) {
    return !state.contains(guard.whileAll) || state.contains(guard.holds);
}

bool guardsKept(const Model& model, Conditions state) {
    return std::ranges::all_of(model.guards,
                               [&](const ModelGuard& guard) { return isKept(guard, state); });
}

bool breaksAGuard(const Model& model, Conditions before, Conditions after) {
    return std::ranges::any_of(model.guards, [&](const ModelGuard& guard) {
        return isKept(guard, before) && !isKept(guard, after);
    });
}

std::vector<Conditions> nominalStates(const Model& model) {
    std::vector<Conditions> states{model.start};
    for (int step = 0; step < model.stepCount; ++step)
        states.push_back(apply(model.operators[step], states.back()));
    return states;
}

}  // namespace procedure
