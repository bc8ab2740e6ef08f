// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/card.h"

#include <algorithm>
#include <set>

#include "base/date.h"
#include "ledger/jcs.h"

namespace record {
namespace {

/// How long such a dressing may stay on such a line, as far as the pack says.
std::optional<int> daysBy(const packs::Pack& pack, const Changed& changed) {
    const auto& lines = pack.applies.line;
    const bool isForIt = lines.empty() || std::ranges::count(lines, changed.line) > 0;
    if (!isForIt || !pack.schedule) return std::nullopt;
    const auto* kind = packs::find(pack.schedule->dressings, changed.dressing);
    return kind ? std::optional(kind->days) : std::nullopt;
}

/// The same by the packs of the visits, the last that knows it.
std::optional<int> daysTaught(const Record& record, const Changed& changed) {
    for (auto visit = record.visits.rbegin(); visit != record.visits.rend(); ++visit)
        if (visit->taught && !record.wrongChart(visit->origin.entry))
            if (const auto days = daysBy(visit->taught->pack, changed)) return days;
    return std::nullopt;
}

/// From the newest change of the line that is written down: in a visit, or with the line itself.
LineDue dueOn(const Record& record, const base::LineId& id) {
    LineDue found{.line = id, .arm = {}, .kind = {}, .due = {}, .changed = {}};
    std::string newest;
    for (const Visit& visit : record.visits) {
        if (visit.opened.line != id || !visit.change || !visit.change->said.due) continue;
        if (record.wrongChart(visit.origin.entry)) continue;
        const Origin& origin = visit.change->origin;
        found.due = visit.change->said.due;
        newest = base::dateAt(origin.atMs, origin.offsetMinutes);
    }
    const Line* line = record.line(id);
    if (!line) return found;
    found.arm = base::nameOf(line->said.arm);
    found.kind = line->said.kind;
    const std::string on = line->said.lastChange.value_or("");
    if (!base::isDate(on) || on <= newest) return found;
    const Changed changed{on, line->said.dressing, line->said.kind};
    const auto days = daysTaught(record, changed);
    found.due = days ? std::optional(base::addDays(on, *days)) : std::nullopt;
    found.changed = days ? std::nullopt : std::optional(changed);
    return found;
}

/// Of the lines in use, and of those that visits name and the record does not have.
std::vector<LineDue> linesOf(const Record& record) {
    std::vector<LineDue> found;
    for (const Line* line : record.linesInUse()) found.push_back(dueOn(record, line->said.line));
    std::set<base::LineId> unknown;
    for (const Visit& visit : record.visits)
        if (!record.line(visit.opened.line) && visit.change &&
            unknown.insert(visit.opened.line).second)
            found.push_back(dueOn(record, visit.opened.line));
    return found;
}

bool isSooner(const LineDue& one, const LineDue& other) { return one.due < other.due; }

/// Those that have a day, the soonest first.
std::vector<LineDue> inOrder(std::vector<LineDue> lines) {
    std::erase_if(lines, [](const LineDue& one) { return !one.due; });
    std::ranges::stable_sort(lines, isSooner);
    return lines;
}

std::vector<LineDue> duesBy(std::vector<LineDue> lines, const procedure::Shelf& shelf) {
    for (LineDue& line : lines) {
        if (line.due || !line.changed) continue;
        std::optional<int> days;
        for (const procedure::TaughtPtr& taught : shelf.current())
            if (const auto one = daysBy(taught->pack, *line.changed))
                days = std::min(days.value_or(*one), *one);
        if (days) line.due = base::addDays(line.changed->on, *days);
    }
    return inOrder(std::move(lines));
}

void tellProgress(Card& card, const Record& record, const Learner& learner,
                  const procedure::Taught& taught) {
    std::set<std::string> done;
    for (const auto& signOff : learner.signOffs)
        if (signOff.said.pack.digest == taught.digest && !record.wrongChart(signOff.origin.entry))
            done.insert(signOff.said.competencies.begin(), signOff.said.competencies.end());
    card.signedCompetencies = static_cast<int>(done.size());
    card.competencies = static_cast<int>(taught.pack.competencies.size());
    card.packTitle = packs::text(taught.pack, taught.pack.title, "en");
}

Card cardOf(const Record& record, const Learner& learner) {
    Card card{.learner = learner.said.learner, .patient = record.id};
    card.patientName = record.patient.name;
    card.born = record.patient.born;
    card.number = record.patient.number;
    card.learnerName = learner.said.isPatient ? record.patient.name : learner.said.name;
    card.relationship = learner.said.isPatient ? "patient" : learner.said.relationship;
    if (const auto inUse = record.linesInUse(); !inUse.empty())
        card.arm = base::nameOf(inUse.back()->said.arm);
    card.lines = linesOf(record);
    if (const auto known = inOrder(card.lines); !known.empty()) card.due = known.front().due;
    for (const Visit* visit : record.visitsOf(learner.said.learner)) {
        ++card.visits;
        card.lastVisit = base::dateAt(visit->origin.atMs, visit->origin.offsetMinutes);
        card.visitOpen = card.visitOpen || visit->isOpen();
        if (visit->taught) tellProgress(card, record, learner, *visit->taught);
    }
    return card;
}

ledger::CardRow rowOf(const Card& card) {
    ledger::CardRow row{.learner = card.learner, .patient = card.patient};
    for (const std::string* text : {&card.learnerName, &card.patientName, &card.number})
        for (std::string& key : searchKeys(*text))
            if (std::find(row.searchKeys.begin(), row.searchKeys.end(), key) ==
                row.searchKeys.end())
                row.searchKeys.push_back(std::move(key));
    for (const std::string& word : searchWords(card.learnerName)) row.sortKey += word + ' ';
    row.sortKey += card.learner.text();
    row.json = ledger::jcs(base::toJson(card)).value();
    return row;
}

}  // namespace

std::vector<LineDue> duesOf(const Card& card, const procedure::Shelf& shelf) {
    return duesBy(card.lines, shelf);
}

std::vector<LineDue> duesOf(const Record& record, const procedure::Shelf& shelf) {
    return duesBy(linesOf(record), shelf);
}

std::optional<std::string> dueOf(const Record& record, const procedure::Shelf& shelf) {
    const auto dues = duesOf(record, shelf);
    return dues.empty() ? std::nullopt : dues.front().due;
}

std::optional<std::string> dueOf(const Record& record, const Line& line, const packs::Pack& pack) {
    if (!line.isInUse) return std::nullopt;
    const LineDue found = dueOn(record, line.said.line);
    if (found.due || !found.changed) return found.due;
    const auto days = daysBy(pack, *found.changed);
    return days ? std::optional(base::addDays(found.changed->on, *days)) : std::nullopt;
}

ledger::Derived derive(const Record& record) {
    ledger::Derived derived;
    derived.foldVersion = foldVersion;
    for (const Learner& learner : record.learners)
        derived.cards.push_back(rowOf(cardOf(record, learner)));
    if (const Visit* visit = record.openVisit()) {
        derived.setsOpenVisit = true;
        derived.openVisit = {visit->id, record.id};
    }
    return derived;
}

}  // namespace record
