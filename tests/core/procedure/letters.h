// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "procedure/recovery.h"

namespace letters {

/// Hand-made models for tests: a condition is a letter, "ab" is the set of a and b.
inline procedure::Conditions set(std::string_view letters) {
    procedure::Conditions conditions;
    for (const char letter : letters)
        conditions = conditions.with(procedure::Conditions::single(letter - 'a'));
    return conditions;
}

struct Op {
    const char* id = "";
    const char* needs = "";
    const char* forbids = "";
    const char* gives = "";
    const char* ends = "";
    int seconds = 1;
    int strain = 0;
    packs::By by = packs::By::Either;
    bool isRepeatable = false;
};

inline procedure::Operator op(const Op& sketch) {
    procedure::Operator made;
    made.id = sketch.id;
    made.needs = set(sketch.needs);
    made.forbids = set(sketch.forbids);
    made.gives = set(sketch.gives);
    made.ends = set(sketch.ends);
    made.seconds = made.usualSeconds = sketch.seconds;
    made.strain = sketch.strain;
    made.by = sketch.by;
    made.isRepeatable = sketch.isRepeatable;
    return made;
}

struct Sketch {
    std::vector<Op> steps = {};
    std::vector<Op> recoveries = {};
    std::vector<std::pair<const char*, const char*>> guards = {};  ///< while, holds
    const char* start = "";
    const char* goal = "";
    const char* clean = "";
};

inline procedure::Model model(const Sketch& sketch) {
    procedure::Model made;
    for (const Op& step : sketch.steps) made.operators.push_back(op(step));
    made.stepCount = static_cast<int>(sketch.steps.size());
    for (const Op& recovery : sketch.recoveries) made.operators.push_back(op(recovery));
    for (const auto& [whileAll, holds] : sketch.guards)
        made.guards.push_back({"guard", set(whileAll), set(holds)});
    made.start = set(sketch.start);
    made.goal = set(sketch.goal);
    made.clean = set(sketch.clean);
    return made;
}

inline procedure::ModelLapse lapse(const char* breaks, const char* sets = "",
                                   packs::Action action = packs::Action::Recover) {
    return {"lapse", set(breaks), set(sets), action};
}

/// The ids of a plan in one string: "a b c".
inline std::string ids(const procedure::Model& model, const procedure::Plan& plan) {
    std::string text;
    for (const int index : plan.operators)
        text += (text.empty() ? "" : " ") + model.operators.at(static_cast<std::size_t>(index)).id;
    return text;
}

}  // namespace letters
