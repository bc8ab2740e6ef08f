// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <variant>
#include <vector>

#include "ledger/ledger.h"
#include "ledger/lineage.h"
#include "record/housepayloads.h"
#include "record/usepayloads.h"

/// Who looked at what. The log is the ledger's own record: its subject is the id of the ledger, so
/// that it is sealed under a key of its own, and neither a patient's record nor the list of the
/// staff grows with it.
namespace record {

/// The subject of the log of the ledger with this id.
base::PatientId useLogOf(const base::LedgerId& ledger);
/// Whether this is the log of the ledger or of one it went on from: no patient, and never erased.
bool isUseLog(const base::PatientId& subject, const ledger::Lineage& lineage);

/// A code of the scheme DCM with its meaning there, both "" for none.
struct Coded {
    const char *code = "", *meaning = "";
};
/// How DICOM PS3.16, context groups 400 and 401, would name it.
struct EventCode {
    Coded event;
    Coded type = {};  ///< of the event; none where it needs none
};
EventCode eventCodeOf(Use what);
EventCode eventCodeOf(AccessChange what);

/// One line of what an auditor reads: what somebody did, or a change of who can open the record.
struct UseLine {
    std::variant<NoteUse, ChangeAccess> said;
    std::optional<base::StaffId> by = {};
    std::int64_t atMs = 0;  ///< UTC
    int offsetMinutes = 0;  ///< local time minus UTC then
    /// The names that the record has of who did it and of the patient or colleague it was done to;
    /// "" where it has none, as of an erased patient.
    std::string who = {}, whose = {};

    const NoteUse* use() const { return std::get_if<NoteUse>(&said); }
    const ChangeAccess* change() const { return std::get_if<ChangeAccess>(&said); }
};
EventCode eventCodeOf(const UseLine& line);

/// Every line that opens, newest first; also those of the ids the ledger had before it was
/// restored. Errors: those of the ledger.
base::Result<std::vector<UseLine>> readUseLog(const ledger::Ledger& ledger);

}  // namespace record
