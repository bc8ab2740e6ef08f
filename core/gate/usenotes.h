// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <vector>

#include "base/clock.h"
#include "ledger/ledger.h"
#include "record/usepayloads.h"

namespace gate {

/// Writes who looked at what into the log of a ledger. Nobody is kept from reading by a disk that
/// is full: what could not be written goes out with the next line.
class UseNotes {
  public:
    UseNotes(ledger::Ledger& ledger, const base::Clock& clock) : m_ledger(ledger), m_clock(clock) {}

    /// Whose lines follow; what was opened counts anew.
    void begin(const base::StaffId& person, const std::string& role);
    /// The same person may open the same record any number of times: one line says so. What was
    /// printed, saved or exported has a line each time. Errors: those of the ledger.
    base::Outcome note(const record::NoteUse& said);
    /// Whether the same person did this with this patient's record since begin().
    bool has(record::Use what, const base::PatientId& patient) const {
        return m_noted.contains({what, patient.text()});
    }
    /// After signing out: what is still waiting can't be sealed any more.
    void end();

  private:
    base::Outcome write();

    ledger::Ledger& m_ledger;
    const base::Clock& m_clock;
    std::optional<base::StaffId> m_person;
    std::string m_role;
    std::set<std::pair<record::Use, std::string>> m_noted;
    std::vector<ledger::Draft> m_waiting;
};

}  // namespace gate
