// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Whose record is in view.
#include "base/text.h"
#include "desk/bounds.h"
#include "desk/desk.h"
#include "record/derivation.h"
#include "record/naming.h"
#include "record/part.h"

namespace desk {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

base::Result<std::vector<ledger::Entry>> Desk::entriesOf(const base::PatientId& patient) const {
    auto entries = m_ledger.ofSubject(patient);
    if (!entries) return entries.error();
    if (entries->empty()) return Error{Code::PatientUnknown};
    if (m_view.house.isErased(patient)) return Error{Code::PatientErased};
    if (!entries->front().isOpen) return Error{Code::SealKeyMissing};
    return entries;
}

Outcome Desk::openRecord(const base::PatientId& patient,
                         const std::optional<base::LearnerId>& learner, const std::string& reason) {
    const auto entries = entriesOf(patient);
    if (!entries) return entries.error();
    if (!mayOpenAsked(patient, *entries))
        if (const auto said = sayWhy(patient, *entries, reason); !said) return said;
    return readRecord(*entries, learner);
}

/// What somebody writes says itself who they are, and makes it theirs from then on. A patient who
/// is not known yet is being added.
Outcome Desk::readFor(const base::PatientId& patient) {
    const auto entries = entriesOf(patient);
    if (entries) return readRecord(*entries, std::nullopt);
    return entries.error().code == Code::PatientUnknown ? Outcome(Done{}) : entries.error();
}

/// Whether it may be opened without saying why. Nobody is asked beside a visit that runs.
bool Desk::mayOpenAsked(const base::PatientId& patient,
                        const std::vector<ledger::Entry>& entries) const {
    if (!m_gate || !m_gate->wantsReason(patient)) return true;
    if (m_view.openVisit && m_view.visitPatient == patient) return true;
    return record::hasPart(m_gate->person()->said.staff, entries);
}

/// Before anything of it is shown. Nobody is kept from reading by a disk that is full. The line
/// stays when the patient is erased, so it names nobody of the record.
Outcome Desk::sayWhy(const base::PatientId& patient, const std::vector<ledger::Entry>& entries,
                     const std::string& reason) {
    const auto clean = cleaned(record::NoteUse{record::Use::BreakGlass, patient, {}, reason});
    if (!clean) return clean.error();
    const auto& said = std::get<record::NoteUse>(*clean);
    if (base::isBlank(said.reason)) return Error{Code::ReasonWanted};
    if (record::namesSomebody(said.reason, record::foldRecord(entries, m_shelf)))
        return Error{Code::ReasonNames};
    static_cast<void>(m_gate->note(said).ok());
    return Done{};
}

Outcome Desk::readRecord(const std::vector<ledger::Entry>& entries,
                         const std::optional<base::LearnerId>& learner) {
    if (auto packs = record::fetchPacks(m_ledger, m_shelf, entries); !packs) return packs;
    m_view.record = record::foldRecord(entries, m_shelf);
    m_view.pack.clear();
    m_view.learner = learner;
    if (!m_view.learnerInView() && !m_view.record->learners.empty())
        m_view.learner = m_view.record->learners.front().said.learner;
    noteUse(record::Use::Opened, {});
    Q_EMIT changed();
    return Done{};
}

void Desk::closeRecord() {
    m_view.record.reset();
    m_view.learner.reset();
    Q_EMIT changed();
}

}  // namespace desk
