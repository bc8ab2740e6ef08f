// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "practice/lapses.h"
#include "practice/measures.h"
#include "practice/practice.h"

namespace practice {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

/// Whether one thing may be said now; each `may` is one kind.
class Gate {
  public:
    Gate(const procedure::Taught& taught, const OpenVisit& opened, const State& state)
        : m_taught(taught), m_opened(opened), m_state(state) {}

    Outcome may(const OpenVisit&) const { return Error{Code::VisitOpenAlready}; }

    Outcome may(const BeginPhase& said) const {
        if (auto refused = refuseStep(said.step)) return *refused;
        if (runningPhase(m_state)) return Error{Code::PhaseRuns};
        const packs::Phase* phase = phaseToDo(m_taught.pack, m_state);
        if (!phase || phase->id != said.phase) return Error{Code::PhaseNotDue, {said.phase}};
        return Done{};
    }

    Outcome may(const EndPhase& said) const {
        const PhaseRun* run = runningPhase(m_state);
        if (!run || run->phase != said.phase || recordInHand(m_state)->step != said.step)
            return Error{Code::PhaseNotRunning, {said.phase}};
        if (m_state.isPaused()) return Error{Code::VisitPaused};
        return Done{};
    }

    Outcome may(const Pause&) const {
        if (m_state.isPaused()) return Error{Code::VisitPaused};
        return Done{};
    }
    Outcome may(const Resume&) const {
        if (!m_state.isPaused()) return Error{Code::VisitNotPaused};
        return Done{};
    }
    Outcome may(const GiveCue& said) const { return onlyInHand(said.step); }
    Outcome may(const HandsOn& said) const { return onlyInHand(said.step); }

    Outcome may(const SeeStep& said) const {
        if (auto refused = refuseStep(said.step)) return *refused;
        if (runningPhase(m_state)) return Error{Code::PhaseRuns};
        if (recordInHand(m_state)->step == said.step && phaseToDo(m_taught.pack, m_state))
            return Error{Code::PhaseMissing, {said.step}};
        return withMeasure(said.step);
    }
    Outcome may(const OverlookStep& said) const {
        if (auto refused = refuseStep(said.step)) return *refused;
        return withMeasure(said.step);
    }

    Outcome may(const SkipStep& said) const {
        if (auto refused = refuseStep(said.step)) return *refused;
        const packs::Step* step = packs::findStep(m_taught.pack, said.step).step;
        if (m_state.wayBack || !step || !step->skip) return Error{Code::StepApplies, {said.step}};
        return Done{};
    }

    Outcome may(const SeeRest& said) const {
        if (m_state.isPaused()) return Error{Code::VisitPaused};
        const std::vector<int> rest = restOfPart(m_taught, m_state);
        if (said.steps.empty() || said.steps.size() > rest.size()) return Error{Code::NoRestOfPart};
        for (std::size_t i = 0; i < said.steps.size(); ++i)
            if (m_taught.model.operators.at(rest[i]).id != said.steps[i])
                return Error{Code::NoRestOfPart};
        return Done{};
    }

    Outcome may(const MissStep& said) const {
        const auto op = m_taught.model.operatorIndex(said.step);
        if (!op || m_taught.model.isRecovery(*op)) return Error{Code::StepUnknown, {said.step}};
        const bool now = !m_state.remaining.empty() && m_state.remaining.front() == *op;
        const Mark mark = m_state.steps.at(static_cast<std::size_t>(*op)).mark;
        const bool earlier = mark == Mark::Seen || mark == Mark::NotSeen;
        if (m_state.wayBack ? !earlier : !(now || earlier))
            return Error{Code::StepNotInHand, {said.step}};
        return Done{};
    }

    Outcome may(const SeeLapse& said) const {
        if (said.lapses.empty() && !said.other) return Error{Code::LapseUnknown, {""}};
        for (const std::string& id : said.lapses)
            if (!m_taught.model.lapseIndex(id)) return Error{Code::LapseUnknown, {id}};
        if (said.other)
            for (const std::string& id : said.other->touched)
                if (!packs::findCondition(m_taught.pack, id))
                    return Error{Code::LapseUnknown, {id}};
        if (!said.happened) return Done{};
        for (const DoneOperator& done : m_state.done)
            if (m_taught.model.operators.at(done.op).id == *said.happened) return Done{};
        return Error{Code::StepNotDoneYet, {*said.happened}};
    }

    Outcome may(const CatchAlone&) const { return onlyAfterLapse(); }
    Outcome may(const ShowWayBack&) const { return onlyAfterLapse(); }

