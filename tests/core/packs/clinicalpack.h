// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <vector>

#include "packs/reader.h"
#include "procedure/check.h"
#include "procedure/model.h"
#include "support/paths.h"

namespace clinical {

using Ids = std::vector<std::string>;

inline std::string sharedFile(const std::string& name) {
    std::ifstream file(support::sourceDir() + "/shared/" + name);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// A pack of the project, read by the project's own reader, with its model and its ways back.
struct Taken {
    packs::Pack pack;
    procedure::Model model;
    procedure::CheckReport report;

    explicit Taken(const std::string& name)
        : pack(packs::readPack(sharedFile("packs/" + name + ".json")).value()),
          model(procedure::compile(pack)),
          report(procedure::check(pack)) {}

    const packs::Step& step(const std::string& id) const { return *packs::findStep(pack, id).step; }

    procedure::Conditions conditions(const Ids& ids) const {
        procedure::Conditions all;
        for (std::size_t i = 0; i < model.conditionIds.size(); ++i)
            if (std::ranges::find(ids, model.conditionIds[i]) != ids.end())
                all = all.with(procedure::Conditions::single(static_cast<int>(i)));
        return all;
    }

    procedure::Conditions stateAfter(const std::string& stepId) const {
        const auto index = static_cast<std::size_t>(model.operatorIndex(stepId).value());
        return procedure::nominalStates(model).at(index + 1);
    }

    /// Whether some order of steps and ways back, each as often as one likes but without those in
    /// `without`, could let `target` fit from `state`. What steps end or forbid is left aside, so
    /// that "false" is a proof and "true" is only a chance.
    bool couldReach(procedure::Conditions state, const std::string& target,
                    const Ids& without) const {
        const auto& goal =
            model.operators.at(static_cast<std::size_t>(model.operatorIndex(target).value()));
        for (auto before = state;; before = state) {
            for (const procedure::Operator& op : model.operators)
                if (std::ranges::find(without, op.id) == without.end() && state.contains(op.needs))
                    state = state.with(op.gives);
            if (state.contains(goal.needs)) return true;
            if (state == before) return false;
        }
    }

    /// No order of steps lets `later` be done without one of `earlier`; with them one does.
    bool alwaysAfter(const std::string& later, const Ids& earlier) const {
        return couldReach(model.start, later, {}) && !couldReach(model.start, later, earlier);
    }

    const procedure::WayBack* way(const std::string& stepId, const std::string& lapse,
                                  procedure::Seen seen,
                                  procedure::Company company = procedure::Company::Alone) const {
        for (const procedure::WayBack& each : report.ways)
            if (each.step == stepId && each.lapse == lapse && each.seen == seen &&
                each.company == company)
                return &each;
        return nullptr;
    }

    /// The way back of a lapse seen after the step, alone; empty where there is none.
    Ids wayBack(const std::string& stepId, const std::string& lapse) const {
        const auto* found = way(stepId, lapse, procedure::Seen::After);
        return found == nullptr ? Ids{} : found->plan;
    }

    const packs::Drill& drill(const std::string& id) const { return *packs::find(pack.drills, id); }
};

/// Read and checked once for all tests.
inline const Taken& weekly() {
    static const Taken taken("weekly-dressing-upper-arm");
    return taken;
}

inline const std::string& english(const packs::Text& text) { return text.at("en"); }

inline bool says(const packs::Text& text, const std::string& words) {
    return english(text).find(words) != std::string::npos;
}

inline bool isIn(const std::string& id, const Ids& ids) {
    return std::ranges::find(ids, id) != ids.end();
}

/// Whether all of `parts` occur in `whole` in their order.
inline bool inOrder(const Ids& whole, const Ids& parts) {
    auto at = parts.begin();
    for (const std::string& id : whole)
        if (at != parts.end() && id == *at) ++at;
    return at == parts.end();
}

}  // namespace clinical
