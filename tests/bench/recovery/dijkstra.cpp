// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/recovery/dijkstra.h"

#include <queue>
#include <unordered_map>

namespace bench {
namespace {

std::uint64_t brokenGuards(const procedure::Model& model, std::uint64_t state) {
    std::uint64_t broken = 0;
    for (std::size_t i = 0; i < model.guards.size(); ++i) {
        const std::uint64_t whileAll = model.guards[i].whileAll.bits();
        const std::uint64_t holds = model.guards[i].holds.bits();
        const bool isKept = (state & whileAll) != whileAll || (state & holds) == holds;
        if (!isKept) broken |= std::uint64_t{1} << i;
    }
    return broken;
}

bool canDo(const procedure::Operator& op, std::uint64_t state) {
    return (state & op.needs.bits()) == op.needs.bits() && (state & op.forbids.bits()) == 0;
}

std::uint64_t done(const procedure::Operator& op, std::uint64_t state) {
    return (state & ~op.ends.bits()) | op.gives.bits();
}

bool isEnd(const procedure::Model& model, const procedure::Question& question,
           std::uint64_t state) {
    if (brokenGuards(model, state) != 0) return false;
    for (const int index : question.remaining) {
        const procedure::Operator& op = model.operators[std::size_t(index)];
        if (!canDo(op, state)) return false;
        state = done(op, state);
        if (brokenGuards(model, state) != 0) return false;
    }
    return (state & model.goal.bits()) == model.goal.bits();
}

struct Waiting {
    LeastCost cost;
    std::uint64_t state = 0;
    bool operator<(const Waiting& other) const { return other.cost < cost; }
};

}  // namespace

std::optional<LeastCost> dijkstra(const procedure::Model& model,
                                  const procedure::Question& question) {
    std::unordered_map<std::uint64_t, LeastCost> least{{question.state.bits(), LeastCost{}}};
    std::priority_queue<Waiting> waiting;
    waiting.push({{}, question.state.bits()});
    while (!waiting.empty()) {
        const Waiting here = waiting.top();
        waiting.pop();
        if (least[here.state] < here.cost) continue;
        if (isEnd(model, question, here.state)) return here.cost;
        const std::uint64_t broken = brokenGuards(model, here.state);
        for (const int index : question.operators) {
            const procedure::Operator& op = model.operators[std::size_t(index)];
            if (!canDo(op, here.state)) continue;
            const std::uint64_t next = done(op, here.state);
            if ((brokenGuards(model, next) & ~broken) != 0) continue;
            const LeastCost cost{here.cost.strain + op.strain, here.cost.seconds + op.seconds,
                                 here.cost.count + 1};
            const auto [known, isNew] = least.try_emplace(next, cost);
            if (!isNew && known->second <= cost) continue;
            known->second = cost;
            waiting.push({cost, next});
        }
    }
    return std::nullopt;
}

}  // namespace bench
