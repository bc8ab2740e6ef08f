// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/keyring.h"

#include <algorithm>

#include "base/check.h"

namespace seal {
namespace {

using base::Code;
using base::Error;

/// Spends what a sign-in costs, for a name that nobody has.
Error refuseSlowly(const KeyRows& rows, const Secret& passphrase) {
    auto stretch = rows.people.empty() ? base::Result<Stretch>(Stretch::withNewSalt({}))
                                       : Stretch::parse(rows.people.front().phc);
    if (!stretch) return Error{Code::SealWrongPassphrase};
    if (const auto key = stretched(passphrase, *stretch); !key) return key.error();
    return Error{Code::SealWrongPassphrase};
}

}  // namespace

std::optional<PublicIdentity> KeyRows::identityOf(const std::string& kid) const {
    for (const WrappedIdentity& person : people)
        if (person.known.kid() == kid) return person.known;
    for (const PublicIdentity& one : former)
        if (one.kid() == kid) return one;
    return std::nullopt;
}

base::Result<Keyring> Keyring::found(KeyRows& rows, const Owner& first, const Secret& passphrase,
                                     const Cost& cost, const Recovery& recovery) {
    Keyring ring(first.home);
    ring.m_identity = Identity::generate();
    auto row = seal::wrap(*ring.m_identity, first, passphrase, cost);
    if (!row) return row.error();
    rows = {first.home, recovery.pair().publicKey, {std::move(*row)}, {}, {}, rows.names};
    rows.grants = ring.beginEpoch({ring.m_identity->known().boxing, rows.recoveryKey});
    return ring;
}

base::Result<Keyring> Keyring::signIn(const KeyRows& rows, const std::string& handle,
                                      const Secret& passphrase) {
    const auto found =
        std::find_if(rows.people.begin(), rows.people.end(),
                     [&](const WrappedIdentity& person) { return person.handle == handle; });
    if (found == rows.people.end()) return refuseSlowly(rows, passphrase);
    auto identity = unwrap(*found, passphrase);
    if (!identity) return identity.error();
    Keyring ring(rows.home);
    ring.m_identity = std::move(*identity);
    ring.take(rows, ring.m_identity->known().boxing, ring.m_identity->boxingKey());
    if (ring.m_epochs.empty()) return Error{Code::SealKeyMissing};
    return ring;
}

base::Result<Keyring> Keyring::unlockWithRecovery(const KeyRows& rows, const Recovery& recovery) {
    Keyring ring(rows.home);
    ring.take(rows, recovery.pair().publicKey, recovery.pair().secretKey);
    if (ring.m_epochs.empty()) return Error{Code::SealKeyMissing};
    return ring;
}

void Keyring::take(const KeyRows& rows, const std::string& publicKey, const Secret& secretKey) {
    const std::string name = thumbprint(Curve::X25519, publicKey);
    for (const EpochGrant& grant : rows.grants) {
        if (grant.to != name) continue;
        const auto giver = rows.identityOf(grant.by);
        if (grant.home != m_home || !giver || !grant.holdsBy(*giver)) {
            ++m_refusedGrants;
            continue;
        }
        auto key = openGrant(grant, publicKey, secretKey);
        if (key)
            m_epochs.emplace(grant.epoch, std::move(*key));
        else
            ++m_refusedGrants;
    }
}

Keyring Keyring::copy() const {
    Keyring other(m_home);
    if (m_identity) other.m_identity = Identity::fromSecret(m_identity->secret());
    for (const auto& [id, key] : m_epochs) other.m_epochs.emplace(id, key.copy());
    other.m_refusedGrants = m_refusedGrants;
    return other;
}

const EpochKey* Keyring::epoch(const EpochId& id) const {
    const auto found = m_epochs.find(id);
    return found == m_epochs.end() ? nullptr : &found->second;
}

const EpochKey& Keyring::current() const {
    REQUIRE(!m_epochs.empty());
    return std::max_element(
               m_epochs.begin(), m_epochs.end(),
               [](const auto& a, const auto& b) { return a.second.number < b.second.number; })
        ->second;
}

base::Result<PatientKey> Keyring::open(const WrappedPatientKey& row, Secret into) const {
    const EpochKey* key = row.home == m_home ? epoch(row.epoch) : nullptr;
    if (key == nullptr) return Error{Code::SealKeyMissing};
    return unwrapPatientKey(row, *key, std::move(into));
}

WrappedPatientKey Keyring::wrap(const PatientKey& key) const {
    return wrapPatientKey(key, current(), m_home);
}

base::Result<Admission> Keyring::admit(const Owner& owner, const Secret& passphrase,
                                       const Cost& cost) const {
    const Identity identity = Identity::generate();
    auto row = seal::wrap(identity, owner, passphrase, cost);
    if (!row) return row.error();
    const Identity& giver = m_identity ? *m_identity : identity;
    return Admission{std::move(*row), grantAll(identity.known().boxing, giver)};
}

std::vector<EpochGrant> Keyring::grantAll(const std::string& publicKey, const Identity& by) const {
    std::vector<EpochGrant> grants;
    for (const auto& [id, key] : m_epochs) grants.push_back(grantEpoch(key, m_home, publicKey, by));
    return grants;
}

std::vector<EpochGrant> Keyring::grantAll(const std::string& publicKey) const {
    REQUIRE(m_identity.has_value());
    return grantAll(publicKey, *m_identity);
}

std::vector<EpochGrant> Keyring::beginEpoch(const std::vector<std::string>& holders) {
    REQUIRE(m_identity.has_value());
    EpochKey next = EpochKey::generate(m_epochs.empty() ? 1 : current().number + 1);
    std::vector<EpochGrant> grants;
    for (const std::string& holder : holders)
        grants.push_back(grantEpoch(next, m_home, holder, *m_identity));
    m_epochs.emplace(next.id, std::move(next));
    return grants;
}

base::Result<WrappedIdentity> rewrapped(const WrappedIdentity& row, const Identity& identity,
                                        const Secret& passphrase, const Cost& cost) {
    return wrap(identity, {row.home, row.person, row.handle}, passphrase, cost);
}

bool isBelow(const WrappedIdentity& row, const Cost& usual) {
    const auto stretch = Stretch::parse(row.phc);
    return stretch.ok() && !stretch->cost.covers(usual);
}

}  // namespace seal
