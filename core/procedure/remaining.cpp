// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/remaining.h"

#include <algorithm>

namespace procedure {

Remaining::Remaining(const Model& model, std::span<const int> steps) {
    keepGuards(model);
    for (const int index : steps) {
        const Operator& op = model.operators.at(static_cast<std::size_t>(index));
        need(op.needs);
        forbid(op.forbids);
        pass(op);
        keepGuards(model);
    }
    need(model.goal);
    if (m_must.meets(m_mustNot)) m_isPossible = false;
}

void Remaining::need(Conditions needed) {
    if (needed.meets(m_ended)) m_isPossible = false;
    m_must = m_must.with(needed.without(m_given));
}

void Remaining::forbid(Conditions forbidden) {
    if (forbidden.meets(m_given)) m_isPossible = false;
    m_mustNot = m_mustNot.with(forbidden.without(m_ended));
}

void Remaining::pass(const Operator& op) {
    m_ended = m_ended.with(op.ends).without(op.gives);
    m_given = m_given.without(op.ends).with(op.gives);
}

void Remaining::keepGuards(const Model& model) {
    for (const ModelGuard& guard : model.guards) keep(guard);
}

void Remaining::keep(const ModelGuard& guard) {
    if (guard.whileAll.meets(m_ended)) return;
    When when;
    when.whileAll = guard.whileAll.without(m_given);
    when.holds = guard.holds.without(m_given);
    when.isNeverKept = guard.holds.meets(m_ended);
    if (!when.isNeverKept && when.holds.isEmpty()) return;
    const bool isKnown = std::ranges::any_of(m_guards, [&](const When& other) {
        return other.whileAll == when.whileAll && other.holds == when.holds &&
               other.isNeverKept == when.isNeverKept;
    });
    if (!isKnown) m_guards.push_back(when);
}

bool Remaining::isOpenFrom(Conditions state) const {
    if (!m_isPossible || !state.contains(m_must) || state.meets(m_mustNot)) return false;
    return std::ranges::none_of(m_guards, [&](const When& when) {
        return state.contains(when.whileAll) && (when.isNeverKept || !state.contains(when.holds));
    });
}

}  // namespace procedure
