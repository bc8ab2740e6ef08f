// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "base/id.h"
#include "base/result.h"
#include "seal/aead.h"
#include "seal/passphrase.h"

/// The key pairs of a person: Ed25519 to sign with, X25519 to be given keys by.
namespace seal {

enum class Curve { Ed25519, X25519 };

/// A public key as a JSON Web Key (RFC 8037): {"crv","kty":"OKP","x"}.
nlohmann::json jwk(Curve curve, const std::string& publicKey);
/// The SHA-256 of that key's canonical form in base 64 (RFC 7638): what a key is called by.
std::string thumbprint(Curve curve, const std::string& publicKey);

struct PublicIdentity {
    std::string signing = {};  ///< Ed25519, 32 bytes
    std::string boxing = {};   ///< X25519, 32 bytes

    /// The "kid" of the person's signatures.
    std::string kid() const { return thumbprint(Curve::Ed25519, signing); }
    nlohmann::json json() const;
    /// Errors: SealBadRow.
    static base::Result<PublicIdentity> parse(const nlohmann::json& json);
    bool operator==(const PublicIdentity&) const = default;
};

/// A key pair for crypto_box_seal.
struct BoxPair {
    std::string publicKey = {};
    Secret secretKey = {};

    /// From 32 bytes; the same seed always gives the same pair.
    static BoxPair fromSeed(const Secret& seed);
};

/// Both pairs with their secret halves.
class Identity {
  public:
    static Identity generate();
    /// From the 64 bytes that secret() gives.
    static Identity fromSecret(const Secret& bytes);

    const PublicIdentity& known() const { return m_public; }
    /// The Ed25519 seed and the X25519 secret key; all else follows from them.
    Secret secret() const;
    /// 64 bytes, RFC 8032.
    std::string sign(std::string_view message) const;
    const Secret& boxingKey() const { return m_boxing; }

  private:
    Identity() = default;
    PublicIdentity m_public;
    Secret m_seed;
    Secret m_signing;  ///< seed and public key, as libsodium takes it
    Secret m_boxing;
};

/// RFC 8032, and stricter: libsodium refuses keys and points of small order and every second
/// spelling of a number, so a signature can't be changed into another one that holds as well.
bool holds(std::string_view signature, std::string_view message, const PublicIdentity& by);

/// A person's secrets as they lie on disk, under a key that only their passphrase gives. Nothing
/// in it tells who it is; `person` is a random id, `handle` stands for the typed name.
struct WrappedIdentity {
    base::LedgerId home;  ///< where it was made; a copy in another ledger does not open
    base::StaffId person;
    std::string handle = {};    ///< nameHandle()
    std::string phc = {};       ///< cost and salt of the passphrase
    PublicIdentity known = {};  ///< outlives retiring: old signatures are verified by it
    Sealed sealed = {};

    /// What the secrets are bound to: the canonical JSON of everything above.
    std::string boundTo() const;
    nlohmann::json json() const;
    /// Errors: SealBadRow.
    static base::Result<WrappedIdentity> parse(const nlohmann::json& json);
};

struct Owner {
    base::LedgerId home;
    base::StaffId person;
    std::string handle;
};

/// Errors: those of stretched().
base::Result<WrappedIdentity> wrap(const Identity& identity, const Owner& owner,
                                   const Secret& passphrase, const Cost& cost);
/// Errors: SealWrongPassphrase also when anything of the row was changed: the two can't be told
/// apart. SealBadRow when what opens does not belong to the public keys; those of stretched().
base::Result<Identity> unwrap(const WrappedIdentity& row, const Secret& passphrase);

}  // namespace seal
