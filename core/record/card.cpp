// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/card.h"

#include <algorithm>
#include <set>

#include "base/date.h"
#include "ledger/jcs.h"

namespace record {
namespace {

std::optional<std::string> lastDue(const Record& record) {
    std::optional<std::string> due;
    for (const Visit& visit : record.visits)
        if (visit.change && visit.change->said.due) due = visit.change->said.due;
    return due;
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
    card.due = lastDue(record);
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
