// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/fields.h"
#include "packs/opening.h"
#include "packs/references.h"

namespace packs {
namespace {

constexpr Range anySeconds{.least = 1, .most = 86'400};

/// Here an id is any string, since only its being the same counts.
void readStepForRecovery(Fields& fields, Step& step) {
    fields.words("id", step.id);
    fields.list("needs", step.needs);
    fields.list("forbids", step.forbids);
    fields.list("gives", step.gives);
    fields.list("ends", step.ends);
    fields.whole("hands_on_s", step.handsOnSeconds, anySeconds);
    fields.flag("repeatable", step.repeatable);
    fields.whole("strain", step.strain, {.least = 0, .most = 9}, Need::Optional);
    fields.choice("by", step.by, Need::Optional);
    fields.items("phases", step.phases, [](Fields& inner, Phase& phase) {
        inner.whole("min_s", phase.minSeconds, anySeconds);
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
