// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The record in plain lines, for people who read at a terminal.
#include <algorithm>
#include <ostream>

#include "base/date.h"
#include "cli/recordjson.h"
#include "practice/tally.h"

namespace app {
namespace {

std::string dayOf(const record::Origin& origin) {
    return base::dateAt(origin.atMs, origin.offsetMinutes);
}

/// Behind what was written in the wrong chart by mistake.
const char* markOf(const record::Record& record, const record::Origin& origin) {
    return record.wrongChart(origin.entry) ? ", written in the wrong chart" : "";
}

void writeLearner(const record::Record& record, const record::Learner& learner, std::ostream& out) {
    const bool isPatient = learner.said.isPatient;
    out << "learner   " << learner.said.learner.text() << "  "
        << printable(isPatient ? record.patient.name : learner.said.name) << " ("
        << printable(isPatient ? "patient" : learner.said.relationship) << ")\n";
    for (const auto& one : learner.signOffs) {
        out << "  signed off on " << dayOf(one.origin) << ':';
        for (const std::string& competency : one.said.competencies)
            out << ' ' << printable(competency);
        out << markOf(record, one.origin) << '\n';
    }
    if (learner.help) out << "  goes home with help: " << printable(learner.help->said.why) << '\n';
    for (const record::Unknown* one : record.blocking(learner.said.learner))
        out << "  nothing can be signed over the unknown entry of type " << printable(one->type)
            << '\n';
}

void writeVisit(const record::Record& record, const record::Visit& visit, std::ostream& out) {
    const practice::Tally tally = practice::tallyOf(visit.state);
    out << "visit     " << visit.id.text() << "  " << dayOf(visit.origin) << ", "
        << base::nameOf(visit.opened.way) << " on " << base::nameOf(visit.opened.on) << ", learner "
        << visit.opened.learner.text() << "\n  ";
    if (visit.taught)
        out << tally.recorded << " of " << tally.steps << " steps recorded, " << tally.lapses
            << " lapses";
    else
        out << "its teaching pack is not at hand";
    if (tally.found > 0) out << ", " << tally.found << " found on the patient";
    if (tally.absences > 0) out << ", left " << tally.absences << " times";
    out << (visit.isOpen()  ? ", open"
            : visit.stopped ? ", stopped"
                            : ", closed")
        << markOf(record, visit.origin) << '\n';
    if (visit.change && visit.change->said.due)
        out << "  dressing changed, next due " << *visit.change->said.due << '\n';
}

}  // namespace

void writeList(const desk::RecordView& view, const std::vector<record::Card>& cards,
               std::ostream& out) {
    for (const record::Card& card : cards) {
        out << card.patient.text() << "  " << printable(card.patientName) << ", born " << card.born
            << ", " << printable(card.number) << "\n  learner " << card.learner.text() << "  "
            << printable(card.learnerName) << " (" << printable(card.relationship) << "), "
            << card.visits << " visits, " << card.signedCompetencies << " of " << card.competencies
            << " signed";
        if (card.due) out << ", next change " << *card.due;
        out << (card.visitOpen ? ", a visit is open\n" : "\n");
    }
    out << cards.size() << " learners, " << view.head.size << " entries, root " << view.head.root
        << '\n';
}

void writeRecord(const record::Record& record, std::ostream& out) {
    out << "patient   " << record.id.text() << "  " << printable(record.patient.name) << ", born "
        << record.patient.born << ", " << printable(record.patient.number) << '\n';
    for (const record::Line& line : record.lines) {
        out << "line      " << line.said.line.text() << "  " << printable(line.said.kind) << ", "
            << base::nameOf(line.said.arm) << " arm, inserted " << line.said.inserted;
        if (line.said.outsideMm) out << ", " << *line.said.outsideMm << " mm outside then";
        if (!line.isInUse) out << ", removed " << line.removals.back().said.on;
        out << '\n';
        for (const record::Corrected& one : line.corrected)
            out << "          corrected " << dayOf(one.origin)
                << "; before: " << printable(one.before.kind) << ", "
                << base::nameOf(one.before.arm) << " arm, inserted " << one.before.inserted << '\n';
    }
    for (const record::Learner& one : record.learners) writeLearner(record, one, out);
    for (const record::Visit& visit : record.visits) writeVisit(record, visit, out);
    for (const auto& one : record.addenda)
        out << "addendum  " << dayOf(one.origin) << "  " << printable(one.said.text) << '\n';
    for (const auto& one : record.lateEntries)
        out << "late      " << dayOf(one.origin) << "  " << printable(one.said.text)
            << markOf(record, one.origin) << '\n';
    for (const auto& one : record.wrongCharts)
        out << "mark      " << dayOf(one.origin) << "  written in the wrong chart: entry "
            << one.said.to.text() << ", " << printable(one.said.why) << '\n';
    for (const record::Unknown& one : record.unknown)
        out << "unknown   entry " << one.origin.seq << " of type " << printable(one.type)
            << ", version " << one.version << (one.must ? ", must be known to sign\n" : "\n");
    out << record.entries << " entries\n";
}

}  // namespace app
