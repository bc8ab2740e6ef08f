// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/checkparts.h"

namespace procedure {
namespace {

void checkGuards(CheckRun& run, Conditions state, const std::string& when) {
    for (std::size_t i = 0; i < run.model.guards.size(); ++i) {
        const ModelGuard& guard = run.model.guards[i];
        if (isKept(guard, state)) continue;
        run.error("/guards/" + std::to_string(i),
                  when + " this guard is broken: " + run.names(guard.holds.without(state)) +
                      " does not hold.",
                  "Have a step before it give what is missing, or narrow the guard's \"while\".");
    }
}

void checkFit(CheckRun& run, const Operator& op, Conditions state, const std::string& at) {
    const Conditions missing = op.needs.without(state);
    const Conditions inTheWay = op.forbids.within(state);
    if (!missing.isEmpty())
        run.error(
            at + "/needs",
            "The step does not fit in its turn: " + run.names(missing) + " does not hold then.",
            "Move it behind a step that gives this, or have one before it give it.");
    if (!inTheWay.isEmpty())
        run.error(at + "/forbids",
                  "The step does not fit in its turn: " + run.names(inTheWay) + " holds then.",
                  "Move it behind a step that ends this, or have one before it end it.");
}

/// What a later step, a recovery, a guard or the goal looks at.
Conditions wantedAfter(const Model& model, std::size_t step) {
    Conditions wanted = model.goal;
    for (const ModelGuard& guard : model.guards)
        wanted = wanted.with(guard.whileAll).with(guard.holds);
    for (std::size_t later = step + 1; later < model.operators.size(); ++later)
        wanted = wanted.with(model.operators[later].needs).with(model.operators[later].forbids);
    return wanted;
}

}  // namespace

void checkNominalRun(CheckRun& run) {
    const Model& model = run.model;
    if (model.stepCount == 0)
        run.error("/competencies", "A pack has at least one step.",
                  "Write the steps, in the order in which they are taught.");
    Conditions state = model.start;
    checkGuards(run, state, "At the start");
    for (int step = 0; step < model.stepCount; ++step) {
        const Operator& op = model.operators[step];
        checkFit(run, op, state, run.pointers[step]);
        state = apply(op, state);
        checkGuards(run, state, "After the step \"" + op.id + "\"");
    }
    const Conditions missing = model.goal.without(state);
    if (!missing.isEmpty())
        run.error("/goal", "At the end " + run.names(missing) + " does not hold.",
                  "Have a step give it and none after it end it, or take it out of the goal.");
}

void checkSkips(CheckRun& run) {
    const std::vector<packs::StepPlace> places = packs::stepsInOrder(run.pack);
    for (std::size_t step = 0; step < places.size(); ++step) {
        if (!places[step].step->skip) continue;
        const Operator& op = run.model.operators[step];
        const Conditions missed = op.gives.with(op.ends).within(wantedAfter(run.model, step));
        if (!missed.isEmpty())
            run.error(run.pointers[step] + "/skip",
                      "The step can't be skipped: what it does to " + run.names(missed) +
                          " matters later.",
                      "Take \"skip\" out, or what looks at it later.");
    }
}

}  // namespace procedure
