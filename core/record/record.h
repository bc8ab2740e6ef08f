// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "ledger/entry.h"
#include "practice/practice.h"
#include "procedure/shelf.h"
#include "record/payload.h"
#include "record/shapes.h"
#include "record/stated.h"

/// A patient's record: the fold of the entries about one person, made when it is opened.
namespace record {

/// How a line read until it was corrected.
struct Corrected {
    AddLine before;
    std::string why;
    Origin origin;  ///< of the correction
};

struct Line {
    AddLine said;   ///< as it reads after all corrections
    Origin origin;  ///< of its first entry
    std::vector<Corrected> corrected = {};
    std::vector<Stated<RemoveLine>> removals = {};
    std::vector<Stated<KeepLine>> kept = {};  ///< removals that were taken back
    bool isInUse = true;                      ///< else the last of `removals` says since when
};

struct Visit {
    base::VisitId id;
    practice::OpenVisit opened;
    Origin origin;
    std::vector<practice::Event> events;
    procedure::TaughtPtr taught;  ///< null when the pack is not at hand: then `state` is bare
    practice::State state;
    std::optional<Stated<practice::RecordChange>> change;
    std::optional<Stated<practice::StopVisit>> stopped;
    std::uint64_t lastSeq = 0;  ///< of its newest entry
    bool isOpen() const { return state.ending == practice::Ending::Open; }
};

struct Learner {
    AddLearner said;
    Origin origin;
    std::optional<Stated<AskConsent>> consent;
    std::optional<Stated<AskNeeds>> needs;
    std::vector<Stated<AskBack>> asked;
    std::vector<Stated<MakePlan>> plans;
    std::vector<Stated<DoDrill>> drills;
    std::vector<Stated<SignOff>> signOffs;
    std::optional<Stated<DecideHelp>> help;
    std::vector<Stated<IssuePaper>> papers;
};

/// An entry this program can't read or has no place for; kept and shown as it is.
struct Unknown {
    std::string type;
    int version = 1;
    bool must = false;  ///< nothing is signed over it, see Record::blocking
    Origin origin;
    std::vector<std::string> about;  ///< ids of whom and what it concerns
    std::optional<base::VisitId> visit;
    std::string data;  ///< the JSON as it stands in the entry
};

struct Record {
    base::PatientId id;
    AddPatient patient;
    Origin origin;
    std::optional<Stated<AskAllergies>> allergies;
    std::vector<Line> lines;
    std::vector<Learner> learners;
    std::vector<Visit> visits;  ///< in the order they were opened
    std::vector<Stated<AddAddendum>> addenda;
    std::vector<Stated<AddLateEntry>> lateEntries;
    std::vector<Stated<MarkWrongChart>> wrongCharts;
    std::vector<Unknown> unknown;
    std::uint64_t entries = 0;

    const Learner* learner(const base::LearnerId& learnerId) const;
    const Line* line(const base::LineId& lineId) const;
    std::vector<const Line*> linesInUse() const;
    /// Of those in use the one this learner was last taught on, else the newest; of a record whose
    /// lines were all removed the newest of them. Null: it has none.
    const Line* lineFor(const base::LearnerId& learnerId) const;
    const Visit* visit(const base::VisitId& visitId) const;
    /// The mark that this entry was written in the wrong chart, the first one; null: it counts.
    const Stated<MarkWrongChart>* wrongChart(const base::CommandId& entry) const;
    /// The visits in which this learner was the doer or (way Show) was shown, in order; without
    /// those that were written in the wrong chart.
    std::vector<const Visit*> visitsOf(const base::LearnerId& learnerId) const;
    /// Who interpreted in her visits of this pack, each once.
    std::vector<practice::Interpreter> interpretersOf(const base::LearnerId& learnerId,
                                                      const practice::PackRef& pack) const;
    /// The unknown `must` entries that concern this learner: those that name her, that are part
    /// of a visit she was at, or that name no learner of this record at all.
    std::vector<const Unknown*> blocking(const base::LearnerId& learnerId) const;
    /// The visit that is open, if one is.
    const Visit* openVisit() const;
};

struct Staff {
    AddStaff said;
    Origin origin;
    /// The names of the keys they have signed by, the present one last; none where records are not
    /// sealed.
    std::vector<std::string> kids = {};
    bool isRetired = false;
};

/// What the ledger's own entries say: the staff, the unit, and who was erased.
struct House {
    std::vector<Staff> staff;
    std::optional<SetUnit> unit;
    std::vector<Stated<ErasePatient>> erased;
    const Staff* person(const base::StaffId& id) const;
    bool isErased(const base::PatientId& patient) const;
};

/// One more entry, lifted to its newest shape. Both are total: what can't be read or placed is kept
/// among `unknown`.
void fold(Record& record, const ledger::Entry& entry, const procedure::Shelf& shelf,
          const ledger::Shapes& known = shapes());
void fold(House& house, const ledger::Entry& entry);
/// All entries of one subject, handed in in any order.
Record foldRecord(const std::vector<ledger::Entry>& entries, const procedure::Shelf& shelf);
House foldHouse(const std::vector<ledger::Entry>& entries);

}  // namespace record
