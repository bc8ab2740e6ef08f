// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cstdlib>

#include "practice/lapses.h"
#include "practice/tally.h"
#include "record/insertion.h"
#include "render/papers/gather.h"
#include "render/visitlanes.h"
#include "render/words.h"

namespace render {
namespace {

using practice::State;

std::vector<PaperPhase> phasesOf(const packs::Step* step, const practice::StepRecord& record,
                                 const std::string& language, const std::string& fallback) {
    std::vector<PaperPhase> phases;
    for (const practice::PhaseRun& run : record.phases) {
        PaperPhase phase{.id = run.phase,
                         .label = run.phase,
                         .minMs = run.minMs,
                         .targetMs = run.targetMs,
                         .measuredMs = run.measuredMs,
                         .begunMs = run.begunWallMs,
                         .end = run.end};
        if (step)
            if (const packs::Phase* known = packs::find(step->phases, run.phase))
                phase.label = packs::text(known->label, language, fallback);
        phases.push_back(phase);
    }
    return phases;
}

PaperStep stepOf(const Gathering& from, const packs::Pack& pack, const State& state,
                 const practice::StepRecord& record) {
    const packs::StepPlace place = packs::findStep(pack, record.step);
    const std::string& language = from.context.language;
    PaperStep shown{.number = place.number,
                    .id = record.step,
                    .text = stepWords(pack, record.step, language),
                    .help = practice::helpOf(record, state),
                    .cues = record.cues,
                    .byTeacher = record.byTeacher,
                    .byJudgement = record.byJudgement};
    if (record.seenBy) shown.seenBy = from.nameOf(*record.seenBy);
    for (const std::size_t lapse : record.lapses)
        shown.lapses.push_back(lapseLetter(lapse).toStdString());
    shown.isLapsed = practice::hasLapse(record, state);
    const std::string fallback = pack.languages.empty() ? "" : pack.languages.front();
    shown.phases = phasesOf(place.step, record, language, fallback);
    return shown;
}

PaperLapse lapseOf(const Gathering& from, const packs::Pack& pack,
                   const practice::LapseRecord& record) {
    const std::string& language = from.context.language;
    PaperLapse shown{.isLeftOut = !record.leftOut.empty(),
                     .action = record.action,
                     .caught = record.caught,
                     .withdrawn = record.withdrawn,
                     .solved = record.solved,
                     .byAbsence = record.byAbsence,
                     .found = record.found,
                     .seenBy = from.nameOf(record.seenBy),
                     .atMs = record.atMs};
    for (const std::string& id : record.lapses) {
        const packs::Lapse* lapse = packs::findLapse(pack, id);
        shown.what.push_back(lapse ? packs::text(pack, lapse->label, language) : id);
        shown.isCritical |= lapse && lapse->severity == packs::Severity::Critical;
    }
    if (!record.other.empty()) shown.what.push_back(record.other);
    if (shown.isLeftOut) shown.what.push_back(stepWords(pack, record.leftOut, language));
    for (const std::string& id : record.touched) {
        const packs::Condition* condition = packs::findCondition(pack, id);
        shown.touched.push_back(condition ? packs::text(pack, condition->label, language) : id);
    }
    shown.step = stepWords(pack, record.step, language);
    shown.happenedAfter = stepWords(pack, record.happenedAfter, language);
    for (const std::string& id : record.plan)
        shown.wayBack.push_back(stepWords(pack, id, language));
    return shown;
}

PaperReading readingOf(const Gathering& from, const packs::Pack& pack, const record::Visit& visit,
                       const practice::Reading& reading) {
    PaperReading shown{.label = reading.measure,
                       .moment = reading.moment,
                       .mm = reading.mm,
                       .marks = reading.marks,
                       .by = from.nameOf(reading.by),
                       .atMs = reading.atMs};
    const packs::Measure* measure = packs::find(pack.measures, reading.measure);
    if (!measure) return shown;
    shown.label = packs::text(pack, measure->label, from.context.language);
    shown.isOfLine = packs::baselineOf(*measure) == packs::Baseline::OutsideLength;
    for (const record::Line& line : from.record.lines) {
        // On a practice arm there is nothing of the patient's to hold it against.
        if (line.said.line != visit.opened.line || visit.opened.on != practice::On::Patient)
            continue;
        const packs::Counted insertion = record::atInsertion(line.said, *measure);
        shown.baselineMm = insertion.mm;
        shown.baselineMarks = insertion.marks;
        const auto found =
            packs::compare(*measure, insertion, {.mm = reading.mm, .marks = reading.marks});
        if (!found) continue;
        const bool isByMarks = found->bound == packs::Bound::Call && found->byMarks &&
                               std::abs(*found->byMarks) > std::abs(found->changeMm());
        shown.changeMm = isByMarks ? found->byMarks : found->changeMm();
        if (found->bound == packs::Bound::Call) shown.callAtMm = measure->callAt;
    }
    return shown;
}

std::vector<PaperChange> trailOf(const procedure::Taught& taught, const State& state) {
    std::vector<PaperChange> trail;
    for (const practice::Change& change : state.trail) {
        PaperChange shown{change.atMs, {}};
        for (size_t i = 0; i < taught.model.conditionIds.size(); ++i)
            if (change.holds.has(int(i))) shown.holds.push_back(taught.model.conditionIds[i]);
        trail.push_back(shown);
    }
    return trail;
}

LanesData lanesOfVisit(const procedure::Taught& taught, const record::Visit& visit,
                       const PaperContext& context) {
    const int offset = visit.origin.offsetMinutes;
    const LaneWords words{
        laneWords, [offset](std::int64_t ms) { return clockWords(ms, offset); },
        [](std::int64_t seconds) { return Papers::tr("%1 s", "seconds, short").arg(seconds); },
        [&](const packs::Text& label) {
            return QString::fromStdString(packs::text(taught.pack, label, context.language));
        }};
    const auto now = visit.isOpen() ? std::optional(context.now.wallMs) : std::nullopt;
    LanesData lanes = lanesOf(taught, visit.state, words, now);
    lanes.nowMs.reset();  // on paper nothing runs
    return lanes;
}

void gatherState(const Gathering& from, const procedure::Taught& taught, const record::Visit& visit,
                 PaperVisit& shown) {
    const State& state = visit.state;
    for (const auto& step : state.steps)
        shown.steps.push_back(stepOf(from, taught.pack, state, step));
    for (const auto& step : state.waysBack)
        shown.waysBack.push_back(stepOf(from, taught.pack, state, step));
    for (const auto& lapse : state.lapses) {
        shown.lapses.push_back(lapseOf(from, taught.pack, lapse));
        shown.lapses.back().letter = lapseLetter(shown.lapses.size() - 1).toStdString();
        // On a practice arm nobody is to be called.
        if (visit.opened.on == practice::On::Patient)
            shown.lapses.back().call = practice::callAfter(taught.pack, lapse);
    }
    for (const auto& reading : state.readings)
        shown.readings.push_back(readingOf(from, taught.pack, visit, reading));
    for (const auto& note : state.notes) {
        const std::string step =
            note.step.empty() ? "" : stepWords(taught.pack, note.step, from.context.language);
        shown.notes.push_back({step, note.text, from.nameOf(note.by), note.atMs});
    }
    shown.trail = trailOf(taught, state);
    shown.lanes = lanesOfVisit(taught, visit, from.context);
}

}  // namespace

std::string stepWords(const packs::Pack& pack, const std::string& id, const std::string& language) {
    const packs::Step* step = packs::findStep(pack, id).step;
    return step ? packs::text(pack, step->doText, language) : id;
}

std::string Gathering::words(const packs::Text& text) const {
    return packs::text(taught.pack, text, context.language);
}

std::string Gathering::nameOf(const base::StaffId& id) const {
    for (const record::Staff& one : house.staff)
        if (one.said.staff == id) return one.said.name;
    return id.text();
}

std::string Gathering::learnerName(const base::LearnerId& id) const {
    for (const record::Learner& one : record.learners)
        if (one.said.learner == id) return one.said.isPatient ? record.patient.name : one.said.name;
    return id.text();
}

Stamp Gathering::stamp(const record::Origin& origin) const {
    Stamp stamp{.entry = origin.entry.text(),
                .by = origin.by ? nameOf(*origin.by) : "",
                .atMs = origin.atMs,
                .wallMs = origin.wallMs,
                .offsetMinutes = origin.offsetMinutes};
    if (origin.by) stamp.person = origin.by->text();
    for (const record::Staff& one : house.staff)
        if (origin.by == one.said.staff) stamp.role = base::nameOf(one.said.role);
    return stamp;
}

PaperVisit gatherVisit(const Gathering& from, const record::Visit& visit) {
    PaperVisit shown{.opened = from.stamp(visit.origin),
                     .endedMs = visit.state.endedMs,
                     .ending = visit.state.ending,
                     .said = visit.opened,
                     .packAtHand = visit.taught != nullptr,
                     .takenOver = visit.state.takenOver,
                     .suspendNoticed = visit.state.suspendNoticed};
    for (const base::StaffId& id : visit.state.teachers) shown.teachers.push_back(from.nameOf(id));
    if (shown.teachers.empty()) shown.teachers.push_back(shown.opened.by);
    for (const base::LearnerId& id : visit.opened.watchers)
        shown.watchers.push_back(from.learnerName(id));
    shown.turns = turnsOf(from, visit);
    shown.missing = missingIn(from, visit);
    if (visit.taught) gatherState(from, *visit.taught, visit, shown);
    if (visit.change) {
        shown.change = visit.change->said;
        shown.changed = from.stamp(visit.change->origin);
        shown.dressing = shown.change->dressing;
        if (visit.taught && visit.taught->pack.schedule) {
            const auto& dressings = visit.taught->pack.schedule->dressings;
            if (const auto* kind = packs::find(dressings, shown.change->dressing))
                shown.dressing =
                    packs::text(visit.taught->pack, kind->label, from.context.language);
        }
    }
    if (visit.stopped) shown.stopped = visit.stopped->said;
    return shown;
}

}  // namespace render
