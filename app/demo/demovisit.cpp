// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/demovisit.h"

#include "practice/practice.h"

namespace app {
namespace {

using base::Outcome;

Outcome visitSays(desk::Desk& desk, record::Payload payload) {
    if (auto said = desk.say(std::move(payload)); !said) return said.error();
    return base::Done{};
}

practice::OpenVisit openingOf(const desk::Desk& desk, const base::LearnerId& learner,
                              const procedure::Taught& taught) {
    const record::AddLine& line = desk.view().record->lines.back().said;
    practice::OpenVisit visit;
    visit.line = line.line;
    visit.pack = {taught.pack.id, taught.pack.version, taught.digest};
    visit.way = practice::Way::ReturnDemonstration;
    visit.on = practice::On::PracticeArm;
    visit.learner = learner;
    visit.identifiers = {"name", "born"};
    visit.checkedWithPatient = true;
    visit.kit = {line.dressing, line.securement, line.antiseptic, true};
    return visit;
}

/// Runs the phases of the step in hand, then marks it.
Outcome playStep(desk::Desk& desk, base::ManualClock& clock, const procedure::Taught& taught) {
    const practice::State& state = desk.view().visit()->state;
    const std::string step = practice::recordInHand(state)->step;
    while (const packs::Phase* phase =
               practice::phaseToDo(taught.pack, desk.view().visit()->state)) {
        if (auto bad = visitSays(desk, practice::BeginPhase{step, phase->id}); !bad) return bad;
        clock.advanceMs(phase->targetSeconds * 1000 + 400);
        practice::EndPhase end;
        end.step = step;
        end.phase = phase->id;
        if (auto bad = visitSays(desk, end); !bad) return bad;
    }
    clock.advanceMs(packs::findStep(taught.pack, step).step->handsOnSeconds * 1000);
    practice::SeeStep seen;
    seen.step = step;
    return visitSays(desk, seen);
}

}  // namespace

Outcome playVisit(desk::Desk& desk, base::ManualClock& clock, const base::LearnerId& learner) {
    if (auto opened = desk.openRecord(desk.view().record->id, learner); !opened)
        return opened.error();
    const procedure::TaughtPtr taught = desk.packFor(learner);
    if (!taught) return base::Error{base::Code::PackUnknown};
    desk::Command open = desk.command(openingOf(desk, learner, *taught));
    open.visit = base::VisitId::random();
    if (auto said = desk.handle(open); !said) return said.error();
    while (practice::recordInHand(desk.view().visit()->state))
        if (auto bad = playStep(desk, clock, *taught); !bad) return bad;
    return visitSays(desk, practice::CloseVisit{});
}

}  // namespace app
