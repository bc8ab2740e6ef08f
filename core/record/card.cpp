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
        if (visit->taught)
            if (const auto days = daysBy(visit->taught->pack, changed)) return days;
    return std::nullopt;
}

/// From the newest change that is written down: in a visit, or of a line that was added since.
void tellDue(Card& card, const Record& record) {
    std::string newest;
    for (const Visit& visit : record.visits) {
        if (!visit.change || !visit.change->said.due) continue;
        const Origin& origin = visit.change->origin;
        card.due = visit.change->said.due;
        newest = base::dateAt(origin.atMs, origin.offsetMinutes);
    }
    for (const Line& line : record.lines) {
        const std::string on = line.said.lastChange.value_or("");
        if (!base::isDate(on) || on <= newest) continue;
        newest = on;
        const Changed changed{on, line.said.dressing, line.said.kind};
        const auto days = daysTaught(record, changed);
        card.due = days ? std::optional(base::addDays(on, *days)) : std::nullopt;
        card.changed = days ? std::nullopt : std::optional(changed);
    }
}

void tellProgress(Card& card, const Learner& learner, const procedure::Taught& taught) {
    std::set<std::string> done;
    for (const auto& signOff : learner.signOffs)
        if (signOff.said.pack.digest == taught.digest)
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
    if (!record.lines.empty()) card.arm = base::nameOf(record.lines.back().said.arm);
    tellDue(card, record);
    for (const Visit* visit : record.visitsOf(learner.said.learner)) {
        ++card.visits;
        card.lastVisit = base::dateAt(visit->origin.atMs, visit->origin.offsetMinutes);
        card.visitOpen = card.visitOpen || visit->isOpen();
        if (visit->taught) tellProgress(card, learner, *visit->taught);
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

std::optional<std::string> dueOf(const Card& card, const procedure::Shelf& shelf) {
    if (card.due || !card.changed) return card.due;
    std::optional<int> days;
    for (const procedure::TaughtPtr& taught : shelf.current())
        if (const auto one = daysBy(taught->pack, *card.changed))
            days = std::min(days.value_or(*one), *one);
    return days ? std::optional(base::addDays(card.changed->on, *days)) : std::nullopt;
}

std::optional<std::string> dueOf(const Record& record, const procedure::Shelf& shelf) {
    Card card;
    tellDue(card, record);
    return dueOf(card, shelf);
}

std::optional<std::string> dueOf(const Record& record, const packs::Pack& pack) {
    Card card;
    tellDue(card, record);
    if (card.due || !card.changed) return card.due;
    const auto days = daysBy(pack, *card.changed);
    return days ? std::optional(base::addDays(card.changed->on, *days)) : std::nullopt;
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
