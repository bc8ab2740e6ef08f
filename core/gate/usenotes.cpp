// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/usenotes.h"

#include "record/draft.h"
#include "record/uselog.h"

namespace gate {
namespace {

/// Whether every time has a line of its own.
bool isCounted(record::Use what) {
    switch (what) {
        case record::Use::Searched:
        case record::Use::Opened:
        case record::Use::Verified:
        case record::Use::ReadLog:
            return false;
        case record::Use::SignedIn:
        case record::Use::SignedOut:
        case record::Use::BreakGlass:
        case record::Use::Printed:
        case record::Use::Saved:
        case record::Use::Exported:
            return true;
    }
    return true;
}

}  // namespace

void UseNotes::begin(const base::StaffId& person, const std::string& role) {
    m_person = person;
    m_role = role;
    m_noted.clear();
}

void UseNotes::end() {
    m_person.reset();
    m_noted.clear();
    m_waiting.clear();
}

base::Outcome UseNotes::note(const record::NoteUse& said) {
    if (!m_person) return base::Error{base::Code::AccessSignedOut};
    const std::string whose = said.patient ? said.patient->text() : std::string();
    const bool isNew = m_noted.insert({said.what, whose}).second;
    if (!isNew && !isCounted(said.what)) return base::Done{};
    auto draft = record::draftOf(said, m_person, m_role, m_clock.now());
    draft.subject = record::useLogOf(m_ledger.id());
    draft.body.must = false;  // nothing that is signed rests on it
    m_waiting.push_back(std::move(draft));
    return write();
}

base::Outcome UseNotes::write() {
    const auto version = m_ledger.foldVersion();
    if (!version) return version.error();
    const auto written = m_ledger.append(m_waiting, m_clock.now(), {.foldVersion = *version});
    if (!written) return written.error();
    m_waiting.clear();
    return base::Done{};
}

}  // namespace gate
