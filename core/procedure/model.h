// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "packs/pack.h"
#include "procedure/conditions.h"

namespace procedure {

/// A step or a recovery in numbers. Step number k of the language is operators[k - 1].
struct Operator {
    std::string id;
    Conditions needs, forbids, gives, ends;
    std::int64_t seconds = 1;       ///< hands_on_s plus the least seconds of its phases
    std::int64_t usualSeconds = 1;  ///< hands_on_s plus the target seconds of its phases
    int strain = 0;
    packs::By by = packs::By::Either;
    bool isRepeatable = false;
    std::vector<int> lapses;  ///< indices into Model::lapses of those listed at it
};

struct ModelGuard {
    std::string id;
    Conditions whileAll, holds;
};

/// A lapse, or several seen at one moment.
struct ModelLapse {
    std::string id;
    Conditions breaks, sets;
    packs::Action action = packs::Action::Recover;
};

/// A pack compiled to numbers: what the rules of the procedure are reckoned with.
struct Model {
    std::vector<std::string> conditionIds;
    std::vector<Operator> operators;  ///< the steps in teaching order, then the recoveries
    int stepCount = 0;
    std::vector<ModelGuard> guards;
    std::vector<ModelLapse> lapses;
    Conditions start, goal, clean;

    bool isRecovery(int index) const { return index >= stepCount; }
    /// Index of the step or recovery with this id.
    std::optional<int> operatorIndex(const std::string& id) const;
    std::optional<int> lapseIndex(const std::string& id) const;
};

/// Compiles a pack that the reader has passed (at most 64 conditions, no dangling id).
Model compile(const packs::Pack& pack);

/// All `needs` hold and none of `forbids` does.
bool fits(const Operator& op, Conditions state);
/// (state without `ends`) with `gives`; whether it fits is the caller's question.
Conditions apply(const Operator& op, Conditions state);

bool isKept(const ModelGuard& guard, Conditions state);
bool guardsKept(const Model& model, Conditions state);
/// Whether some guard that `before` keeps is not kept by `after`.
bool breaksAGuard(const Model& model, Conditions before, Conditions after);

/// S0 … Sn of the nominal run: element k is the state after step k. Does not ask whether steps fit.
std::vector<Conditions> nominalStates(const Model& model);

/// (state without `breaks`) with `sets`. With Sk it is the lapse seen after step k, with Sk-1 the
/// lapse seen during step k.
Conditions afterLapse(const ModelLapse& lapse, Conditions state);

/// The lapse happened before the operators `doneSince` (indices, in the order they were really
/// done, ways back included), which led to `present`, and is noticed only now.
Conditions noticedLate(const Model& model, const ModelLapse& lapse, std::span<const int> doneSince,
                       Conditions present);

/// The lapse of having left out an operator whose turn came when `before` held. It happened right
/// after its place: use noticedLate with what was done since.
ModelLapse leftOut(const Operator& op, Conditions before);

/// Several lapses seen at one moment as one: all breaks, all sets, the gravest action.
ModelLapse together(std::span<const ModelLapse> lapses);

}  // namespace procedure
