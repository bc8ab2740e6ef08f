// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <set>

#include "practice/lapses.h"
#include "practice/measures.h"
#include "practice/practice.h"

namespace practice {
namespace {

/// One event after the other; each `on` is one kind.
class Folder {
  public:
    Folder(const procedure::Taught& taught, State& state, const OpenVisit* opened)
        : m_taught(taught), m_state(state), m_opened(opened) {}

    void take(const Event& event) {
        m_event = &event;
        if (m_state.ending != Ending::Open) return;
        std::visit([this](const auto& said) { on(said); }, event.said);
        m_state.lastWallMs = event.wallMs;
        m_state.lastBootMs = event.bootMs;
        m_state.lastBootId = event.bootId;
    }

  private:
    void on(const OpenVisit& said) {
        m_state.isOnPatient = said.on == On::Patient;
        m_state.holds = m_taught.model.start;
        for (int op = 0; op < m_taught.model.stepCount; ++op) {
            m_state.remaining.push_back(op);
            m_state.steps.push_back({.op = op, .step = m_taught.model.operators.at(op).id});
        }
        m_state.trail.push_back({.atMs = m_event->wallMs, .holds = m_state.holds});
        m_state.teachers.push_back(m_event->by);
        m_state.openedMs = m_event->wallMs;
    }

    void on(const BeginPhase& said) {
        StepRecord* record = recordNamed(said.step);
        const packs::Step* step = packs::findStep(m_taught.pack, said.step).step;
        if (!record || !step) return;
        // None runs, or one that a lapse broke off which was taken back since.
        voidRunning(*record);
        for (const packs::Phase& phase : step->phases)
            if (phase.id == said.phase) {
                PhaseRun run;
                run.phase = phase.id;
                run.begunWallMs = m_event->wallMs;
                run.begunBootMs = m_event->bootMs;
                run.bootId = m_event->bootId;
                run.minMs = std::int64_t{phase.minSeconds} * 1000;
                run.targetMs = std::int64_t{phase.targetSeconds} * 1000;
                record->phases.push_back(std::move(run));
                return markStep();
            }
    }

    void on(const EndPhase& said) {
        StepRecord* record = recordNamed(said.step);
        if (!record || record->phases.empty()) return;
        PhaseRun& run = record->phases.back();
        if (run.end != PhaseEnd::Running || run.phase != said.phase) return;
        run.measuredMs = said.measuredMs.value_or(
            runningMs(run, m_state, m_event->wallMs, m_event->bootMs, m_event->bootId));
        run.end = run.measuredMs < run.minMs ? PhaseEnd::StoppedShort : PhaseEnd::Done;
        markStep();
    }

    void on(const Pause&) {
        if (StepRecord* record = recordInHand(m_state)) {
            const packs::Step* step = packs::findStep(m_taught.pack, record->step).step;
            if (step && step->continuous && runningPhase(m_state)) {
                measureBrokenOff(*record, m_state, *m_event);
                voidRunning(*record);
            }
        }
        m_state.pausedWallMs = m_event->wallMs;
        m_state.pausedBootMs = m_event->bootMs;
        m_state.pausedBootId = m_event->bootId;
    }

    void on(const Resume&) {
        if (!m_state.isPaused()) return;
        StepRecord* record = recordInHand(m_state);
        if (record && runningPhase(m_state)) {
            const bool sameBoot = m_event->bootId == m_state.pausedBootId;
            record->phases.back().pausedMs += sameBoot ? m_event->bootMs - *m_state.pausedBootMs
                                                       : m_event->wallMs - *m_state.pausedWallMs;
        }
        m_state.pausedWallMs.reset();
        m_state.pausedBootMs.reset();
        m_state.pausedBootId.clear();
    }

    void on(const GiveCue& said) {
        if (StepRecord* record = recordNamed(said.step)) ++record->cues, mark();
    }
    void on(const HandsOn& said) {
        if (StepRecord* record = recordNamed(said.step)) record->handsOn = true, mark();
    }
    void on(const SeeStep& said) { doStep(said.step, Mark::Seen); }
    void on(const OverlookStep& said) { doStep(said.step, Mark::NotSeen); }
    void on(const SkipStep& said) { doStep(said.step, Mark::DoesNotApply); }
    void on(const SeeRest& said) {
        for (const std::string& step : said.steps) doStep(step, Mark::Seen);
    }

