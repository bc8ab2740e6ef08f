// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/identity.h"

#include <sodium.h>

#include <algorithm>

#include "base/check.h"
#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/merkle.h"
#include "seal/rowreader.h"

namespace seal {
namespace {

using base::Code;
using base::Error;
using ledger::toBase64Url;
using nlohmann::json;

constexpr std::size_t halfSize = 32;

std::string nameOfCurve(Curve curve) {
    switch (curve) {
        case Curve::Ed25519:
            return "Ed25519";
        case Curve::X25519:
            return "X25519";
    }
    return {};
}

json boundJson(const WrappedIdentity& row) {
    return {{"handle", toBase64Url(row.handle)},
            {"home", row.home.text()},
            {"keys", row.known.json()},
            {"person", row.person.text()},
            {"phc", row.phc}};
}

}  // namespace

json jwk(Curve curve, const std::string& publicKey) {
    return {{"crv", nameOfCurve(curve)}, {"kty", "OKP"}, {"x", toBase64Url(publicKey)}};
}

std::string thumbprint(Curve curve, const std::string& publicKey) {
    const auto digest = ledger::sha256(*ledger::jcs(jwk(curve, publicKey)));
    return toBase64Url({reinterpret_cast<const char*>(digest.data()), digest.size()});
}

json PublicIdentity::json() const {
    return {{"box", toBase64Url(boxing)}, {"sign", toBase64Url(signing)}};
}

base::Result<PublicIdentity> PublicIdentity::parse(const nlohmann::json& json) {
    RowReader in(json, {"box", "sign"});
    PublicIdentity read{in.bytes("sign", halfSize), in.bytes("box", halfSize)};
    if (in.error()) return *in.error();
    return read;
}

BoxPair BoxPair::fromSeed(const Secret& seed) {
    REQUIRE(seed.size() == crypto_box_SEEDBYTES);
    BoxPair pair{std::string(halfSize, '\0'), Secret::ofSize(crypto_box_SECRETKEYBYTES)};
    crypto_box_seed_keypair(bytePointer(pair.publicKey), pair.secretKey.data(), seed.data());
    return pair;
}

Identity Identity::generate() {
    return fromSecret(Secret::random(2 * halfSize));  // every 32 bytes are a key of either kind
}

Identity Identity::fromSecret(const Secret& bytes) {
    REQUIRE(bytes.size() == 2 * halfSize);
    Identity made;
    made.m_seed = Secret::copyOf(bytes.part(0, halfSize));
    made.m_boxing = Secret::copyOf(bytes.part(halfSize, halfSize));
    made.m_signing = Secret::ofSize(crypto_sign_SECRETKEYBYTES);
    made.m_public = {std::string(halfSize, '\0'), std::string(halfSize, '\0')};
    crypto_sign_seed_keypair(bytePointer(made.m_public.signing), made.m_signing.data(),
                             made.m_seed.data());
    crypto_scalarmult_base(bytePointer(made.m_public.boxing), made.m_boxing.data());
    return made;
}

Secret Identity::secret() const {
    Secret bytes = Secret::ofSize(2 * halfSize);
    std::copy_n(m_seed.data(), halfSize, bytes.data());
    std::copy_n(m_boxing.data(), halfSize, bytes.data() + halfSize);
    return bytes;
}

std::string Identity::sign(std::string_view message) const {
    std::string signature(crypto_sign_BYTES, '\0');
    crypto_sign_detached(bytePointer(signature), nullptr, bytePointer(message), message.size(),
                         m_signing.data());
    return signature;
}

bool holds(std::string_view signature, std::string_view message, const PublicIdentity& by) {
    if (signature.size() != crypto_sign_BYTES || by.signing.size() != halfSize) return false;
    return crypto_sign_verify_detached(bytePointer(signature), bytePointer(message), message.size(),
                                       bytePointer(std::string_view(by.signing))) == 0;
}

std::string WrappedIdentity::boundTo() const { return *ledger::jcs(boundJson(*this)); }

json WrappedIdentity::json() const {
    auto row = boundJson(*this);
    putSealed(row, sealed);
    return row;
}

base::Result<WrappedIdentity> WrappedIdentity::parse(const nlohmann::json& json) {
    RowReader in(json, {"handle", "home", "keys", "person", "phc", "nonce", "sealed"});
    const auto home = in.id<base::LedgerId>("home");
    const auto person = in.id<base::StaffId>("person");
    const std::string handle = in.bytes("handle", 16);
    const std::string phc = in.text("phc");
    Sealed sealed = in.sealed(2 * halfSize);
    if (in.error()) return *in.error();
    const auto known = PublicIdentity::parse(json.at("keys"));
    if (!known) return known.error();
    return WrappedIdentity{*home, *person, handle, phc, *known, std::move(sealed)};
}

base::Result<WrappedIdentity> wrap(const Identity& identity, const Owner& owner,
                                   const Secret& passphrase, const Cost& cost) {
    const auto stretch = Stretch::withNewSalt(cost);
    const auto key = stretched(passphrase, stretch);
    if (!key) return key.error();
    WrappedIdentity row{owner.home,    owner.person,     owner.handle,
                        stretch.phc(), identity.known(), {}};
    row.sealed = sealBytes(*key, identity.secret().view(), row.boundTo());
    return row;
}

base::Result<Identity> unwrap(const WrappedIdentity& row, const Secret& passphrase) {
    const auto stretch = Stretch::parse(row.phc);
    if (!stretch) return stretch.error();
    const auto key = stretched(passphrase, *stretch);
    if (!key) return key.error();
    const auto bytes = openSecret(*key, row.sealed, row.boundTo());
    if (!bytes) return Error{Code::SealWrongPassphrase};
    if (bytes->size() != 2 * halfSize) return Error{Code::SealBadRow, {"sealed"}};
    auto identity = Identity::fromSecret(*bytes);
    if (identity.known() != row.known) return Error{Code::SealBadRow, {"keys"}};
    return identity;
}

}  // namespace seal
