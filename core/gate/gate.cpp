// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/gate.h"

#include "gate/trust.h"
#include "record/card.h"
#include "record/draft.h"
#include "seal/guarding.h"
#include "seal/sealingcodec.h"
#include "seal/signature.h"

namespace gate {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;
using seal::Keyring;
using seal::KeyRows;

base::Result<std::unique_ptr<Gate>> Gate::open(ledger::Ledger& ledger, const base::Clock& clock,
                                               Terms terms) {
    const auto stored = ledger.access();
    if (!stored) return stored.error();
    auto rows = seal::readKeyRows(*stored);
    if (!rows) return rows.error();
    if (!*rows && ledger.head().size > 0) return Error{Code::AccessChanged, {"none"}};
    if (*rows && !terms.takesCheaper && !seal::costIsEnough(**rows, seal::leastForReal))
        return Error{Code::AccessTooCheap};
    std::unique_ptr<Gate> gate(new Gate(ledger, clock, terms));
    gate->m_rows = std::move(*rows);
    return gate;
}

Gate::~Gate() { signOut(); }

void Gate::sealWith(const std::shared_ptr<Keyring>& ring) {
    if (ring)
        m_ledger.use(std::make_shared<seal::SealingCodec>(ring, m_ledger.keyShelf()));
    else
        m_ledger.use(ledger::plainCodec());
}

/// Somebody is signed in who was not before.
void Gate::isHere() {
    if (!m_terms.notesUse) return;
    m_notes.begin(*m_person, record::roleOf(m_person, m_house));
    const record::NoteUse said{.what = record::Use::SignedIn,
                               .wrongBefore = std::exchange(m_untold, 0)};
    static_cast<void>(m_notes.note(said).ok());
}

Outcome Gate::note(const record::NoteUse& said) {
    if (!isSignedIn()) return Error{Code::AccessSignedOut};
    return m_terms.notesUse ? m_notes.note(said) : Outcome(Done{});
}

/// Says that whoever was signed in is so no more, while their keys still seal it.
void Gate::isLeaving() {
    if (isSignedIn() && m_terms.notesUse)
        static_cast<void>(m_notes.note({record::Use::SignedOut}).ok());
    m_notes.end();
}

void Gate::signOut() {
    isLeaving();
    sealWith(nullptr);
    m_isConfirmed = false;
    m_ring.reset();
    m_person.reset();
    m_house = {};
}

base::LedgerId Gate::begunAs() const {
    const std::vector<ledger::Former> former = m_ledger.former();
    return former.empty() ? m_ledger.id() : former.front().ledger;
}

const record::Staff* Gate::person() const { return m_person ? m_house.person(*m_person) : nullptr; }

std::optional<seal::PublicIdentity> Gate::publicKey(const std::string& kid) const {
    return m_rows ? m_rows->identityOf(kid) : std::nullopt;
}

Outcome Gate::counted(const Outcome& outcome, const WrongPassphrases::Whose& whose) {
    if (outcome.ok()) {
        m_wrong.noteRight(whose);
    } else if (outcome.error().code == Code::SealWrongPassphrase) {
        m_wrong.noteWrong(whose, m_clock.now());
        ++m_untold;
    }
    return outcome;
}

/// Whether the rows that opened are those the sealed entries tell of.
Outcome Gate::isTrusted(const Keyring& ring, const std::vector<ledger::Entry>& entries) const {
    return trust(entries, ledger::Lineage(m_ledger.id(), m_ledger.former()), *m_rows, ring);
}

/// A row on the disk says who signs in and what opens; the sealed entries say whether that is so.
base::Result<record::House> Gate::trustedHouse(const Keyring& ring,
                                               const base::StaffId& person) const {
    const auto entries = m_ledger.withoutSubject();
    if (!entries) return entries.error();
    if (const auto trusted = isTrusted(ring, *entries); !trusted) return trusted.error();
    record::House house = record::foldHouse(*entries);
    const record::Staff* found = house.person(person);
    if (!found || found->kids.empty() || found->kids.back() != ring.identity()->known().kid())
        return Error{Code::AccessChanged, {"person"}};
    if (found->isRetired) return Error{Code::AccessRetired};
    return house;
}

/// Who comes by the sheet did not sign in: the rows they come in beside were looked at by nobody.
Outcome Gate::mayComeBack(const Keyring& ring) const {
    if (m_ring || !isFounded()) return Done{};
    const auto entries = m_ledger.withoutSubject();
    return entries ? isTrusted(ring, *entries) : entries.error();
}

Outcome Gate::append(const KeyChange& change, const seal::Identity& by) {
    const base::Instant now = m_clock.now();
    const base::StaffId speaker = m_person.value_or(change.said.staff);
    std::string role = record::roleOf(speaker, m_house);
    if (change.adds && !m_person) role = base::nameOf(change.adds->role);
    if (change.said.role && !m_person) role = base::nameOf(*change.said.role);
    std::vector<ledger::Draft> drafts;
    if (change.adds) drafts.push_back(record::draftOf(*change.adds, speaker, role, now));
    drafts.push_back(record::draftOf(change.said, speaker, role, now));
    for (ledger::Draft& draft : drafts)
        if (const auto done =
                seal::addSignature(draft.body, by, m_ledger.id(), seal::Purpose::Author);
            !done)
            return done;
    if (change.proof)
        if (const auto done = seal::addSignature(drafts.back().body, change.proof->signer(),
                                                 m_ledger.id(), seal::Purpose::Verification);
            !done)
            return done;
    const auto version = m_ledger.foldVersion();
    if (!version) return version.error();
    ledger::Derived derived;
    derived.foldVersion = m_ledger.head().size == 0 ? record::foldVersion : *version;
    derived.access = seal::changedRows(m_rows.value_or(KeyRows()), change.rows);
    const auto written = m_ledger.append(drafts, now, derived);
    if (!written) return written.error();
    return Done{};
}

/// All or nothing. The first entries go out under the keys they tell of, all others under those
/// of before.
Outcome Gate::write(KeyChange change) {
    const auto ring = change.ring ? change.ring : m_ring;
    if (!m_ring) sealWith(ring);
    const auto may = mayComeBack(*ring);
    const auto appended = may ? append(change, *ring->identity()) : may;
    if (!appended) {
        sealWith(m_ring);
        return appended;
    }
    m_rows = std::move(change.rows);
    m_ring = ring;
    const bool isNew = !m_person;
    if (isNew) m_person = change.said.staff;
    sealWith(m_ring);
    auto house = trustedHouse(*m_ring, *m_person);
    if (!house) return house.error();
    m_house = std::move(*house);
    if (isNew) isHere();
    return Done{};
}

/// Somebody signs in by rows that are there, also in the place of a colleague.
Outcome Gate::enter(KeyChange change) {
    sealWith(change.ring);
    auto house = trustedHouse(*change.ring, change.said.staff);
    if (!house) {
        sealWith(m_ring);
        return house.error();
    }
    sealWith(m_ring);
    isLeaving();
    sealWith(change.ring);
    m_isConfirmed = false;
    m_ring = change.ring;
    m_person = change.said.staff;
    m_house = std::move(*house);
    change.ring.reset();
    isHere();
    // A full disk keeps nobody out: the cost is raised another time.
    if (change.isWritten) static_cast<void>(write(std::move(change)).ok());
    return Done{};
}

base::Result<seal::Secret> Gate::replaceRecovery() {
    if (const auto may = mayChangeStaff(); !may) return may.error();
    auto change = withNewRecovery(*m_rows, *m_ring, *m_person);
    if (!change) return change.error();
    seal::Secret sheet = std::move(*change->sheet);
    if (const auto done = write(std::move(*change)); !done) return done.error();
    return sheet;
}

Outcome Gate::retire(const base::StaffId& person) {
    if (const auto may = mayChangeStaff(); !may) return may.error();
    if (person == *m_person) return Error{Code::AccessNotOneself};
    auto change = retired(*m_rows, *m_ring, person);
    if (!change) return change.error();
    return write(std::move(*change));
}

}  // namespace gate