    void on(const MissStep& said) { takeMissedStep(m_taught, m_state, *m_event, said), mark(); }
    void on(const SeeLapse& said) { takeLapse(m_taught, m_state, *m_event, said), mark(); }
    void on(const ComeBack& said) { takeAbsence(m_taught, m_state, *m_event, said); }
    void on(const CatchAlone&) { catchLapse(Caught::Alone); }
    void on(const ShowWayBack&) { catchLapse(Caught::Shown); }
    /// replay() leaves out what it names; a phase that ran on the way back from it runs no more.
    void on(const TakeBack& said) { withdraw(said.entry, Withdrawn::Whole); }
    void on(const WithdrawLapse& said) { withdraw(said.entry, Withdrawn::Part); }
    void withdraw(const base::CommandId& entry, Withdrawn how) {
        takeWithdrawal(m_taught, m_state, entry, how);
        const StepRecord* hand = recordInHand(m_state);
        for (auto* records : {&m_state.steps, &m_state.waysBack})
            for (StepRecord& record : *records)
                if (&record != hand) voidRunning(record);
    }

    void on(const TakeOver&) {
        m_state.takenOver = true;
        const bool lost =
            m_state.wayBack && m_state.wayBack->outcome != procedure::PlanOutcome::Found;
        if (lost) m_state.wayBack.reset(), m_state.planLost = true;
        mark();
    }

    void on(const HandOver& said) { m_state.teachers.push_back(said.to); }
    void on(const WriteNote& said) {
        m_state.notes.push_back({.step = said.step.value_or(""),
                                 .text = said.text,
                                 .atMs = m_event->wallMs,
                                 .by = m_event->by});
    }
    void on(const TakeMeasure& said) {
        takeMeasure(m_taught.pack, m_state, *m_event, said), mark();
    }
    void on(const MissMeasure& said) {
        missMeasure(m_taught.pack, m_state, *m_event, said), mark();
    }
    void on(const RecordChange&) {}
    void on(const StopVisit&) { end(Ending::Stopped); }
    void on(const CloseVisit&) { end(Ending::Closed); }

    void end(Ending ending) {
        if (StepRecord* record = recordInHand(m_state)) {
            measureBrokenOff(*record, m_state, *m_event);
            voidRunning(*record);
        }
        m_state.ending = ending;
        m_state.endedMs = m_event->wallMs;
    }

    /// The record of the operator in hand when it is the one named, else of the step still to be
    /// done; what is neither was done on the way back from a lapse that was withdrawn.
    StepRecord* recordNamed(const std::string& step) {
        StepRecord* hand = recordInHand(m_state);
        if (hand && hand->step == step) return hand;
        const auto op = m_taught.model.operatorIndex(step);
        if (!op) return nullptr;
        if (std::count(m_state.remaining.begin(), m_state.remaining.end(), *op))
            return &m_state.steps.at(static_cast<std::size_t>(*op));
        // The step in hand was interrupted by it, and is to be done whole.
        if (hand) {
            measureBrokenOff(*hand, m_state, *m_event);
            voidPhases(*hand);
        }
        auto& besides = m_state.waysBack;
        if (besides.empty() || besides.back().op != *op || besides.back().mark != Mark::None)
            besides.push_back({.op = *op, .step = step});
        return &besides.back();
    }

    void doStep(const std::string& id, Mark how) {
        const auto op = m_taught.model.operatorIndex(id);
        StepRecord* record = recordNamed(id);
        if (!op || !record) return;
        const bool isInHand = m_state.wayBack && inHand(m_state) == op;
        const bool back =
            isInHand || !std::count(m_state.remaining.begin(), m_state.remaining.end(), *op);
        measureBrokenOff(*record, m_state, *m_event);
        voidRunning(*record);
        record->mark = how;
        record->byTeacher = m_state.takenOver || (m_opened && m_opened->way == Way::Show);
        record->byJudgement = how != Mark::DoesNotApply && isByJudgement(*op);
        record->seenBy = m_event->by;
        record->entry = m_event->id;
        record->atMs = m_event->wallMs;
        change(*op, how, back);
        if (isInHand)
            wayBackOneOn();
        else
            std::erase(m_state.remaining, *op);
        markStep();
    }

