// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ledger/ledger.h"
#include "ledger/lineage.h"
#include "record/usepayloads.h"

/// Who looked at what. The log is the ledger's own record: its subject is the id of the ledger, so
/// that it is sealed under a key of its own, and neither a patient's record nor the list of the
/// staff grows with it.
namespace record {

/// The subject of the log of the ledger with this id.
base::PatientId useLogOf(const base::LedgerId& ledger);
/// Whether this is the log of the ledger or of one it went on from: no patient, and never erased.
bool isUseLog(const base::PatientId& subject, const ledger::Lineage& lineage);

/// How DICOM PS3.16, context groups 400 and 401, would name it: codes of the scheme DCM.
struct EventCode {
    const char* event;
    const char* type;  ///< of the event; "" where it needs none
};
EventCode eventCodeOf(Use what);

/// One line of the log.
struct Used {
    NoteUse said;
    std::optional<base::StaffId> by = {};
    std::int64_t atMs = 0;  ///< UTC
    int offsetMinutes = 0;  ///< local time minus UTC then
    bool operator==(const Used&) const = default;
};

/// The same with the names that the record has; "" where it has none, as of an erased patient.
struct UseLine {
    Used used;
    std::string who, whose;
};

/// Every line that opens, newest first; also those of the ids the ledger had before it was
/// restored. Errors: those of the ledger.
base::Result<std::vector<Used>> readUseLog(const ledger::Ledger& ledger);
base::Result<std::vector<UseLine>> namedUseLog(const ledger::Ledger& ledger);

}  // namespace record
