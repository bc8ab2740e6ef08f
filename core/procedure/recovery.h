// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "procedure/model.h"

namespace procedure {

/// The way back from a lapse: operators (indices into Model::operators) in the order to do them.
/// The empty plan is a plan: nothing has to be done again.
struct Plan {
    std::vector<int> operators;
    std::int64_t seconds = 0;
    int strain = 0;

    bool operator==(const Plan&) const = default;
};

/// Whether a helper is at hand, so that operators `by: "helper"` may be part of the way back.
enum class Company { WithHelper, Alone };

/// One question to the search. `remaining` are the steps still to be done, in their order;
/// `operators` those that may be part of the way back, in pack order. Both hold indices.
struct Question {
    Conditions state;
    std::vector<int> remaining;
    std::vector<int> operators;
};

/// The question of the language: all steps from number `nextStep` (1 … n+1) on remain; operators
/// are the repeatable steps before it, the steps `alsoRepeatable` (indices; a step that was left
/// out), and all recoveries; alone, none that only a helper does.
Question questionAt(const Model& model, Conditions state, int nextStep, Company company,
                    std::span<const int> alsoRepeatable = {});

enum class PlanOutcome {
    Found,
    None,       ///< there is no way back
    NotSought,  ///< the lapse says stop and call
    TooLarge,   ///< the search would store more states than the limit
};

struct PlanAnswer {
    PlanOutcome outcome = PlanOutcome::None;
    Plan plan = {};          ///< only where Found
    std::size_t stored = 0;  ///< states the search stored
};

constexpr std::size_t mostStates = 1'000'000;

/// The one least plan: least strain, then least seconds, then fewest operators, then first in pack
/// order. Never NotSought.
PlanAnswer findPlan(const Model& model, const Question& question, std::size_t limit = mostStates);

/// The same, unless `action` is stop-and-call: then NotSought, and nothing is searched.
PlanAnswer answerLapse(const Model& model, packs::Action action, const Question& question,
                       std::size_t limit = mostStates);

/// Whether the remaining steps fit in order from `state`, every guard is kept there and after each
/// of them, and the end contains the goal: what a plan has to reach.
bool isWayOpen(const Model& model, std::span<const int> remaining, Conditions state);

}  // namespace procedure