    bool isByJudgement(int op) const {
        const bool covered =
            !m_state.planLost && procedure::fits(m_taught.model.operators.at(op), m_state.holds);
        return m_state.takenOver && !covered;
    }

    void change(int op, Mark how, bool back) {
        DoneOperator done{.op = op, .atMs = m_event->wallMs, .entry = m_event->id};
        done.before = m_state.holds;
        done.wayBack = back;
        done.changedNothing = how == Mark::DoesNotApply;
        done.wasSeen = how == Mark::Seen;
        if (!done.changedNothing)
            m_state.holds = procedure::apply(m_taught.model.operators.at(op), m_state.holds);
        done.after = m_state.holds;
        m_state.trail.push_back({.atMs = m_event->wallMs,
                                 .holds = m_state.holds,
                                 .cause = back ? Change::Cause::WayBack : Change::Cause::Step});
        m_state.done.push_back(std::move(done));
    }

    void wayBackOneOn() {
        WayBack& back = *m_state.wayBack;
        if (++back.done < back.operators.size()) return;
        for (StepRecord& step : back.steps) m_state.waysBack.push_back(std::move(step));
        for (LapseRecord& lapse : m_state.lapses) lapse.solved = true;
        m_state.wayBack.reset();
    }

    void catchLapse(Caught caught) {
        if (const auto index = lapseToCatch(m_state)) m_state.lapses.at(*index).caught = caught;
        mark();
    }

    static void voidRunning(StepRecord& record) {
        for (PhaseRun& run : record.phases)
            if (run.end == PhaseEnd::Running) run.end = PhaseEnd::Voided;
    }

    void markStep() {
        mark();
        auto& steps = m_state.stepMarks;
        if (steps.empty() || steps.back() != m_event->id) steps.push_back(m_event->id);
    }

    void mark() {
        if (m_state.marks.empty() || m_state.marks.back() != m_event->id)
            m_state.marks.push_back(m_event->id);
    }

    const procedure::Taught& m_taught;
    State& m_state;
    const OpenVisit* m_opened;
    const Event* m_event = nullptr;
};

const OpenVisit* openingOf(const std::vector<Event>& events) {
    return events.empty() ? nullptr : std::get_if<OpenVisit>(&events.front().said);
}

/// What has no effect: whole entries, and lapses of those that said several.
struct TakenBack {
    std::set<base::CommandId> whole;
    std::map<base::CommandId, std::vector<WithdrawLapse>> parts;
};

TakenBack takenBack(const std::vector<Event>& events) {
    TakenBack taken;
    for (const Event& event : events) {
        if (const auto* said = std::get_if<TakeBack>(&event.said)) taken.whole.insert(said->entry);
        if (const auto* said = std::get_if<WithdrawLapse>(&event.said))
            taken.parts[said->entry].push_back(*said);
        const bool isEnd = std::holds_alternative<StopVisit>(event.said) ||
                           std::holds_alternative<CloseVisit>(event.said);
        if (isEnd) break;  // after it nothing is taken back
    }
    return taken;
}

bool takesBack(const Event& event) {
    return std::holds_alternative<TakeBack>(event.said) ||
           std::holds_alternative<WithdrawLapse>(event.said);
}

}  // namespace

State replay(const procedure::Taught& taught, const std::vector<Event>& events) {
    const TakenBack dropped = takenBack(events);
    State state;
    Folder folder(taught, state, openingOf(events));
    const auto take = [&](const Event& event) {
        if (dropped.whole.count(event.id))
            keepWithdrawn(state, event);
        else
            folder.take(event);
    };
    for (const Event& event : events) {
        const auto parts = dropped.parts.find(event.id);
        if (parts == dropped.parts.end()) {
            take(event);
            continue;
        }
        Event rest = event;
        if (keepWithdrawnParts(state, rest, parts->second) == Left::Something) take(rest);
    }
    return state;
}

State advance(const procedure::Taught& taught, State state, const std::vector<Event>& before,
              const Event& event) {
    if (takesBack(event)) {
        std::vector<Event> all = before;
        all.push_back(event);
        return replay(taught, all);
    }
    const OpenVisit* opened =
        before.empty() ? std::get_if<OpenVisit>(&event.said) : openingOf(before);
    Folder(taught, state, opened).take(event);
    return state;
}

}  // namespace practice
