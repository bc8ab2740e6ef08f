// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/gather.h"

namespace render {

bool wasAt(const record::Visit& visit, const base::LearnerId& learner) {
    const auto& watchers = visit.opened.watchers;
    const bool isShown = visit.opened.way == practice::Way::Show &&
                         std::ranges::find(watchers, learner) != watchers.end();
    return visit.opened.learner == learner || isShown;
}

PaperSignature gatherSignature(const Gathering& from, const record::Stated<record::SignOff>& act) {
    PaperSignature shown{.signedBy = from.stamp(act.origin),
                         .statement = act.said.statement,
                         .learner = act.said.acknowledgement,
                         .isOfPack = act.said.pack.digest == from.taught.digest};
    if (act.said.acknowledgement.drawing && from.context.drawing)
        shown.drawing = from.context.drawing(*act.said.acknowledgement.drawing);
    for (const record::InterpretedBy& one : act.said.interpreters)
        shown.interpreters.push_back(one.who);
    for (const auto& [ledger, size] : act.origin.basis) shown.basisSize += size;
    for (const std::string& id : act.said.competencies) {
        const packs::Competency* part = packs::findCompetency(from.taught.pack, id);
        shown.parts.push_back(part ? from.words(part->title) : id);
    }
    return shown;
}

PaperRemark gatherLate(const Gathering& from, const record::Stated<record::AddLateEntry>& late) {
    return {from.stamp(late.origin), {}, late.said.text, late.said.reason};
}

std::vector<PaperMarked> gatherMarked(const Gathering& from, const record::Learner& learner) {
    std::vector<PaperMarked> all;
    for (const auto& mark : from.record.wrongCharts) {
        const base::CommandId& entry = mark.said.to;
        // One that was marked twice is shown once, as the first mark says.
        if (from.record.wrongChart(entry) != &mark) continue;
        PaperMarked shown{from.stamp(mark.origin), mark.said.why};
        for (const record::Visit& visit : from.record.visits)
            if (visit.origin.entry == entry && wasAt(visit, learner.said.learner))
                shown.visit = gatherVisit(from, visit);
        for (const auto& act : learner.signOffs)
            if (act.origin.entry == entry) shown.signature = gatherSignature(from, act);
        for (const auto& late : from.record.lateEntries)
            if (late.origin.entry == entry &&
                late.said.learner.value_or(learner.said.learner) == learner.said.learner)
                shown.late = gatherLate(from, late);
        if (shown.visit || shown.signature || shown.late) all.push_back(std::move(shown));
    }
    return all;
}

}  // namespace render
