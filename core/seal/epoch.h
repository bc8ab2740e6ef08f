// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "seal/identity.h"

/// Keys above keys: each patient has one, wrapped under the key of an epoch, and each epoch's key
/// is sealed to every member of staff and to the recovery key. People come and go by a new sealed
/// copy or a new epoch; nobody needs another's passphrase.
namespace seal {

using EpochId = base::Id<struct EpochTag>;
using PatientKeyId = base::Id<struct PatientKeyTag>;

/// Ids are random, so epochs have numbers too: the highest one is what is sealed under now.
struct EpochKey {
    EpochId id;
    std::int64_t number = 1;
    Secret key = {};

    static EpochKey generate(std::int64_t number);
    /// Tells keys apart and tells nothing of them: BLAKE2b (RFC 7693) of the 32 random bytes, under
    /// the name of its purpose, in base 64.
    std::string digest() const;
    EpochKey copy() const { return {id, number, Secret::copyOf(key.view())}; }
};

/// An epoch's key for one holder of an X25519 key (crypto_box_seal of libsodium). Such a box says
/// nothing of who made it: without the signature whoever gets at the disk could slip in an epoch
/// of their own and read what is sealed under it. Which signers count is for the ledger to say.
struct EpochGrant {
    base::LedgerId home;
    EpochId epoch;
    std::int64_t number = 1;
    std::string to = {};         ///< thumbprint of the X25519 key
    std::string box = {};        ///< the key, and a digest of the four members above
    std::string by = {};         ///< kid of the member of staff who gave it
    std::string signature = {};  ///< theirs, 64 bytes, over all of the above

    /// Whether it was given by this person and nothing was changed since.
    bool holdsBy(const PublicIdentity& giver) const;
    nlohmann::json json() const;
    /// Errors: SealBadRow.
    static base::Result<EpochGrant> parse(const nlohmann::json& json);
    bool operator==(const EpochGrant&) const = default;
};

/// `to` is an X25519 public key.
EpochGrant grantEpoch(const EpochKey& epoch, const base::LedgerId& home, const std::string& to,
                      const Identity& by);
/// The holder's half of it. Does not ask who gave it. Errors: SealRefused.
base::Result<EpochKey> openGrant(const EpochGrant& grant, const std::string& publicKey,
                                 const Secret& secretKey);

/// What the entries of one patient are sealed under.
struct PatientKey {
    PatientKeyId id;
    base::PatientId patient;
    Secret key = {};

    static PatientKey generate(const base::PatientId& patient);
};

/// A patient's key as it lies beside the ledger. To erase a patient is to destroy this row and
/// every copy of it: the sealed entries and their leaves stay, and nobody can open them.
struct WrappedPatientKey {
    PatientKeyId id;
    base::PatientId patient;
    EpochId epoch;
    base::LedgerId home;
    Sealed sealed = {};

    nlohmann::json json() const;
    /// Errors: SealBadRow.
    static base::Result<WrappedPatientKey> parse(const nlohmann::json& json);
    bool operator==(const WrappedPatientKey&) const = default;
};

WrappedPatientKey wrapPatientKey(const PatientKey& key, const EpochKey& epoch,
                                 const base::LedgerId& home);
/// Into a secret of keySize bytes. Errors: SealKeyMissing for another epoch, SealRefused.
base::Result<PatientKey> unwrapPatientKey(const WrappedPatientKey& row, const EpochKey& epoch,
                                          Secret into);

}  // namespace seal
