// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learners/personpage.h"
#include "readiness/signing.h"

namespace ui {
namespace {

bool isAsked(const readiness::Readiness& found) {
    for (const readiness::Finding& finding : found.findings)
        if (finding.rule == readiness::Rule::TeachBack || finding.rule == readiness::Rule::Drills)
            if (!finding.met) return false;
    return true;
}

bool hasToSign(const desk::Desk& desk, const record::Learner& learner,
               const readiness::Readiness& found) {
    const auto taught = desk.packFor(learner.said.learner);
    if (!taught || !desk.view().teacher) return false;
    return !readiness::signableBy(*desk.view().teacher, *desk.view().record, learner.said.learner,
                                  *taught, found)
                .competencies.empty();
}

}  // namespace

Next nextFor(const desk::Desk& desk) {
    const desk::RecordView& view = desk.view();
    if (!view.record) return Next::Learner;
    if (view.record->openVisit()) return Next::GoOn;
    if (view.record->linesInUse().empty()) return Next::Line;
    const record::Learner* learner = view.learnerInView();
    if (!learner) return Next::Learner;
    if (!learner->said.isPatient && !(learner->consent && learner->consent->said.toTeach))
        return Next::Consent;
    const auto found = desk.readinessOf(learner->said.learner);
    if (!found || view.record->visitsOf(learner->said.learner).empty()) return Next::Start;
    if (hasToSign(desk, *learner, *found)) return Next::Sign;
    if (!isAsked(*found)) return Next::AskBack;
    return found->ready && found->allSigned() ? Next::Papers : Next::Start;
}

}  // namespace ui
