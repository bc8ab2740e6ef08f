// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "seal/epoch.h"
#include "seal/recovery.h"

namespace seal {

/// All that lies open on disk so that people can sign in. No name, no role, nothing readable of a
/// person: those are in sealed entries.
struct KeyRows {
    base::LedgerId home;           ///< a restored ledger with a new id keeps the home of its keys
    std::string recoveryKey = {};  ///< X25519, public
    std::vector<WrappedIdentity> people = {};  ///< who can sign in
    std::vector<PublicIdentity> former = {};   ///< of the retired, and from before a reset
    std::vector<EpochGrant> grants = {};
    Stretch names = {};  ///< what nameHandle() takes: made before the first person is

    /// The public keys with this name, of now or from before.
    std::optional<PublicIdentity> identityOf(const std::string& kid) const;
};

/// What admitting somebody adds to the rows.
struct Admission {
    WrappedIdentity row;
    std::vector<EpochGrant> grants = {};
};

/// Everything a signed-in person can open: their own secrets and the keys of the epochs, through
/// which the patients' keys open one at a time. Kept in locked memory and wiped when it goes: to
/// sign out is to destroy it.
class Keyring {
  public:
    /// The first person of a new ledger and its first epoch; fills `rows` but for
    /// its names. Errors: those of wrap().
    static base::Result<Keyring> found(KeyRows& rows, const Owner& first, const Secret& passphrase,
                                       const Cost& cost, const Recovery& recovery);
    /// A name that nobody has takes as long as a wrong passphrase and says the same. Errors: those
    /// of unwrap().
    static base::Result<Keyring> signIn(const KeyRows& rows, const std::string& handle,
                                        const Secret& passphrase);
    /// Opens everything for reading and for admitting a person; signs nothing, as it is nobody's.
    /// Errors: SealKeyMissing when no epoch opens by this sheet.
    static base::Result<Keyring> unlockWithRecovery(const KeyRows& rows, const Recovery& recovery);

    /// The same keys once more, on purpose: to begin an epoch in and to drop if it can't be
    /// written.
    Keyring copy() const;

    /// Whose it is; none when opened by the recovery sheet.
    const Identity* identity() const { return m_identity ? &*m_identity : nullptr; }
    /// The epoch with this id, if its key is here.
    const EpochKey* epoch(const EpochId& id) const;
    /// What new things are sealed under.
    const EpochKey& current() const;
    const std::map<EpochId, EpochKey>& epochs() const { return m_epochs; }
    std::size_t epochCount() const { return m_epochs.size(); }
    /// Grants to this person that were left out because no known person gave them or they were
    /// changed: somebody tampered with the disk.
    std::size_t refusedGrants() const { return m_refusedGrants; }

    /// Errors: SealKeyMissing, SealRefused.
    base::Result<PatientKey> open(const WrappedPatientKey& row) const {
        return open(row, Secret::ofSize(keySize));
    }
    /// The same into a secret of keySize bytes that is needed no more.
    base::Result<PatientKey> open(const WrappedPatientKey& row, Secret into) const;
    /// Under the current epoch.
    WrappedPatientKey wrap(const PatientKey& key) const;

    /// New keys for a person who is new, or whose passphrase is lost: the old public keys belong
    /// into KeyRows::former then. They type the passphrase themselves; the one who is signed in
    /// gives them every epoch. Opened by the recovery sheet, they give it to themselves. Errors:
    /// those of wrap().
    base::Result<Admission> admit(const Owner& owner, const Secret& passphrase,
                                  const Cost& cost) const;
    /// Every epoch for the holder of this X25519 key. Takes an identity.
    std::vector<EpochGrant> grantAll(const std::string& publicKey) const;
    /// A new epoch for these X25519 keys, for instance when somebody was retired: what comes from
    /// now on they can't read. Takes an identity. What they could read they may have kept.
    std::vector<EpochGrant> beginEpoch(const std::vector<std::string>& holders);

  private:
    explicit Keyring(base::LedgerId home) : m_home(std::move(home)) {}
    std::vector<EpochGrant> grantAll(const std::string& publicKey, const Identity& by) const;
    void take(const KeyRows& rows, const std::string& publicKey, const Secret& secretKey);

    base::LedgerId m_home;
    std::optional<Identity> m_identity;
    std::map<EpochId, EpochKey> m_epochs;
    std::size_t m_refusedGrants = 0;
};

/// The same person under a new passphrase or a new cost; needs nothing of the old one. Errors:
/// those of wrap().
base::Result<WrappedIdentity> rewrapped(const WrappedIdentity& row, const Identity& identity,
                                        const Secret& passphrase, const Cost& cost);
/// Whether a row was made at a lower cost than is usual now; it is raised at the next sign-in.
bool isBelow(const WrappedIdentity& row, const Cost& usual);

}  // namespace seal
