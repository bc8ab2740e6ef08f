// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The one act of Gate that takes two people.
#include "base/text.h"
#include "gate/gate.h"
#include "record/draft.h"
#include "record/naming.h"
#include "record/uselog.h"
#include "seal/signature.h"

namespace gate {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;
using record::Role;

Outcome Gate::mayErase(const Erasing& asked, const base::StaffId& second) const {
    const record::Staff* other = m_house.person(second);
    if (!other || other->isRetired || !record::mayErase(person()->said.role, other->said.role))
        return Error{Code::EraseTwo};
    if (record::isUseLog(asked.patient, ledger::Lineage(m_ledger.id(), m_ledger.former())))
        return Error{Code::PatientUnknown};
    const auto open = m_ledger.openVisit();
    if (!open) return open.error();
    if (*open && (*open)->patient == asked.patient) return Error{Code::EraseVisit};
    const auto entries = m_ledger.ofSubject(asked.patient);
    if (!entries) return entries.error();
    if (entries->empty()) return Error{Code::PatientUnknown};
    if (!entries->front().isOpen) return Error{Code::PatientErased};
    if (record::namesSomebody(asked.why, record::foldRecord(*entries, procedure::Shelf())))
        return Error{Code::EraseNames};
    return Done{};
}

base::Outcome Gate::finishErasing(const Erasing& asked, const KeyChange& second) {
    if (const auto may = mayErase(asked, second.said.staff); !may) return may;
    const seal::Identity& other = *second.ring->identity();
    const record::Staff* known = m_house.person(second.said.staff);
    if (known->kids.empty() || known->kids.back() != other.known().kid())
        return Error{Code::AccessChanged, {"person"}};
    const base::Instant now = m_clock.now();
    auto draft = record::draftOf(record::ErasePatient{asked.patient, second.said.staff, asked.why},
                                 m_person, record::roleOf(m_person, m_house), now);
    for (const auto& [by, purpose] : {std::pair(m_ring->identity(), seal::Purpose::Author),
                                      {&other, seal::Purpose::Verification}})
        if (const auto done = seal::addSignature(draft.body, *by, m_ledger.id(), purpose); !done)
            return done;
    const auto version = m_ledger.foldVersion();
    if (!version) return version.error();
    const auto written =
        m_ledger.append({draft}, now, {.foldVersion = *version, .forgets = asked.patient});
    if (!written) return written.error();
    sealWith(m_ring);  // the former codec may have the key in memory
    record::fold(m_house, written->front());
    return Done{};
}

Slow<Done> Gate::erase(const Erasing& asked, seal::Secret own, seal::Secret others) {
    const auto refusal = [](const Error& error) {
        return Slow<Done>{[] {}, [error]() -> Outcome { return error; }};
    };
    if (const auto may = mayConfirm(); !may) return refusal(may.error());
    const auto why = base::cleanText(asked.why);
    if (!why || base::isBlank(*why)) return refusal(Error{Code::TextMissing});
    const seal::WrappedIdentity* row = seal::rowOf(*m_rows, *m_person);
    if (row == nullptr) return refusal(Error{Code::AccessRetired});
    auto made = std::make_shared<std::optional<Changed>>();
    auto typed =
        std::make_shared<std::pair<seal::Secret, seal::Secret>>(std::move(own), std::move(others));
    // Of the one who is signed in until theirs was right.
    const auto whose = std::make_shared<WrongPassphrases::Whose>(m_person);
    const auto work = [made, typed, whose, row = *row, rows = *m_rows, asked,
                       usual = m_terms.usual] {
        const auto first = seal::unwrap(row, typed->first);
        made->emplace(first ? signedIn(rows, asked.second, typed->second, usual, whose.get())
                            : Changed(first.error()));
    };
    Erasing clean = asked;
    clean.why = *why;
    return {work, [this, made, clean, whose, ring = m_ring]() -> Outcome {
                if (!(*made)->ok()) return counted((*made)->error(), *whose);
                if (m_ring != ring) return Error{Code::AccessSignedOut};
                return counted(finishErasing(clean, ***made), *whose);
            }};
}

}  // namespace gate
