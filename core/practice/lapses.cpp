// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/lapses.h"

#include <algorithm>

#include "practice/found.h"
#include "practice/measures.h"

namespace practice {
namespace {

using procedure::Company;
using procedure::Conditions;
using procedure::ModelLapse;

/// The lapses named, and what was touched besides, as one.
ModelLapse asOne(const procedure::Model& model, const SeeLapse& said) {
    std::vector<ModelLapse> all;
    for (const std::string& id : said.lapses)
        if (const auto index = model.lapseIndex(id)) all.push_back(model.lapses.at(*index));
    if (said.other) {
        ModelLapse other;
        for (std::size_t i = 0; i < model.conditionIds.size(); ++i)
            if (std::count(said.other->touched.begin(), said.other->touched.end(),
                           model.conditionIds[i]))
                other.breaks = other.breaks.with(Conditions::single(static_cast<int>(i)));
        all.push_back(other);
    }
    return procedure::together(all);
}

/// The operators done after the last time `op` was done, in their order; what changed nothing is
/// left out.
std::vector<int> doneSince(const State& state, int op) {
    std::vector<int> since;
    for (auto at = state.done.rbegin(); at != state.done.rend() && at->op != op; ++at)
        if (!at->changedNothing) since.push_back(at->op);
    std::reverse(since.begin(), since.end());
    return since;
}

LapseRecord recordOf(const State& state, const Event& event) {
    LapseRecord record;
    record.entry = event.id;
    record.seenBy = event.by;
    record.atMs = event.wallMs;
    if (const StepRecord* hand = recordInHand(state)) record.step = hand->step;
    return record;
}

/// The record a lapse is told of: of the step it happened at, when that is known.
StepRecord* recordHit(State& state, int op) {
    if (op >= 0 && op < static_cast<int>(state.steps.size()))
        return &state.steps.at(static_cast<std::size_t>(op));
    return recordInHand(state);
}

void keepStepsDone(State& state) {
    if (!state.wayBack) return;
    for (std::size_t i = 0; i < state.wayBack->steps.size(); ++i) {
        StepRecord& step = state.wayBack->steps[i];
        if (i < state.wayBack->done || !step.phases.empty() || step.cues > 0 || step.handsOn)
            state.waysBack.push_back(std::move(step));
    }
    state.wayBack.reset();
}

procedure::Question question(const procedure::Model& model, const State& state, Company company,
                             Conditions holds) {
    procedure::Question asked{.state = holds, .remaining = state.remaining, .operators = {}};
    for (int op = 0; op < static_cast<int>(model.operators.size()); ++op) {
        if (!mayRepeat(model, state, op)) continue;
        if (company == Company::Alone && model.operators[op].by == packs::By::Helper) continue;
        asked.operators.push_back(op);
    }
    return asked;
}

void planBack(const procedure::Model& model, State& state, Company company, std::size_t lapse) {
    LapseRecord& record = state.lapses.at(lapse);
    const auto answer =
        procedure::answerLapse(model, record.action, question(model, state, company, state.holds));
    keepStepsDone(state);
    WayBack back{.lapse = lapse, .outcome = answer.outcome};
    const bool isFirst = record.plan.empty();
    const bool isOwed = std::ranges::any_of(
        state.lapses, [](const LapseRecord& one) { return one.isLearners() && !one.solved; });
    for (const int op : answer.plan.operators) {
        back.operators.push_back(op);
        back.steps.push_back({.op = op, .step = model.operators.at(op).id, .afterLapse = isOwed});
        if (isFirst) record.plan.push_back(model.operators.at(op).id);
    }
    const bool found = answer.outcome == procedure::PlanOutcome::Found;
    // A teacher who has taken over is never held up by a plan that is not there.
    if (state.takenOver) state.planLost = !found;
    if (found && back.operators.empty())
        record.solved = true;
    else if (found || !state.takenOver)
        state.wayBack = std::move(back);
}

/// Everything that all kinds of lapse have in common.
void strike(const procedure::Model& model, State& state, LapseRecord record, Conditions holds,
            Company company, int hit) {
    const std::size_t index = state.lapses.size();
    if (StepRecord* hand = recordInHand(state)) voidPhases(*hand);
    if (StepRecord* told = recordHit(state, hit)) told->lapses.push_back(index);
    record.alone = company == Company::Alone;
    if (!record.found) forgetMeasures(state);
    state.lapses.push_back(std::move(record));
    state.holds = holds;
    state.trail.push_back({.atMs = state.lapses.back().atMs,
                           .holds = holds,
                           .cause = Change::Cause::Lapse,
                           .lapse = index});
    planBack(model, state, company, index);
}

/// Whether the way back in hand, or none, is what would be planned from what holds now.
bool isOnItsWay(const procedure::Model& model, const State& state, Company company) {
    std::vector<int> rest;
    if (state.wayBack) {
        if (state.wayBack->outcome != procedure::PlanOutcome::Found) return true;  // it says so
        const auto& all = state.wayBack->operators;
        rest.assign(all.begin() + static_cast<std::ptrdiff_t>(state.wayBack->done), all.end());
    }
    const auto answer = procedure::findPlan(model, question(model, state, company, state.holds));
    return answer.outcome == procedure::PlanOutcome::Found && answer.plan.operators == rest;
}

}  // namespace

void measureBrokenOff(StepRecord& record, const State& state, const Event& event) {
    for (PhaseRun& run : record.phases)
        if (run.end == PhaseEnd::Running)
            run.measuredMs = runningMs(run, state, event.wallMs, event.bootMs, event.bootId);
}

void voidPhases(StepRecord& record) {
    for (PhaseRun& run : record.phases)
        if (run.end != PhaseEnd::StoppedShort) run.end = PhaseEnd::Voided;
}

bool mayRepeat(const procedure::Model& model, const State& state, int op) {
    if (model.isRecovery(op)) return true;
    if (std::count(state.remaining.begin(), state.remaining.end(), op)) return false;
    const Mark mark = state.steps.at(static_cast<std::size_t>(op)).mark;
    return mark == Mark::NotDone ||
           (model.operators.at(op).isRepeatable && mark != Mark::DoesNotApply);
}

void takeLapse(const procedure::Taught& taught, State& state, const Event& event,
               const SeeLapse& said) {
    const ModelLapse lapse = asOne(taught.model, said);
    LapseRecord record = recordOf(state, event);
    record.lapses = said.lapses;
    if (said.other) record.other = said.other->what, record.touched = said.other->touched;
    record.found = wasFound(taught, state, said);
    record.action = lapse.action;
    Conditions holds = procedure::afterLapse(lapse, state.holds);
    int hit = -1;
    if (said.happened) {
        record.happenedAfter = *said.happened;
        hit = taught.model.operatorIndex(*said.happened).value_or(-1);
        holds = procedure::noticedLate(taught.model, lapse, doneSince(state, hit), state.holds);
    }
    if (StepRecord* hand = recordInHand(state)) measureBrokenOff(*hand, state, event);
    strike(taught.model, state, std::move(record), holds,
           said.alone ? Company::Alone : Company::WithHelper, hit);
}

void takeMissedStep(const procedure::Taught& taught, State& state, const Event& event,
                    const MissStep& said) {
    const auto op = taught.model.operatorIndex(said.step);
    if (!op || taught.model.isRecovery(*op)) return;
    const auto place = std::find(state.remaining.begin(), state.remaining.end(), *op);
    Conditions before = state.holds;
    for (const DoneOperator& done : state.done)
        if (done.op == *op) before = done.before;
    const std::vector<int> since =
        place == state.remaining.end() ? doneSince(state, *op) : std::vector<int>{};
    const ModelLapse lapse = procedure::leftOut(taught.model.operators.at(*op), before);
    LapseRecord record = recordOf(state, event);
    record.leftOut = said.step;
    record.action = lapse.action;
    if (StepRecord* hand = recordInHand(state)) measureBrokenOff(*hand, state, event);
    StepRecord& missed = state.steps.at(static_cast<std::size_t>(*op));
    missed.mark = Mark::NotDone;
    missed.seenBy = event.by;
    missed.entry = event.id;
    missed.atMs = event.wallMs;
    if (place != state.remaining.end()) {
        voidPhases(missed);
        state.remaining.erase(place);
        state.done.push_back({.op = *op,
                              .atMs = event.wallMs,
                              .entry = event.id,
                              .before = state.holds,
                              .after = state.holds,
                              .changedNothing = true});
    }
    const Conditions holds = procedure::noticedLate(taught.model, lapse, since, state.holds);
    strike(taught.model, state, std::move(record), holds,
           said.alone ? Company::Alone : Company::WithHelper, *op);
}

void takeAbsence(const procedure::Taught& taught, State& state, const Event& event,
                 const ComeBack& said) {
    if (StepRecord* hand = recordInHand(state))
        for (PhaseRun& run : hand->phases)
            if (run.end == PhaseEnd::Running) run.end = PhaseEnd::Voided;
    if (said.by == BackBy::Absence) state.suspendNoticed = true;
    const auto& away = taught.pack.away;
    if (!away || !state.holds.meets(taught.model.clean)) return;
    const bool tooLong = !said.awayMs || *said.awayMs > std::int64_t{away->afterSeconds} * 1000;
    if (said.by != BackBy::Restart && !tooLong) return;
    const auto index = taught.model.lapseIndex(away->lapse);
    if (!index) return;
    const ModelLapse& lapse = taught.model.lapses.at(*index);
    LapseRecord record = recordOf(state, event);
    record.lapses = {away->lapse};
    record.action = lapse.action;
    record.byAbsence = true;
    // Nobody said that a helper has come since.
    const bool isAlone = !state.lapses.empty() && state.lapses.back().alone;
    strike(taught.model, state, std::move(record), procedure::afterLapse(lapse, state.holds),
           isAlone ? Company::Alone : Company::WithHelper, -1);
}

void keepWithdrawn(State& state, const Event& event) {
    LapseRecord record = recordOf(state, event);
    if (const auto* lapse = std::get_if<SeeLapse>(&event.said)) {
        record.lapses = lapse->lapses;
        if (lapse->other) record.other = lapse->other->what, record.touched = lapse->other->touched;
        record.happenedAfter = lapse->happened.value_or("");
        record.alone = lapse->alone;
    } else if (const auto* missed = std::get_if<MissStep>(&event.said)) {
        record.leftOut = missed->step;
        record.alone = missed->alone;
    } else {
        return;
    }
    if (StepRecord* hand = recordInHand(state)) hand->lapses.push_back(state.lapses.size());
    state.lapses.push_back(std::move(record));
}

Left keepWithdrawnParts(State& state, Event& event, const std::vector<WithdrawLapse>& parts) {
    auto* seen = std::get_if<SeeLapse>(&event.said);
    if (seen == nullptr) return Left::Something;
    for (const WithdrawLapse& part : parts) {
        SeeLapse gone{.happened = seen->happened, .alone = seen->alone};
        if (!part.lapse)
            gone.other.swap(seen->other);
        else if (std::erase(seen->lapses, *part.lapse) > 0)
            gone.lapses = {*part.lapse};
        if (!gone.other && gone.lapses.empty()) continue;
        Event alone = event;
        alone.said = std::move(gone);
        keepWithdrawn(state, alone);
        state.lapses.back().withdrawn = true;
    }
    return seen->lapses.empty() && !seen->other ? Left::Nothing : Left::Something;
}

std::optional<std::size_t> lapseOf(const State& state, const base::CommandId& entry) {
    for (std::size_t i = state.lapses.size(); i-- > 0;)
        if (state.lapses[i].entry == entry) return i;
    return std::nullopt;
}

void takeWithdrawal(const procedure::Taught& taught, State& state, const base::CommandId& entry,
                    Withdrawn how) {
    const auto withdrawn = lapseOf(state, entry);
    if (withdrawn && how == Withdrawn::Whole) state.lapses[*withdrawn].withdrawn = true;
    // Taken over, the teacher goes on by judgement, and is only told what a withdrawal costs.
    if (state.lapses.empty() || (state.takenOver && !withdrawn)) return;
    const std::size_t lapse =
        state.wayBack ? state.wayBack->lapse : withdrawn.value_or(state.lapses.size() - 1);
    const Company company = state.lapses.at(lapse).alone ? Company::Alone : Company::WithHelper;
    if (isOnItsWay(taught.model, state, company)) return;
    if (StepRecord* hand = recordInHand(state)) voidPhases(*hand);
    planBack(taught.model, state, company, lapse);
}

std::optional<packs::Call> callAfter(const packs::Pack& pack, const LapseRecord& record) {
    if (record.withdrawn || record.action == packs::Action::Recover) return std::nullopt;
    const auto byAction = [](packs::Action action) {
        return action == packs::Action::StopAndCall ? packs::Call::TeamNow : packs::Call::TeamToday;
    };
    std::optional<packs::Call> soonest;
    for (const std::string& id : record.lapses) {
        const packs::Lapse* lapse = packs::findLapse(pack, id);
        if (!lapse || lapse->action == packs::Action::Recover) continue;
        const packs::Drill* card = lapse->card ? packs::find(pack.drills, *lapse->card) : nullptr;
        const packs::Call call = card ? card->call : byAction(lapse->action);
        soonest = std::min(soonest.value_or(call), call);
    }
    return soonest.value_or(byAction(record.action));
}

std::optional<std::size_t> lapseToCatch(const State& state) {
    if (state.lapses.empty()) return std::nullopt;
    const std::size_t newest = state.lapses.size() - 1;
    if (!state.lapses.at(newest).withdrawn || !state.wayBack) return newest;
    return state.wayBack->lapse;
}

}  // namespace practice
