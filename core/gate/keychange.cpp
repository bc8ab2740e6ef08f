// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/keychange.h"

#include "ledger/base64url.h"
#include "seal/newpassphrase.h"

namespace gate {
namespace {

using base::Code;
using base::Error;
using record::AccessChange;
using seal::Cost;
using seal::Keyring;
using seal::KeyRows;
using seal::Secret;

base::Outcome mayBe(const Secret& passphrase, const std::string& name) {
    if (seal::weaknessOf(passphrase, name)) return Error{Code::AccessWeak};
    return base::Done{};
}

const seal::WrappedIdentity* rowByHandle(const KeyRows& rows, const std::string& handle) {
    for (const seal::WrappedIdentity& one : rows.people)
        if (one.handle == handle) return &one;
    return nullptr;
}

/// What is said of somebody who has these keys from now on.
record::ChangeAccess saying(const base::StaffId& person, AccessChange what,
                            const seal::PublicIdentity& keys) {
    return {.staff = person,
            .what = what,
            .kid = keys.kid(),
            .epoch = {},
            .epochDigest = {},
            .box = ledger::toBase64Url(keys.boxing)};
}

/// Names the keys of the sheet that counts from now on.
void announce(record::ChangeAccess& said, const seal::Recovery& sheet) {
    said.recovery = ledger::toBase64Url(sheet.signer().known().signing);
    said.recoveryBox = ledger::toBase64Url(sheet.pair().publicKey);
}

/// Names the epoch that begins.
void announce(record::ChangeAccess& said, const Keyring& ring) {
    said.epoch = ring.current().id.text();
    said.epochDigest = ring.current().digest();
}

record::AddStaff entryOf(const Newcomer& person, const base::StaffId& id) {
    return {.staff = id, .name = person.name, .initials = person.initials, .role = person.role};
}

record::AddStaff educator(const Newcomer& person, const base::StaffId& id) {
    record::AddStaff entry = entryOf(person, id);
    entry.role = record::Role::Educator;
    return entry;
}

/// Signs in by what is being written: that it opens is known before it is.
base::Result<std::shared_ptr<Keyring>> ringFrom(const KeyRows& rows, const std::string& handle,
                                                const Secret& passphrase) {
    auto ring = Keyring::signIn(rows, handle, passphrase);
    if (!ring) return ring.error();
    return std::make_shared<Keyring>(std::move(*ring));
}

}  // namespace

Changed founded(const base::LedgerId& home, const Newcomer& first, const Secret& passphrase,
                const Cost& cost) {
    if (const auto may = mayBe(passphrase, first.name); !may) return may.error();
    KeyChange change{.rows = {.names = seal::Stretch::withNewSalt(cost)}, .said = {}};
    const auto handle = seal::nameHandle(first.name, change.rows.names);
    if (!handle) return handle.error();
    const auto id = base::StaffId::random();
    const auto sheet = seal::Recovery::generate();
    auto ring = Keyring::found(change.rows, {home, id, *handle}, passphrase, cost, sheet);
    if (!ring) return ring.error();
    change.said = saying(id, AccessChange::Founded, ring->identity()->known());
    announce(change.said, *ring);
    announce(change.said, sheet);
    change.adds = educator(first, id);
    change.ring = std::make_shared<Keyring>(std::move(*ring));
    change.sheet = sheet.letters();
    return change;
}

Changed signedIn(const KeyRows& rows, const std::string& name, const Secret& passphrase,
                 const Cost& usual, std::optional<base::StaffId>* whose) {
    if (whose) whose->reset();
    const auto handle = seal::nameHandle(name, rows.names);
    if (!handle) return handle.error();
    const seal::WrappedIdentity* known = rowByHandle(rows, *handle);
    if (whose && known) *whose = known->person;
    auto ring = ringFrom(rows, *handle, passphrase);
    if (!ring) return ring.error();
    const seal::WrappedIdentity& row = *known;
    KeyChange change{.rows = rows, .said = {}, .ring = std::move(*ring), .isWritten = false};
    change.said = saying(row.person, AccessChange::RaisedCost, row.known);
    if (!seal::isBelow(row, usual)) return change;
    auto raised = seal::rewrapped(row, *change.ring->identity(), passphrase, usual);
    if (!raised) return change;  // it opened: what fails here is tried again next time
    seal::putInPlace(change.rows, std::move(*raised));
    change.isWritten = true;
    return change;
}

Changed recovered(const KeyRows& rows, const Secret& letters, const Newcomer& person,
                  const Secret& passphrase, const Cost& cost) {
    if (const auto may = mayBe(passphrase, person.name); !may) return may.error();
    auto sheet = seal::Recovery::fromLetters(letters);
    if (!sheet) return sheet.error();
    const auto opened = Keyring::unlockWithRecovery(rows, *sheet);
    if (!opened) return opened.error();
    const auto handle = seal::nameHandle(person.name, rows.names);
    if (!handle) return handle.error();
    const seal::WrappedIdentity* known = rowByHandle(rows, *handle);
    const auto id = known ? known->person : base::StaffId::random();
    KeyChange change{.rows = rows, .said = {}};
    if (!known) change.adds = educator(person, id);
    auto admission = opened->admit({rows.home, id, *handle}, passphrase, cost);
    if (!admission) return admission.error();
    change.said = saying(id, AccessChange::Recovered, admission->row.known);
    change.said.role = record::Role::Educator;
    seal::letIn(change.rows, std::move(*admission));
    auto ring = ringFrom(change.rows, *handle, passphrase);
    if (!ring) return ring.error();
    change.ring = std::move(*ring);
    change.proof = std::make_shared<const seal::Recovery>(std::move(*sheet));
    return change;
}

Changed withNewPassphrase(const KeyRows& rows, const base::StaffId& person, const std::string& name,
                          const Secret& old, const Secret& passphrase, const Cost& cost) {
    if (const auto may = mayBe(passphrase, name); !may) return may.error();
    const seal::WrappedIdentity* row = seal::rowOf(rows, person);
    if (row == nullptr) return Error{Code::AccessRetired};
    const auto identity = seal::unwrap(*row, old);
    if (!identity) return identity.error();
    auto fresh = seal::rewrapped(*row, *identity, passphrase, cost);
    if (!fresh) return fresh.error();
    KeyChange change{.rows = rows, .said = {}};
    change.said = saying(person, AccessChange::NewPassphrase, row->known);
    seal::putInPlace(change.rows, std::move(*fresh));
    return change;
}

Changed admitted(const KeyRows& rows, const Keyring& by, const Newcomer& person,
                 const Secret& passphrase, const Cost& cost) {
    if (const auto may = mayBe(passphrase, person.name); !may) return may.error();
    const auto handle = seal::nameHandle(person.name, rows.names);
    if (!handle) return handle.error();
    if (rowByHandle(rows, *handle)) return Error{Code::AccessNameTaken};
    const auto id = base::StaffId::random();
    auto admission = by.admit({rows.home, id, *handle}, passphrase, cost);
    if (!admission) return admission.error();
    KeyChange change{.rows = rows, .said = {}, .adds = entryOf(person, id)};
    change.said = saying(id, AccessChange::Admitted, admission->row.known);
    seal::letIn(change.rows, std::move(*admission));
    return change;
}

Changed reset(const KeyRows& rows, const Keyring& by, const base::StaffId& person,
              const std::string& name, const Secret& passphrase, const Cost& cost) {
    if (const auto may = mayBe(passphrase, name); !may) return may.error();
    const seal::WrappedIdentity* row = seal::rowOf(rows, person);
    if (row == nullptr) return Error{Code::AccessRetired};
    auto admission = by.admit({rows.home, person, row->handle}, passphrase, cost);
    if (!admission) return admission.error();
    KeyChange change{.rows = rows, .said = {}};
    change.said = saying(person, AccessChange::Reset, admission->row.known);
    seal::letIn(change.rows, std::move(*admission));
    change.ring = std::make_shared<Keyring>(by.copy());
    seal::beginEpoch(change.rows, *change.ring);
    announce(change.said, *change.ring);
    return change;
}

Changed retired(const KeyRows& rows, const Keyring& by, const base::StaffId& person) {
    if (seal::rowOf(rows, person) == nullptr) return Error{Code::AccessRetired};
    KeyChange change{.rows = rows, .said = {person, AccessChange::Retired, {}}};
    change.ring = std::make_shared<Keyring>(by.copy());
    seal::retire(change.rows, person, *change.ring);
    announce(change.said, *change.ring);
    return change;
}

Changed withNewRecovery(const KeyRows& rows, const Keyring& by, const base::StaffId& person) {
    const auto sheet = seal::Recovery::generate();
    KeyChange change{.rows = rows, .said = {person, AccessChange::NewRecovery, {}}};
    change.said.kid = by.identity()->known().kid();
    announce(change.said, sheet);
    change.ring = std::make_shared<Keyring>(by.copy());
    seal::replaceRecovery(change.rows, sheet, *change.ring);
    announce(change.said, *change.ring);
    change.sheet = sheet.letters();
    return change;
}

}  // namespace gate