    Outcome may(const WithdrawLapse& said) const {
        const auto whole = lapseOf(m_state, said.entry);
        if (!whole || !canTakeBack(m_state, said.entry)) return Error{Code::NothingToTakeBack};
        const LapseRecord& record = m_state.lapses.at(*whole);
        const bool isPart =
            said.lapse ? std::count(record.lapses.begin(), record.lapses.end(), *said.lapse) > 0
                       : record.isBesides();
        const bool isLast = record.lapses.size() + (record.isBesides() ? 1 : 0) < 2;
        if (!isPart || isLast || record.withdrawn) return Error{Code::NothingToTakeBack};
        return Done{};
    }
    Outcome may(const TakeBack& said) const {
        if (!canTakeBack(m_state, said.entry)) return Error{Code::NothingToTakeBack};
        return Done{};
    }
    Outcome may(const TakeOver&) const {
        if (m_state.takenOver) return Error{Code::TakenOverAlready};
        return Done{};
    }
    Outcome may(const HandOver& said) const {
        if (m_state.teachers.back() == said.to) return Error{Code::TeachesAlready};
        return Done{};
    }
    Outcome may(const WriteNote& said) const {
        if (said.text.empty()) return Error{Code::BadField, {"/text", "is empty"}};
        return Done{};
    }
    Outcome may(const TakeMeasure& said) const {
        if (!packs::find(m_taught.pack.measures, said.measure))
            return Error{Code::MeasureUnknown, {said.measure}};
        const auto odd = [](const std::optional<int>& value, int most) {
            return value && (*value < 0 || *value > most);
        };
        if (!said.mm && !said.marks) return Error{Code::MeasureEmpty};
        // No outside length and no girth of an arm comes near a metre.
        if (odd(said.mm, 999) || odd(said.marks, 99)) return Error{Code::MeasureOdd};
        if (said.step && !packs::findStep(m_taught.pack, *said.step).step)
            return Error{Code::StepUnknown, {*said.step}};
        return Done{};
    }
    Outcome may(const MissMeasure& said) const {
        if (m_opened.on != On::Patient) return Error{Code::NotOnPatient};
        if (!owesMeasure(m_taught.pack, m_state, said.step))
            return Error{Code::MeasureUnknown, {said.step}};
        if (said.why.empty()) return Error{Code::BadField, {"/why", "is empty"}};
        return Done{};
    }
    Outcome may(const RecordChange& said) const {
        if (m_opened.on != On::Patient) return Error{Code::NotOnPatient};
        const auto& schedule = m_taught.pack.schedule;
        if (!schedule || !packs::find(schedule->dressings, said.dressing))
            return Error{Code::DressingUnknown, {said.dressing}};
        return Done{};
    }
    Outcome may(const StopVisit&) const { return Done{}; }

    /// On a patient a visit ends when all is done or nothing was begun; else it is stopped, and
    /// the stop asks whether the site is covered.
    Outcome may(const CloseVisit&) const {
        if (runningPhase(m_state)) return Error{Code::PhaseRuns};
        const bool allDone = m_state.remaining.empty() && !m_state.wayBack;
        if (m_opened.on == On::Patient && !allDone && !m_state.done.empty())
            return Error{Code::VisitNotFinished};
        return Done{};
    }
    Outcome may(const ComeBack&) const { return Done{}; }

  private:
    std::optional<Error> refuseStep(const std::string& id) const {
        if (m_state.isPaused()) return Error{Code::VisitPaused};
        const StepRecord* hand = recordInHand(m_state);
        if (!hand) return Error{Code::NoWayOn};
        const auto op = m_taught.model.operatorIndex(id);
        if (!op) return Error{Code::StepUnknown, {id}};
        if (hand->step != id) {
            const std::vector<int> later = markableNow(m_taught, m_state);
            if (!std::count(later.begin(), later.end(), *op))
                return Error{Code::StepNotInHand, {id}};
        }
        // After a take-over the teacher goes on by judgement, plan or no plan.
        if (!m_state.takenOver && !procedure::fits(m_taught.model.operators.at(*op), m_state.holds))
            return Error{Code::StepDoesNotFit, {id}};
        return std::nullopt;
    }

    Outcome withMeasure(const std::string& step) const {
        if (owesMeasure(m_taught.pack, m_state, step)) return Error{Code::MeasureMissing, {step}};
        return Done{};
    }

    Outcome onlyInHand(const std::string& id) const {
        const StepRecord* hand = recordInHand(m_state);
        if (!hand || hand->step != id) return Error{Code::StepNotInHand, {id}};
        return Done{};
    }

    Outcome onlyAfterLapse() const {
        const auto index = lapseToCatch(m_state);
        if (!index) return Error{Code::NoLapse};
        const LapseRecord& lapse = m_state.lapses.at(*index);
        if (lapse.withdrawn) return Error{Code::NoLapse};
        if (lapse.caught != Caught::No) return Error{Code::CaughtAlready};
        return Done{};
    }

    const procedure::Taught& m_taught;
    const OpenVisit& m_opened;
    const State& m_state;
};

}  // namespace

Outcome mayBeSaid(const procedure::Taught& taught, const OpenVisit& opened, const State& state,
                  const Said& said) {
    if (state.ending != Ending::Open) return Error{Code::VisitEnded};
    const Gate gate(taught, opened, state);
    return std::visit([&](const auto& one) { return gate.may(one); }, said);
}

Said completed(const State& state, Said said, const base::Instant& now) {
    if (auto* end = std::get_if<EndPhase>(&said)) {
        if (const PhaseRun* run = runningPhase(state)) {
            end->measuredMs = runningMs(*run, state, now.wallMs, now.bootMs, now.bootId);
            end->minMs = run->minMs;
            end->targetMs = run->targetMs;
            end->stoppedShort = *end->measuredMs < run->minMs;
        }
    } else if (auto* back = std::get_if<ComeBack>(&said)) {
        const bool sameBoot = now.bootId == state.lastBootId;
        const std::int64_t away =
            sameBoot ? now.bootMs - state.lastBootMs : now.wallMs - state.lastWallMs;
        back->awayMs.reset();  // a clock that was set back can't tell
        if (away >= 0) back->awayMs = away;
    }
    return said;
}

}  // namespace practice
