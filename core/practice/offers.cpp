// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <set>

#include "practice/measures.h"
#include "practice/practice.h"

namespace practice {
namespace {

/// Index of the competency each step belongs to, in the order of the steps.
std::vector<int> competencyOfStep(const packs::Pack& pack) {
    std::vector<int> owner;
    for (std::size_t i = 0; i < pack.competencies.size(); ++i)
        owner.insert(owner.end(), pack.competencies[i].steps.size(), static_cast<int>(i));
    return owner;
}

std::vector<int> without(const std::vector<int>& steps, int op) {
    std::vector<int> rest;
    std::copy_if(steps.begin(), steps.end(), std::back_inserter(rest),
                 [op](int step) { return step != op; });
    return rest;
}

bool isReversible(const Event& event) {
    return !std::holds_alternative<OpenVisit>(event.said) &&
           !std::holds_alternative<TakeBack>(event.said) &&
           !std::holds_alternative<WithdrawLapse>(event.said);
}

}  // namespace

std::vector<int> markableNow(const procedure::Taught& taught, const State& state) {
    std::vector<int> markable;
    if (state.wayBack || state.remaining.empty() || runningPhase(state)) return markable;
    const std::vector<int> owner = competencyOfStep(taught.pack);
    const int front = state.remaining.front();
    for (const int op : state.remaining) {
        if (op == front || owner.at(op) != owner.at(front)) continue;
        const procedure::Operator& candidate = taught.model.operators.at(op);
        const packs::Step* step = packs::findStep(taught.pack, candidate.id).step;
        if (!step || !step->phases.empty() || !procedure::fits(candidate, state.holds)) continue;
        const auto after = procedure::apply(candidate, state.holds);
        const std::vector<int> rest = without(state.remaining, op);
        if (procedure::isWayOpen(taught.model, rest, after)) markable.push_back(op);
    }
    return markable;
}

std::vector<int> restOfPart(const procedure::Taught& taught, const State& state) {
    std::vector<int> rest;
    if (state.wayBack || state.remaining.empty() || runningPhase(state)) return rest;
    const std::vector<int> owner = competencyOfStep(taught.pack);
    const int front = state.remaining.front();
    procedure::Conditions holds = state.holds;
    for (const int op : state.remaining) {
        if (owner.at(op) != owner.at(front)) break;
        const procedure::Operator& candidate = taught.model.operators.at(op);
        const packs::Step* step = packs::findStep(taught.pack, candidate.id).step;
        if (!step || step->critical || !step->phases.empty()) break;
        if (owesMeasure(taught.pack, state, step->id)) break;
        if (!procedure::fits(candidate, holds)) break;
        holds = procedure::apply(candidate, holds);
        rest.push_back(op);
    }
    return rest;
}

std::vector<int> lapsesToOffer(const procedure::Taught& taught, const State& state) {
    std::vector<int> offered;
    std::set<int> seen;
    const auto offer = [&](int op) {
        for (const int lapse : taught.model.operators.at(op).lapses)
            if (seen.insert(lapse).second) offered.push_back(lapse);
    };
    if (const auto hand = inHand(state)) offer(*hand);
    if (!state.done.empty()) offer(state.done.back().op);
    return offered;
}

std::optional<base::CommandId> lastMark(const std::vector<Event>& events, const State& state) {
    for (auto at = state.marks.rbegin(); at != state.marks.rend(); ++at)
        for (const Event& event : events)
            if (event.id == *at && isReversible(event)) return *at;
    return std::nullopt;
}

std::optional<base::CommandId> lastCue(const std::vector<Event>& events, const State& state) {
    for (auto at = state.marks.rbegin(); at != state.marks.rend(); ++at)
        for (const Event& event : events)
            if (event.id == *at && std::holds_alternative<GiveCue>(event.said)) return *at;
    return std::nullopt;
}

bool canTakeBack(const State& state, const base::CommandId& entry) {
    if (state.ending != Ending::Open) return false;
    if (!std::count(state.marks.begin(), state.marks.end(), entry)) return false;
    const auto& steps = state.stepMarks;
    return !std::count(steps.begin(), steps.end(), entry) || steps.back() == entry;
}

std::optional<std::int64_t> secondsLeft(const procedure::Taught& taught, const State& state) {
    if (!inHand(state)) return std::nullopt;
    std::int64_t seconds = 0;
    for (const int op : state.remaining) seconds += taught.model.operators.at(op).seconds;
    if (state.wayBack)
        for (std::size_t i = state.wayBack->done; i < state.wayBack->operators.size(); ++i)
            seconds += taught.model.operators.at(state.wayBack->operators[i]).seconds;
    return seconds;
}

}  // namespace practice
