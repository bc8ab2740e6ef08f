// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/packinview.h"

#include <algorithm>

#include "desk/fit.h"

namespace desk {
namespace {

procedure::TaughtPtr fittingBest(const record::Record& record, const record::Learner& learner,
                                 const procedure::Shelf& shelf, const std::string& today) {
    const record::Line* line = record.lineFor(learner.said.learner);
    if (!line) return nullptr;
    return bestFit(shelf, {.record = record,
                           .learner = learner,
                           .line = *line,
                           .kit = {.dressing = line->said.dressing,
                                   .securement = line->said.securement,
                                   .antiseptic = line->said.antiseptic},
                           .today = today});
}

}  // namespace

std::vector<procedure::TaughtPtr> packsTaught(const record::Record& record,
                                              const base::LearnerId& learner) {
    std::vector<procedure::TaughtPtr> found;
    const auto visits = record.visitsOf(learner);
    for (auto at = visits.rbegin(); at != visits.rend(); ++at) {
        const procedure::TaughtPtr& taught = (*at)->taught;
        const bool isKnown = std::any_of(found.begin(), found.end(), [&](const auto& one) {
            return taught && one->digest == taught->digest;
        });
        if (taught && !isKnown) found.push_back(taught);
    }
    return found;
}

procedure::TaughtPtr packInView(const RecordView& view, const base::LearnerId& learner,
                                const procedure::Shelf& shelf, const std::string& today) {
    const record::Learner* person = view.record ? view.record->learner(learner) : nullptr;
    if (!person) return nullptr;
    const auto packs = packsTaught(*view.record, learner);
    const auto first = [&packs](const auto& fits) {
        const auto found = std::find_if(packs.begin(), packs.end(), fits);
        return found == packs.end() ? nullptr : *found;
    };
    const record::Visit* open = view.record->openVisit();
    if (open && open->opened.learner == learner && open->taught) return open->taught;
    if (const auto chosen = first([&](const auto& one) { return one->digest == view.pack; }))
        return chosen;
    const auto best = fittingBest(*view.record, *person, shelf, today);
    if (packs.empty()) return best;
    const auto fitting =
        first([&](const auto& one) { return best && one->pack.id == best->pack.id; });
    return fitting ? fitting : packs.front();
}

}  // namespace desk
