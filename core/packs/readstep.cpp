// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/readparts.h"

namespace packs {
namespace {

void readPhase(Fields& fields, Phase& phase) {
    fields.id("id", phase.id);
    fields.text("label", phase.label);
    fields.choice("kind", phase.kind);
    fields.whole("min_s", phase.minSeconds, secondsRange);
    fields.whole("target_s", phase.targetSeconds, secondsRange);
    fields.whole("max_s", phase.maxSeconds, secondsRange);
    fields.choice("motion", phase.motion);
    fields.text("until", phase.until);
    fields.words("source", phase.source);
}

void readPicture(Fields& fields, Picture& picture) {
    fields.words("focus", picture.focus);
    fields.choice("motion", picture.motion);
}

void readUse(Fields& fields, Use& use) {
    fields.words("supply", use.supply);
    fields.whole("n", use.count, {.least = 1, .most = 1000});
}

void readStepMeasure(Fields& fields, StepMeasure& measure) {
    fields.words("id", measure.id);
    fields.choice("when", measure.when);
    fields.choice("by", measure.by, Need::Optional);
}

void readStepWords(Fields& fields, Step& step) {
    fields.id("id", step.id);
    fields.text("do", step.doText);
    fields.text("why", step.why);
    fields.text("observe", step.observe);
    fields.object("picture", step.picture, readPicture);
    fields.words("source", step.source);
    fields.text("skip", step.skip);
}

}  // namespace

void readCondition(Fields& fields, Condition& condition) {
    fields.id("id", condition.id);
    fields.text("label", condition.label);
    fields.choice("lane", condition.lane);
    fields.flag("clean", condition.clean);
}

void readGuard(Fields& fields, Guard& guard) {
    fields.id("id", guard.id);
    fields.list("while", guard.whileAll);
    fields.list("holds", guard.holds);
    fields.text("why", guard.why);
}

void readLaneRule(Fields& fields, LaneRule& rule) {
    fields.choice("lane", rule.lane);
    fields.choice("shows", rule.shows);
    fields.list("while", rule.whileAll);
    if (rule.whileAll.empty())
        fields.fault("while", "A lane shows something while a condition holds.",
                     "Name at least one condition of this lane.");
}

void readOperator(Fields& fields, Step& step) {
    fields.list("needs", step.needs);
    fields.list("forbids", step.forbids);
    fields.list("gives", step.gives);
    fields.list("ends", step.ends);
    fields.whole("hands_on_s", step.handsOnSeconds, secondsRange);
    fields.flag("repeatable", step.repeatable);
    fields.whole("strain", step.strain, {.least = 0, .most = 9}, Need::Optional);
    fields.choice("by", step.by, Need::Optional);
}

void readStep(Fields& fields, Step& step) {
    readStepWords(fields, step);
    readOperator(fields, step);
    fields.items("phases", step.phases, readPhase);
    fields.flag("continuous", step.continuous);
    fields.flag("critical", step.critical);
    fields.items("uses", step.uses, readUse);
    fields.object("measure", step.measure, readStepMeasure);
    fields.list("lapses", step.lapses);
}

void readCompetency(Fields& fields, Competency& competency) {
    fields.id("id", competency.id);
    fields.text("title", competency.title);
    fields.text("why", competency.why);
    fields.flag("critical", competency.critical);
    fields.items("steps", competency.steps, readStep);
}

void readLapse(Fields& fields, Lapse& lapse) {
    fields.id("id", lapse.id);
    fields.text("label", lapse.label);
    fields.list("breaks", lapse.breaks);
    fields.list("sets", lapse.sets);
    fields.list("found_at", lapse.foundAt);
    fields.choice("severity", lapse.severity);
    fields.choice("action", lapse.action);
    fields.text("say", lapse.say);
    fields.words("card", lapse.card);
    fields.words("source", lapse.source);
}

void readAway(Fields& fields, Away& away) {
    fields.whole("after_s", away.afterSeconds, secondsRange);
    fields.words("lapse", away.lapse);
}

}  // namespace packs
