// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/search.h"

#include <algorithm>
#include <bit>

namespace procedure {
namespace {

Cost costOf(const Operator& op) { return {op.strain, op.seconds, 1}; }

Cost sum(const Cost& a, const Cost& b) {
    return {a.strain + b.strain, a.seconds + b.seconds, a.count + b.count};
}

template <class Visit>
void eachOf(Conditions all, Visit visit) {
    for (std::uint64_t left = all.bits(); left != 0; left &= left - 1)
        visit(std::countr_zero(left));
}

template <class Costs>
auto& at(Costs& costs, int i) {
    return costs[static_cast<std::size_t>(i)];
}

/// The bound knows nothing of the number of operators.
Cost boundOf(const Operator& op) { return {op.strain, op.seconds, 0}; }

}  // namespace

Search::Search(const Model& model, const Question& question, std::size_t limit)
    : m_model(model), m_question(question), m_remaining(model, question.remaining), m_limit(limit) {
    findBounds();
}

void Search::findBounds() {
    for (const int index : m_question.operators) {
        const Operator& op = m_model.operators.at(static_cast<std::size_t>(index));
        const Cost cost = boundOf(op);
        eachOf(op.gives, [&](int i) {
            if (!m_givable.has(i) || cost < at(m_toGive, i)) at(m_toGive, i) = cost;
        });
        eachOf(op.ends, [&](int i) {
            if (!m_endable.has(i) || cost < at(m_toEnd, i)) at(m_toEnd, i) = cost;
        });
        m_givable = m_givable.with(op.gives);
        m_endable = m_endable.with(op.ends);
    }
}

Cost Search::boundFrom(Conditions state) const {
    Cost bound;
    eachOf(m_remaining.must().without(state),
           [&](int i) { bound = std::max(bound, at(m_toGive, i)); });
    eachOf(m_remaining.mustNot().within(state),
           [&](int i) { bound = std::max(bound, at(m_toEnd, i)); });
    return bound;
}

bool Search::isHopeless(Conditions state) const {
    return !m_givable.contains(m_remaining.must().without(state)) ||
           !m_endable.contains(m_remaining.mustNot().within(state));
}

std::optional<std::size_t> Search::reach(Conditions state, const Cost& cost) {
    if (isHopeless(state)) return std::nullopt;
    const auto [found, isNew] = m_index.try_emplace(state.bits(), m_places.size());
    const std::size_t at = found->second;
    if (isNew) {
        Place place{state, cost, boundFrom(state)};
        place.isEnd = m_remaining.isOpenFrom(state);
        m_places.push_back(place);
    } else if (cost < m_places[at].cost) {
        m_places[at].cost = cost;
    } else {
        return at;
    }
    m_queue.push_back({sum(cost, m_places[at].bound), at});
    std::push_heap(m_queue.begin(), m_queue.end());
    return at;
}

void Search::expand(std::size_t from) {
    const Conditions state = m_places[from].state;
    const Cost cost = m_places[from].cost;
    m_places[from].edges = m_edges.size();
    for (const int index : m_question.operators) {
        const Operator& op = operatorAt(index);
        if (!fits(op, state)) continue;
        const Conditions next = apply(op, state);
        if (next == state || breaksAGuard(m_model, state, next)) continue;
        if (const auto to = reach(next, sum(cost, costOf(op)))) m_edges.push_back({index, *to});
    }
    m_places[from].edgesEnd = m_edges.size();
}

bool Search::settleUntilEnd() {
    while (!m_queue.empty() && m_places.size() <= m_limit) {
        std::pop_heap(m_queue.begin(), m_queue.end());
        const std::size_t at = m_queue.back().place;
        m_queue.pop_back();
        if (m_places[at].isSettled) continue;
        m_places[at].isSettled = true;
        m_settled.push_back(at);
        if (m_places[at].isEnd) return true;
        expand(at);
    }
    return false;
}

const Search::Edge* Search::leastEdge(const Place& from) const {
    for (std::size_t i = from.edges; i < from.edgesEnd; ++i) {
        const Place& to = m_places[m_edges[i].to];
        if (to.leadsToEnd && to.cost == sum(from.cost, costOf(operatorAt(m_edges[i].op))))
            return &m_edges[i];
    }
    return nullptr;
}

void Search::markWayBack(const Cost& least) {
    for (Place& place : m_places) place.leadsToEnd = place.isEnd && place.cost == least;
    for (auto at = m_settled.rbegin(); at != m_settled.rend(); ++at) {
        Place& place = m_places[*at];
        if (!place.leadsToEnd) place.leadsToEnd = leastEdge(place) != nullptr;
    }
}

Plan Search::walk(const Cost& least) const {
    Plan plan;
    plan.seconds = least.seconds;
    plan.strain = static_cast<int>(least.strain);
    for (std::size_t at = 0; !m_places[at].isEnd;) {
        const Edge& edge = *leastEdge(m_places[at]);
        plan.operators.push_back(edge.op);
        at = edge.to;
    }
    return plan;
}

PlanAnswer Search::run() {
    PlanAnswer answer;
    if (m_remaining.isPossible()) {
        reach(m_question.state, Cost{});
        if (settleUntilEnd()) {
            const Cost least = m_places[m_settled.back()].cost;
            markWayBack(least);
            answer.plan = walk(least);
            answer.outcome = PlanOutcome::Found;
        } else if (m_places.size() > m_limit) {
            answer.outcome = PlanOutcome::TooLarge;
        }
    }
    answer.stored = m_places.size();
    return answer;
}

}  // namespace procedure
