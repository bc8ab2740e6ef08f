// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/follower.h"

#include <algorithm>

#include "ledger/base64url.h"
#include "record/shapes.h"
#include "seal/signature.h"

namespace gate {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;
using record::AccessChange;
using record::AddStaff;
using record::ChangeAccess;

Outcome refused(const char* what) { return Error{Code::AccessChanged, {what}}; }

}  // namespace

Outcome Follower::take(const ledger::Entry& entry) {
    if (!entry.isOpen) return refused("epoch");
    const auto payload = record::lifted(entry.body).payload;
    if (!payload) return Done{};
    const auto* adds = std::get_if<AddStaff>(&*payload);
    const auto* changes = std::get_if<ChangeAccess>(&*payload);
    if (const auto* continues = std::get_if<record::ContinueLedger>(&*payload))
        return take(*continues, entry.seq);
    if (!adds && !changes) return Done{};
    if (!m_epochs.empty() && !m_epochs.contains(entry.key)) return refused("epoch");
    const auto kid = signerOf(entry);
    if (!kid) return kid.error();
    // Whoever comes back by the sheet signs by the key they come with.
    const bool comesBack = changes && changes->what == AccessChange::Recovered;
    if (comesBack ? entry.body.by != changes->staff : !speaks(entry, *kid, adds))
        return refused("signature");
    if (comesBack ? !holdsSheet(entry) : entry.body.sigs.size() != 1) return refused("signature");
    return adds ? take(*adds, *kid) : take(*changes, *kid, entry.key);
}

Outcome Follower::knows(const seal::Keyring& ring) const {
    if (m_isWaiting) return refused("staff");
    if (m_continued != m_lineage.former().size()) return refused("ledger");
    for (const auto& [id, key] : ring.epochs()) {
        const auto told = m_epochs.find(id.text());
        if (told == m_epochs.end() || told->second != std::pair(key.number, key.digest()))
            return refused("epoch");
    }
    // Without the newest one all would go on under a key that whoever left still has.
    return ring.epochs().size() == m_epochs.size() ? Outcome(Done{}) : refused("epoch");
}

Outcome Follower::knowsRows() const {
    if (!areThePeople()) return refused("person");
    if (!isKnown(m_rows.recoveryKey, m_recoveryBox)) return refused("recovery");
    for (const seal::EpochGrant& grant : m_rows.grants)
        if (!m_kids.contains(grant.by)) return refused("grant");
    if (!isGivenAll(m_rows.recoveryKey)) return refused("recovery");
    for (const seal::WrappedIdentity& row : m_rows.people)
        if (!isGivenAll(row.known.boxing)) return refused("grant");
    return Done{};
}

/// Whether there is a row by which its holder opens each epoch: one that is gone would be missed
/// only when it is needed.
bool Follower::isGivenAll(const std::string& boxing) const {
    const std::string name = seal::thumbprint(seal::Curve::X25519, boxing);
    std::set<std::string> given;
    for (const seal::EpochGrant& grant : m_rows.grants)
        if (grant.to == name && m_epochs.contains(grant.epoch.text()))
            given.insert(grant.epoch.text());
    return given.size() == m_epochs.size();
}

/// Whether the rows have everybody who can sign, with the keys that were told of, and nobody else.
bool Follower::areThePeople() const {
    for (const seal::WrappedIdentity& row : m_rows.people) {
        const auto found = m_people.find(row.person);
        if (found == m_people.end() || found->second.kid != row.known.kid()) return false;
        if (!isKnown(row.known.boxing, found->second.box)) return false;
    }
    const auto canSign = std::count_if(m_people.begin(), m_people.end(),
                                       [](const auto& one) { return !one.second.kid.empty(); });
    return static_cast<std::size_t>(canSign) == m_rows.people.size();
}

