// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "procedure/check.h"
#include "procedure/recovery.h"

namespace procedure {

/// What was seen at one moment of the nominal run: one or more lapses, or a step that was left out.
/// Steps and lapses are indices into the model.
struct LapseQuestion {
    Seen seen = Seen::After;
    int step = 0;
    std::vector<int> lapses = {};
    std::optional<int> leftOut = {};  ///< not later than `step`; only seen after it
    std::optional<int> happened =
        {};  ///< noticed late: it happened after this step, not later than `step`
    Company company = Company::WithHelper;
};

struct LapseAnswer {
    packs::Action action = packs::Action::Recover;
    PlanAnswer plan;
};

LapseAnswer answerQuestion(const Model& model, const LapseQuestion& question,
                           std::size_t limit = mostStates);

}  // namespace procedure
