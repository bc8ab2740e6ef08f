// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "readiness/signing.h"

#include "readiness/demonstrations.h"

namespace readiness {
namespace {

/// Someone other than `teacher` who saw a step of the competency in the newest demonstration.
std::optional<base::StaffId> anotherWhoSaw(const base::StaffId& teacher, const record::Visit& visit,
                                           const packs::Competency& competency,
                                           const packs::Pack& pack) {
    for (const packs::Step& step : competency.steps) {
        const int number = packs::findStep(pack, step.id).number;
        const auto& seenBy = visit.state.steps.at(static_cast<std::size_t>(number - 1)).seenBy;
        if (seenBy && *seenBy != teacher) return seenBy;
    }
    return std::nullopt;
}

}  // namespace

Signable signableBy(const base::StaffId& teacher, const record::Record& record,
                    const base::LearnerId& learner, const procedure::Taught& taught,
                    const Readiness& readiness) {
    Signable result;
    const auto shown = demonstrations(record, learner, taught);
    if (shown.empty()) return result;
    for (const CompetencyState& state : readiness.competencies) {
        const packs::Competency* one = packs::findCompetency(taught.pack, state.competency);
        if (!one || state.met != Met::Yes || (state.isSigned && !state.newSinceSigning)) continue;
        if (const auto other = anotherWhoSaw(teacher, *shown.back(), *one, taught.pack))
            result.others.push_back({state.competency, *other});
        else
            result.competencies.push_back(state.competency);
    }
    return result;
}

}  // namespace readiness