/// Whether this X25519 key is the one that was told of. Before version 3 no entry says it; then
/// somebody who was let in has to have given it the epoch of now.
bool Follower::isKnown(const std::string& boxing, const std::string& told) const {
    if (!told.empty()) return told == ledger::toBase64Url(boxing);
    const std::string name = seal::thumbprint(seal::Curve::X25519, boxing);
    return std::any_of(
        m_rows.grants.begin(), m_rows.grants.end(), [&](const seal::EpochGrant& grant) {
            const auto epoch = m_epochs.find(grant.epoch.text());
            const bool isOfNow = epoch != m_epochs.end() &&
                                 epoch->second.first == static_cast<std::int64_t>(m_epochs.size());
            if (grant.to != name || !isOfNow || !m_kids.contains(grant.by)) return false;
            const auto giver = m_rows.identityOf(grant.by);
            return giver && grant.holdsBy(*giver);
        });
}

base::Result<std::string> Follower::signerOf(const ledger::Entry& entry) const {
    if (entry.body.sigs.empty()) return Error{Code::AccessChanged, {"signature"}};
    const auto claim = seal::readSignature(entry.body.sigs[0]);
    if (!claim) return claim.error();
    const auto key = m_rows.identityOf(claim->kid);
    if (!key) return Error{Code::AccessChanged, {"signature"}};
    const auto holds =
        seal::verifyBody(entry.body.sigs[0], seal::SignedFor::of(entry), entry.body, *key);
    if (!holds) return holds.error();
    return claim->kid;
}

/// Whether whoever says it signed it. Somebody who can't sign says nothing, but for who comes onto
/// the list by a key of their own, which nobody has or had, and is let in by it.
bool Follower::speaks(const ledger::Entry& entry, const std::string& kid,
                      const AddStaff* adds) const {
    if (!entry.body.by) return false;
    const base::StaffId& by = *entry.body.by;
    if (const std::string known = kidOf(by); !known.empty()) return known == kid;
    if (m_isWaiting) return std::pair(by, kid) == m_waiting;
    return adds && adds->staff == by && !m_people.contains(by) && !m_kids.contains(kid);
}

/// Whether the second signature is that of the sheet that was told of last.
bool Follower::holdsSheet(const ledger::Entry& entry) const {
    if (entry.body.sigs.size() != 2) return false;
    const seal::PublicIdentity sheet{m_recovery, {}};
    return seal::verifyBody(entry.body.sigs[1], seal::SignedFor::of(entry), entry.body, sheet).ok();
}

bool Follower::isEducator(const std::string& kid) const {
    for (const auto& [person, known] : m_people)
        if (known.kid == kid && known.role == record::Role::Educator) return true;
    return false;
}

/// The first entry under another id says from which head the ledger went on.
Outcome Follower::take(const record::ContinueLedger& said, std::uint64_t seq) {
    const auto& former = m_lineage.former();
    if (m_continued == former.size()) return refused("ledger");
    const ledger::Former& from = former[m_continued++];
    const bool fits = seq == from.head.size && said.from == from.ledger &&
                      static_cast<std::uint64_t>(said.size) == seq && said.root == from.head.root;
    return fits ? Outcome(Done{}) : refused("ledger");
}

/// Somebody comes onto the list: by an educator, or by the entry after this one.
Outcome Follower::take(const AddStaff& said, const std::string& kid) {
    if (m_isWaiting || m_people.contains(said.staff)) return refused("staff");
    m_people[said.staff] = {{}, said.role};
    m_isWaiting = !isEducator(kid);
    m_waiting = {said.staff, kid};
    return Done{};
}

Outcome Follower::take(const ChangeAccess& said, const std::string& kid, const std::string& epoch) {
    const auto person = m_people.find(said.staff);
    if (person == m_people.end()) return refused("staff");
    if (!maySay(said, kid)) return refused("signature");
    const bool tellsOfSheet =
        said.what == AccessChange::Founded || said.what == AccessChange::NewRecovery;
    const bool saysSheet = !said.recovery.empty() || !said.recoveryBox.empty();
    if (saysSheet && !tellsOfSheet) return refused("recovery");
    if (!fitsKeys(said)) return refused("person");
    if (!fitsRole(said)) return refused("role");
    m_isWaiting = false;
    if (!takeEpoch(said, epoch)) return refused("epoch");
    takeKeys(said);
    return Done{};
}

