// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/procedure/exhaustive.h"

namespace exhaustive {
namespace {

using Names = std::vector<std::string>;

bool chance(const Dice& dice, int percent) { return dice(100) < percent; }

/// Each name with this chance in a hundred.
Names some(const Dice& dice, const State& from, int percent) {
    Names names;
    for (const std::string& name : from)
        if (chance(dice, percent)) names.push_back(name);
    return names;
}

State without(State all, const Names& names) {
    for (const std::string& name : names) all.erase(name);
    return all;
}

State asSet(const Names& names) { return {names.begin(), names.end()}; }

packs::Step anyStep(const Dice& dice, const std::string& id, const State& all, const State& mayNeed,
                    const State& mayForbid) {
    packs::Step step;
    step.id = id;
    step.needs = some(dice, mayNeed, 22);
    step.forbids = some(dice, without(mayForbid, step.needs), 12);
    step.gives = some(dice, all, 22);
    step.ends = some(dice, without(all, step.gives), 15);
    // Few different costs, so that many plans are equal and the order has to settle them.
    step.handsOnSeconds = chance(dice, 30) ? 4 + dice(2) : 1 + dice(2);
    if (chance(dice, 30)) step.phases.push_back({});
    step.strain = chance(dice, 25) ? 1 : 0;
    step.repeatable = chance(dice, 80);
    step.by = static_cast<packs::By>(dice(3));
    return step;
}

void makeSimple(packs::Step& way, const Dice& dice, const State& all) {
    const Names names(all.begin(), all.end());
    const auto any = [&] {
        return names[static_cast<std::size_t>(dice(static_cast<int>(names.size())))];
    };
    way.gives = {any()};
    way.needs.clear();
    way.forbids.clear();
    way.ends.clear();
    if (const std::string need = any(); need != way.gives.front()) way.needs = {need};
}

void addSteps(packs::Pack& pack, const Dice& dice, const State& all) {
    State state = asSet(pack.start);
    packs::Competency competency;
    competency.id = "all";
    const int count = 2 + dice(4);
    for (int i = 0; i < count; ++i) {
        State absent = all;
        for (const std::string& name : state) absent.erase(name);
        competency.steps.push_back(anyStep(dice, "step-" + std::to_string(i), all, state, absent));
        for (const std::string& name : competency.steps.back().ends) state.erase(name);
        for (const std::string& name : competency.steps.back().gives) state.insert(name);
    }
    pack.goal = some(dice, state, 60);
    pack.competencies.push_back(competency);
}

void addGuards(packs::Pack& pack, const Dice& dice, const State& all) {
    const std::vector<State> states = nominal(pack);
    for (int i = 0; i < 4; ++i) {
        packs::Guard guard;
        guard.id = "guard-" + std::to_string(i);
        guard.whileAll = some(dice, all, 25);
        guard.holds = some(dice, all, 25);
        const bool isKept = std::ranges::all_of(states, [&](const State& state) {
            const auto has = [&](const std::string& name) { return state.count(name) > 0; };
            return !std::ranges::all_of(guard.whileAll, has) ||
                   std::ranges::all_of(guard.holds, has);
        });
        if (isKept) pack.guards.push_back(guard);
    }
}

}  // namespace

packs::Pack randomPack(const Dice& dice) {
    packs::Pack pack;
    pack.languages = {"en"};
    State all;
    const int count = 4 + dice(4);
    for (int i = 0; i < count; ++i) {
        packs::Condition condition;
        condition.id = std::string(1, static_cast<char>('a' + i));
        condition.clean = chance(dice, 60);
        all.insert(condition.id);
        pack.conditions.push_back(condition);
    }
    pack.start = some(dice, all, 30);
    addSteps(pack, dice, all);
    const int recoveries = 3 + dice(7);
    for (int i = 0; i < recoveries; ++i) {
        packs::Step way = anyStep(dice, "way-" + std::to_string(i), all, all, all);
        // One thing at a time makes for longer ways back.
        if (chance(dice, 60)) makeSimple(way, dice, all);
        pack.recoveries.push_back(way);
    }
    addGuards(pack, dice, all);
    for (int i = 0; i < 2; ++i) {
        packs::Lapse lapse;
        lapse.id = "lapse-" + std::to_string(i);
        lapse.breaks = some(dice, all, 60);
        lapse.sets = some(dice, without(all, lapse.breaks), 15);
        pack.lapses.push_back(lapse);
    }
    return pack;
}

}  // namespace exhaustive
