// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/search.h"

#include <algorithm>

namespace procedure {
namespace {

Cost costOf(const Operator& op) { return {op.strain, op.seconds, 1}; }

Cost sum(const Cost& a, const Cost& b) {
    return {a.strain + b.strain, a.seconds + b.seconds, a.count + b.count};
}

/// The bound knows nothing of the number of operators.
Cost boundOf(const Operator& op) { return {op.strain, op.seconds, 0}; }

}  // namespace

Search::Search(const Model& model, const Question& question, std::size_t limit)
    : m_model(model),
      m_question(question),
      m_remaining(model, question.remaining),
      m_limit(limit),
      m_toGive(Conditions::most),
      m_toEnd(Conditions::most) {
    findBounds();
}

void Search::findBounds() {
    for (const int index : m_question.operators) {
        const Operator& op = m_model.operators.at(static_cast<std::size_t>(index));
        for (int i = 0; i < Conditions::most; ++i) {
            if (op.gives.has(i) && (!m_givable.has(i) || boundOf(op) < m_toGive[i]))
                m_toGive[i] = boundOf(op);
            if (op.ends.has(i) && (!m_endable.has(i) || boundOf(op) < m_toEnd[i]))
                m_toEnd[i] = boundOf(op);
        }
        m_givable = m_givable.with(op.gives);
        m_endable = m_endable.with(op.ends);
    }
}

Cost Search::boundFrom(Conditions state) const {
    Cost bound;
    const Conditions missing = m_remaining.must().without(state);
    const Conditions excess = m_remaining.mustNot().within(state);
    for (int i = 0; i < Conditions::most; ++i) {
        if (missing.has(i)) bound = std::max(bound, m_toGive[i]);
        if (excess.has(i)) bound = std::max(bound, m_toEnd[i]);
    }
    return bound;
}

bool Search::isAllowed(const Operator& op, Conditions state, Conditions next) const {
    return fits(op, state) && next != state && !breaksAGuard(m_model, state, next);
}

bool Search::isHopeless(Conditions state) const {
    return !m_givable.contains(m_remaining.must().without(state)) ||
           !m_endable.contains(m_remaining.mustNot().within(state));
}

void Search::reach(Conditions state, const Cost& cost) {
    if (isHopeless(state)) return;
    const auto [found, isNew] = m_index.try_emplace(state.bits(), m_places.size());
    if (isNew) {
        Place place{state, cost, boundFrom(state)};
        place.isEnd = m_remaining.isOpenFrom(state);
        m_places.push_back(place);
    } else if (cost < m_places[found->second].cost) {
        m_places[found->second].cost = cost;
    } else {
        return;
    }
    m_queue.push_back({sum(cost, m_places[found->second].bound), found->second});
    std::push_heap(m_queue.begin(), m_queue.end());
}

void Search::expand(std::size_t from) {
    for (const int index : m_question.operators) {
        const Operator& op = m_model.operators[static_cast<std::size_t>(index)];
        const Conditions state = m_places[from].state;
        const Conditions next = apply(op, state);
        if (isAllowed(op, state, next)) reach(next, sum(m_places[from].cost, costOf(op)));
    }
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

std::optional<std::size_t> Search::leastEdge(const Place& from, const Operator& op) const {
    const Conditions next = apply(op, from.state);
    if (!isAllowed(op, from.state, next)) return std::nullopt;
    const auto found = m_index.find(next.bits());
    if (found == m_index.end()) return std::nullopt;
    if (m_places[found->second].cost != sum(from.cost, costOf(op))) return std::nullopt;
    return found->second;
}

void Search::markWayBack(const Cost& least) {
    for (Place& place : m_places) place.leadsToEnd = place.isEnd && place.cost == least;
    for (auto at = m_settled.rbegin(); at != m_settled.rend(); ++at) {
        Place& place = m_places[*at];
        for (const int index : m_question.operators) {
            if (place.leadsToEnd) break;
            const auto next = leastEdge(place, m_model.operators[static_cast<std::size_t>(index)]);
            place.leadsToEnd = next && m_places[*next].leadsToEnd;
        }
    }
}

Plan Search::walk(const Cost& least) const {
    Plan plan;
    plan.seconds = least.seconds;
    plan.strain = static_cast<int>(least.strain);
    for (std::size_t at = 0; !m_places[at].isEnd;) {
        for (const int index : m_question.operators) {
            const auto next =
                leastEdge(m_places[at], m_model.operators[static_cast<std::size_t>(index)]);
            if (!next || !m_places[*next].leadsToEnd) continue;
            plan.operators.push_back(index);
            at = *next;
            break;
        }
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