/// An epoch begins with the record, and when somebody leaves; with new keys for a person and with a
/// new sheet too, but not in what was written by earlier programs; at no other time.
bool Follower::takeEpoch(const ChangeAccess& said, const std::string& sealedUnder) {
    const bool begins = !said.epoch.empty();
    const bool has = said.what == AccessChange::Founded || said.what == AccessChange::Retired;
    const bool may = said.what == AccessChange::Reset || said.what == AccessChange::NewRecovery;
    if (begins ? !has && !may : has) return false;
    // The first epoch is told of under itself: there is none before it.
    if (m_epochs.empty() && said.epoch != sealedUnder) return false;
    const auto number = static_cast<std::int64_t>(m_epochs.size()) + 1;
    return !begins || m_epochs.try_emplace(said.epoch, number, said.epochDigest).second;
}

/// Whoever keeps their keys says the same of them as before; whoever gets keys gets some that
/// nobody has or had.
bool Follower::fitsKeys(const ChangeAccess& said) const {
    const std::string& box = m_people.at(said.staff).box;
    switch (said.what) {
        case AccessChange::NewPassphrase:
        case AccessChange::RaisedCost:
            return said.box.empty() || box.empty() || said.box == box;
        case AccessChange::Founded:
        case AccessChange::Admitted:
        case AccessChange::Reset:
        case AccessChange::Recovered:
            return !m_kids.contains(said.kid);
        case AccessChange::Retired:
        case AccessChange::NewRecovery:
            return true;
    }
    return false;
}

/// By the recovery sheet alone somebody becomes another one than they were: an educator.
bool Follower::fitsRole(const ChangeAccess& said) {
    return !said.role ||
           (said.what == AccessChange::Recovered && *said.role == record::Role::Educator);
}

void Follower::takeKeys(const ChangeAccess& said) {
    Known& person = m_people.at(said.staff);
    person.role = said.role.value_or(person.role);
    switch (said.what) {
        case AccessChange::Founded:
        case AccessChange::Admitted:
        case AccessChange::Reset:
        case AccessChange::Recovered:
            person.kid = said.kid;
            person.box = said.box;
            m_kids.insert(said.kid);
            break;
        case AccessChange::NewPassphrase:
        case AccessChange::RaisedCost:
            if (!said.box.empty()) person.box = said.box;
            break;
        case AccessChange::Retired:
            person.kid.clear();
            person.box.clear();
            break;
        case AccessChange::NewRecovery:
            break;
    }
    if (said.recovery.empty()) return;
    m_recovery = ledger::fromBase64Url(said.recovery).value_or("");
    m_recoveryBox = said.recoveryBox;
}

bool Follower::maySay(const ChangeAccess& said, const std::string& kid) const {
    if (m_isWaiting && (said.staff != m_waiting.first || kid != m_waiting.second)) return false;
    const std::string& present = m_people.at(said.staff).kid;
    switch (said.what) {
        case AccessChange::Founded:
            return m_epochs.empty() && m_people.size() == 1 && kid == said.kid;
        case AccessChange::Recovered:
            return !m_epochs.empty() && kid == said.kid;
        case AccessChange::NewPassphrase:
        case AccessChange::RaisedCost:
            return !m_isWaiting && kid == present && said.kid == present;
        case AccessChange::Admitted:
        case AccessChange::Reset:
        case AccessChange::Retired:
        case AccessChange::NewRecovery:
            return isEducator(kid);
    }
    return false;
}

std::string Follower::kidOf(const base::StaffId& person) const {
    const auto found = m_people.find(person);
    return found == m_people.end() ? std::string() : found->second.kid;
}

bool Follower::isOfNow(const std::string& kid) const {
    return std::any_of(m_people.begin(), m_people.end(),
                       [&](const auto& one) { return one.second.kid == kid; });
}

std::optional<record::Role> Follower::roleOf(const base::StaffId& person) const {
    const auto found = m_people.find(person);
    return found == m_people.end() ? std::nullopt : std::optional(found->second.role);
}

}  // namespace gate
