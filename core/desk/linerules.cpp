// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/linerules.h"

#include <algorithm>

#include "base/date.h"
#include "packs/baseline.h"
#include "packs/comparison.h"

namespace desk {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

/// What later readings are held against, and the days.
Outcome isRight(const record::AddLine& said, const LineGround& ground) {
    if (record::hasLengthOutside(said.kind) != said.outsideMm.has_value())
        return Error{Code::MeasureOdd};
    const int outside = said.outsideMm.value_or(0);
    if (outside < 0 || outside > 999) return Error{Code::MeasureOdd};
    if (auto bad = marksFit(said, ground.shelf); !bad) return bad;
    if (said.lastChange)
        if (auto bad = pastDate(*said.lastChange, ground.now); !bad) return bad;
    return pastDate(said.inserted, ground.now);
}

/// The same line twice, but for its id.
bool areAlike(const record::AddLine& one, record::AddLine other) {
    other.line = one.line;
    return one == other;
}

Outcome isNew(const record::AddLine& said, const record::Record& record) {
    for (const record::Line* line : record.linesInUse())
        if (line->said.line != said.line && areAlike(line->said, said))
            return Error{Code::LineAlike};
    return Done{};
}

/// The days of the visits on the patient with this line.
std::vector<std::string> visitedOn(const record::Record& record, const base::LineId& line) {
    std::vector<std::string> days;
    for (const record::Visit& visit : record.visits) {
        const bool isOnIt = visit.opened.line == line && visit.opened.on == practice::On::Patient;
        if (isOnIt && !record.wrongChart(visit.origin.entry))
            days.push_back(base::dateAt(visit.origin.atMs, visit.origin.offsetMinutes));
    }
    return days;
}

/// The last day on which the record tells of it: put in, changed, or in a visit on the patient.
std::string lastSeenOn(const record::Record& record, const record::Line& line) {
    std::string last = std::max(line.said.inserted, line.said.lastChange.value_or(""));
    for (const std::string& day : visitedOn(record, line.said.line)) last = std::max(last, day);
    return last;
}

/// A line is put in before anything is done with it. A day that is wrong already may be mended in
/// steps: only what makes it later is held against the visits.
Outcome isBeforeItsVisits(const record::Line& line, const record::AddLine& now,
                          const record::Record& record) {
    if (now.inserted <= line.said.inserted) return Done{};
    for (const std::string& day : visitedOn(record, now.line))
        if (day < now.inserted) return Error{Code::InsertedTooLate};
    return Done{};
}

}  // namespace

Outcome pastDate(const std::string& date, const base::Instant& now) {
    if (!base::isDate(date)) return Error{Code::NoDate, {date}};
    if (base::daysBetween(date, base::today(now)) < 0) return Error{Code::DateInFuture, {date}};
    return Done{};
}

std::optional<int> markMmOf(const std::string& kind, const procedure::Shelf& shelf) {
    std::optional<int> least;
    for (const procedure::TaughtPtr& taught : shelf.current()) {
        const auto& kinds = taught->pack.applies.line;
        if (!kinds.empty() && std::ranges::count(kinds, kind) == 0) continue;
        for (const packs::Measure& measure : taught->pack.measures)
            if (measure.markMm && packs::baselineOf(measure) == packs::Baseline::OutsideLength)
                least = std::min(least.value_or(*measure.markMm), *measure.markMm);
    }
    return least;
}

Outcome marksFit(const record::AddLine& said, const procedure::Shelf& shelf) {
    const auto apart = markMmOf(said.kind, shelf);
    if (!apart || !packs::contradict(*apart, {.mm = said.outsideMm, .marks = said.marks}))
        return Done{};
    return Error{
        Code::MarksContradict,
        {std::to_string(*said.marks), std::to_string(*apart), std::to_string(*said.outsideMm)}};
}

Outcome mayBeSaid(const record::AddLine& said, const LineGround& ground) {
    if (auto bad = isRight(said, ground); !bad) return bad;
    if (ground.record.line(said.line)) return Error{Code::LineAlike};
    return isNew(said, ground.record);
}

Outcome mayBeSaid(const record::CorrectLine& said, const LineGround& ground) {
    const record::Line* line = ground.record.line(said.now.line);
    if (!line) return Error{Code::LineUnknown};
    if (line->said == said.now) return Error{Code::LineUnchanged};
    if (auto bad = isRight(said.now, ground); !bad) return bad;
    if (!line->isInUse && line->removals.back().said.on < said.now.inserted)
        return Error{Code::InsertedTooLate};
    if (auto bad = isBeforeItsVisits(*line, said.now, ground.record); !bad) return bad;
    return line->isInUse ? isNew(said.now, ground.record) : Outcome(Done{});
}

Outcome mayBeSaid(const record::RemoveLine& said, const LineGround& ground) {
    const record::Line* line = ground.record.line(said.line);
    if (!line) return Error{Code::LineUnknown};
    if (!line->isInUse) return Error{Code::LineRemoved};
    const record::Visit* open = ground.record.openVisit();
    if (open && open->opened.line == said.line) return Error{Code::LineInVisit};
    if (auto bad = pastDate(said.on, ground.now); !bad) return bad;
    if (said.on < lastSeenOn(ground.record, *line)) return Error{Code::RemovedTooEarly};
    return Done{};
}

Outcome mayBeSaid(const record::KeepLine& said, const LineGround& ground) {
    const record::Line* line = ground.record.line(said.line);
    if (!line) return Error{Code::LineUnknown};
    if (line->isInUse) return Error{Code::LineInUse};
    return isNew(line->said, ground.record);
}

}  // namespace desk
