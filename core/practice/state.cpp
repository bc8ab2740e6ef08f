// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/state.h"

#include <algorithm>

namespace practice {
namespace {

bool wasDone(const StepRecord& record, const std::string& phase) {
    return std::any_of(record.phases.begin(), record.phases.end(), [&](const PhaseRun& run) {
        return run.phase == phase && run.end == PhaseEnd::Done;
    });
}

bool wasShort(const StepRecord& record) {
    return std::any_of(record.phases.begin(), record.phases.end(),
                       [](const PhaseRun& run) { return run.end == PhaseEnd::StoppedShort; });
}

bool hasUncaughtLapse(const StepRecord& record, const State& state) {
    return std::any_of(record.lapses.begin(), record.lapses.end(), [&](std::size_t index) {
        const LapseRecord& lapse = state.lapses.at(index);
        // To have been shown what was to be found is help, whoever brought it about.
        if (lapse.found) return !lapse.withdrawn && lapse.caught == Caught::Shown;
        return lapse.isLearners() && lapse.caught != Caught::Alone;
    });
}

}  // namespace

std::optional<int> inHand(const State& state) {
    if (state.wayBack) {
        if (state.wayBack->outcome != procedure::PlanOutcome::Found) return std::nullopt;
        return state.wayBack->operators.at(state.wayBack->done);
    }
    if (state.remaining.empty()) return std::nullopt;
    return state.remaining.front();
}

StepRecord* recordInHand(State& state) {
    if (!inHand(state)) return nullptr;
    if (state.wayBack) return &state.wayBack->steps.at(state.wayBack->done);
    return &state.steps.at(static_cast<std::size_t>(state.remaining.front()));
}

const StepRecord* recordInHand(const State& state) {
    return recordInHand(const_cast<State&>(state));  // the lookup itself changes nothing
}

const PhaseRun* runningPhase(const State& state) {
    const StepRecord* record = recordInHand(state);
    if (!record || record->phases.empty()) return nullptr;
    const PhaseRun& last = record->phases.back();
    return last.end == PhaseEnd::Running ? &last : nullptr;
}

const packs::Phase* phaseToDo(const packs::Pack& pack, const State& state) {
    const StepRecord* record = recordInHand(state);
    if (!record) return nullptr;
    const packs::Step* step = packs::findStep(pack, record->step).step;
    if (!step) return nullptr;
    for (const packs::Phase& phase : step->phases)
        if (!wasDone(*record, phase.id)) return &phase;
    return nullptr;
}

Help helpOf(const StepRecord& step, const State& state) {
    switch (step.mark) {
        case Mark::None:
            return Help::NothingRecorded;
        case Mark::NotDone:
            return Help::NotDone;
        case Mark::NotSeen:
            return Help::NotSeen;
        case Mark::DoesNotApply:
            return Help::DoesNotApply;
        case Mark::Seen:
            break;
    }
    if (step.byTeacher) return Help::ByTeacher;
    if (step.handsOn) return Help::HandsOn;
    if (step.cues > 0 || wasShort(step) || hasUncaughtLapse(step, state)) return Help::Cued;
    return Help::Unprompted;
}

std::int64_t runningMs(const PhaseRun& run, const State& state, std::int64_t wallMs,
                       std::int64_t bootMs, const std::string& bootId) {
    const bool sameBoot = bootId == run.bootId;
    std::int64_t ms = sameBoot ? bootMs - run.begunBootMs : wallMs - run.begunWallMs;
    ms -= run.pausedMs;
    if (state.isPaused()) {
        const bool samePause = bootId == state.pausedBootId;
        ms -= samePause ? bootMs - *state.pausedBootMs : wallMs - *state.pausedWallMs;
    }
    return std::max<std::int64_t>(ms, 0);
}

}  // namespace practice
