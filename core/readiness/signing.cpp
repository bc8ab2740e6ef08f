// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "readiness/signing.h"

#include <algorithm>

#include "readiness/demonstrations.h"

namespace readiness {
namespace {

/// Who saw a step of the competency in this demonstration.
std::vector<base::StaffId> whoSaw(const record::Visit& visit, const packs::Competency& competency,
                                  const packs::Pack& pack) {
    std::vector<base::StaffId> found;
    for (const packs::Step& step : competency.steps) {
        const int number = packs::findStep(pack, step.id).number;
        const auto& seenBy = visit.state.steps.at(static_cast<std::size_t>(number - 1)).seenBy;
        if (seenBy && std::find(found.begin(), found.end(), *seenBy) == found.end())
            found.push_back(*seenBy);
    }
    return found;
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
        auto saw = whoSaw(*shown.back(), *one, taught.pack);
        if (saw.size() > 1)
            result.shared.push_back({state.competency, std::move(saw)});
        else if (!saw.empty() && saw.front() != teacher)
            result.others.push_back({state.competency, saw.front()});
        else
            result.competencies.push_back(state.competency);
    }
    return result;
}

}  // namespace readiness
