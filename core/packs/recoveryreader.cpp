// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/opening.h"
#include "packs/readparts.h"
#include "packs/references.h"

namespace packs {
namespace {

/// Here an id is any string, since only its being the same counts.
void readStepForRecovery(Fields& fields, Step& step) {
    fields.words("id", step.id);
    readOperator(fields, step);
    fields.items("phases", step.phases, [](Fields& inner, Phase& phase) {
        inner.whole("min_s", phase.minSeconds, secondsRange);
        phase.targetSeconds = phase.minSeconds;
    });
}

void readAllForRecovery(Fields& fields, Pack& pack) {
    int format = 0;
    fields.whole("pack", format, {.least = 1, .most = 1});
    fields.items("conditions", pack.conditions, [](Fields& inner, Condition& condition) {
        inner.words("id", condition.id);
        inner.flag("clean", condition.clean);
    });
    fields.list("start", pack.start);
    fields.list("goal", pack.goal);
    fields.items("guards", pack.guards, [](Fields& inner, Guard& guard) {
        inner.list("while", guard.whileAll);
        inner.list("holds", guard.holds);
    });
    fields.items("competencies", pack.competencies, [](Fields& inner, Competency& competency) {
        inner.items("steps", competency.steps, readStepForRecovery);
    });
    fields.items("recoveries", pack.recoveries, readStepForRecovery);
    fields.items("lapses", pack.lapses, [](Fields& inner, Lapse& lapse) {
        inner.words("id", lapse.id);
        inner.list("breaks", lapse.breaks);
        inner.list("sets", lapse.sets);
        inner.choice("action", lapse.action);
    });
}

}  // namespace

Reading readForRecovery(std::string_view bytes) {
    const Opened opened = open(bytes);
    if (opened.outcome != ReadOutcome::Refused) return opened.refusal();
    ReadingState state{.faults = opened.tree.faults, .strictness = Strictness::OtherKeysIgnored};
    Pack pack;
    {
        Fields fields(opened.tree.root, "", state);
        if (fields.isObject()) readAllForRecovery(fields, pack);
    }
    checkProcedureReferences(pack, opened.tree.root, state.faults);
    return close(std::move(pack), state.faults);
}

}  // namespace packs
