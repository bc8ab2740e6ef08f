// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/moment.h"

#include <algorithm>

#include "pieces/visitwords.h"

namespace ui {

std::optional<Moment> Moment::of(const desk::Desk& desk, Names names) {
    Moment moment;
    moment.m_names = names;
    moment.m_view = &desk.view();
    moment.m_visit = desk.view().visit();
    if (moment.m_visit == nullptr || !moment.m_visit->taught || !desk.view().record)
        return std::nullopt;
    moment.m_record = &*desk.view().record;
    moment.m_learner = moment.m_record->learner(moment.m_visit->opened.learner);
    return moment;
}

const packs::Step& Moment::stepOf(int op) const {
    return *packs::findStep(pack(), taught().model.operators[static_cast<std::size_t>(op)].id).step;
}

const packs::Step* Moment::inHand() const {
    const auto op = practice::inHand(state());
    return op ? &stepOf(*op) : nullptr;
}

int Moment::numberInHand() const {
    const packs::Step* step = inHand();
    return step == nullptr ? 0 : packs::findStep(pack(), step->id).number;
}

const packs::Phase* Moment::phaseInHand() const {
    const packs::Step* step = inHand();
    if (step == nullptr) return nullptr;
    if (const practice::PhaseRun* run = practice::runningPhase(state()))
        return packs::find(step->phases, run->phase);
    return practice::phaseToDo(pack(), state());
}

bool Moment::isAnothers() const {
    return view().teacher && *view().teacher != state().teachers.back();
}

bool Moment::isTeachersTurn() const {
    return state().takenOver || opened().way == practice::Way::Show;
}

bool Moment::isReturnDemonstration() const {
    return opened().way == practice::Way::ReturnDemonstration;
}

bool Moment::mayNeedHelper() const {
    const procedure::Model& model = taught().model;
    for (int op = 0; op < static_cast<int>(model.operators.size()); ++op) {
        const procedure::Operator& one = model.operators[static_cast<std::size_t>(op)];
        const bool isWayBack = model.isRecovery(op) || one.isRepeatable;
        if (isWayBack && one.by == packs::By::Helper) return true;
    }
    return false;
}

HelperAtHand Moment::helperLastSaid() const {
    for (auto event = visit().events.rbegin(); event != visit().events.rend(); ++event) {
        const auto* seen = std::get_if<practice::SeeLapse>(&event->said);
        const auto* missed = std::get_if<practice::MissStep>(&event->said);
        if (seen == nullptr && missed == nullptr) continue;
        return (seen != nullptr ? seen->alone : missed->alone) ? HelperAtHand::No
                                                               : HelperAtHand::Yes;
    }
    return HelperAtHand::Yes;
}

bool Moment::hasWayBack() const {
    return state().wayBack && state().wayBack->outcome == procedure::PlanOutcome::Found;
}

const practice::LapseRecord* Moment::lapseInHand() const {
    return state().wayBack ? &state().lapses.at(state().wayBack->lapse) : nullptr;
}

const practice::LapseRecord* Moment::freshLapse() const {
    const practice::StepRecord* record = practice::recordInHand(state());
    if (state().wayBack || record == nullptr || record->lapses.empty()) return nullptr;
    const practice::LapseRecord& newest = state().lapses.at(record->lapses.back());
    const bool isPutRight = newest.solved && !newest.plan.empty();
    const bool isGone = newest.withdrawn || isPutRight || &newest != &state().lapses.back();
    return isGone ? nullptr : &newest;
}

const practice::LapseRecord* Moment::stopAndCall() const {
    const bool isIt =
        state().wayBack && state().wayBack->outcome == procedure::PlanOutcome::NotSought;
    return isIt ? lapseInHand() : nullptr;
}

bool Moment::isWithoutPlan() const {
    return state().wayBack && state().wayBack->outcome != procedure::PlanOutcome::Found &&
           state().wayBack->outcome != procedure::PlanOutcome::NotSought;
}

NextThing Moment::next() const {
    if (state().isPaused()) return NextThing::GoOn;
    if (stopAndCall() != nullptr || isWithoutPlan()) return NextThing::Nothing;
    if (practice::runningPhase(state()) != nullptr) return NextThing::EndPhase;
    if (practice::phaseToDo(pack(), state()) != nullptr) return NextThing::BeginPhase;
    if (practice::inHand(state())) return NextThing::SeeStep;
    const bool needsChange = opened().on == practice::On::Patient && pack().schedule &&
                             !pack().schedule->dressings.empty() && !visit().change;
    return needsChange ? NextThing::RecordChange : NextThing::CloseVisit;
}

std::optional<base::CommandId> Moment::newestCue() const {
    const packs::Step* step = inHand();
    if (step == nullptr) return std::nullopt;
    for (auto event = visit().events.rbegin(); event != visit().events.rend(); ++event) {
        const auto* cue = std::get_if<practice::GiveCue>(&event->said);
        if (cue == nullptr || cue->step != step->id) continue;
        if (std::ranges::find(state().marks, event->id) != state().marks.end()) return event->id;
    }
    return std::nullopt;
}

const std::string& Moment::text(const packs::Text& texts) const {
    return packs::text(pack(), texts, teachersLanguage());
}

std::string Moment::learnersLanguage() const {
    if (m_learner == nullptr) return teachersLanguage();
    if (!m_learner->said.language.empty()) return m_learner->said.language;
    return m_record->patient.language;
}

const std::string& Moment::learners(const packs::Text& texts) const {
    const std::string language = learnersLanguage();
    if (texts.contains(language)) return packs::text(pack(), texts, language);
    return packs::text(pack(), texts, language.substr(0, language.find('-')));
}

Band::Reading Moment::clock(const base::Instant& now) const {
    Band::Reading reading;
    const packs::Phase* phase = phaseInHand();
    if (phase == nullptr) return reading;
    reading.minMs = phase->minSeconds * std::int64_t{1000};
    reading.targetMs = phase->targetSeconds * std::int64_t{1000};
    reading.label = utf(text(phase->label));
    if (phase->until) reading.until = utf(text(*phase->until));
    if (const practice::PhaseRun* run = practice::runningPhase(state())) {
        reading.runMs = practice::runningMs(*run, state(), now.wallMs, now.bootMs, now.bootId);
        reading.run = state().isPaused() ? Band::Run::Paused : Band::Run::Running;
    }
    return reading;
}

}  // namespace ui
