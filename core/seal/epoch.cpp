// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/epoch.h"

#include <sodium.h>

#include <algorithm>

#include "base/check.h"
#include "ledger/jcs.h"
#include "ledger/merkle.h"
#include "seal/rowreader.h"

namespace seal {
namespace {

using base::Code;
using base::Error;
using ledger::toBase64Url;
using nlohmann::json;

constexpr std::size_t publicSize = 32;
constexpr std::size_t digestSize = 32;
constexpr std::size_t grantSize = keySize + digestSize + crypto_box_SEALBYTES;

json namesOf(const EpochGrant& grant) {
    return {{"epoch", grant.epoch.text()},
            {"home", grant.home.text()},
            {"number", grant.number},
            {"to", grant.to}};
}

/// What the giver signs; "grant" keeps it from being taken for anything else they sign.
std::string signedText(const EpochGrant& grant) {
    json all = namesOf(grant);
    all["box"] = toBase64Url(grant.box);
    all["by"] = grant.by;
    return *ledger::jcs({{"grant", all}});
}

ledger::Digest digestOfNames(const EpochGrant& grant) {
    return ledger::sha256(*ledger::jcs(namesOf(grant)));
}

json boundMembers(const WrappedPatientKey& row) {
    return {{"epoch", row.epoch.text()},
            {"home", row.home.text()},
            {"id", row.id.text()},
            {"patient", row.patient.text()}};
}

/// Those members as canonical JSON: ids need no escape.
std::string boundText(const WrappedPatientKey& row) {
    std::string out = "{\"epoch\":\"" + row.epoch.text();
    out.append("\",\"home\":\"").append(row.home.text());
    out.append("\",\"id\":\"").append(row.id.text());
    out.append("\",\"patient\":\"").append(row.patient.text());
    return out.append("\"}");
}

}  // namespace

EpochKey EpochKey::generate(std::int64_t number) {
    return {EpochId::random(), number, Secret::random(keySize)};
}

std::string EpochKey::digest() const {
    const std::string purpose = "ninebark epoch";
    std::string personal =
        purpose + std::string(crypto_generichash_blake2b_PERSONALBYTES - purpose.size(), '\0');
    std::string out(digestSize, '\0');
    const int done = crypto_generichash_blake2b_salt_personal(bytePointer(out), out.size(),
                                                              key.data(), key.size(), nullptr, 0,
                                                              nullptr, bytePointer(personal));
    REQUIRE(done == 0);
    return toBase64Url(out);
}

EpochGrant grantEpoch(const EpochKey& epoch, const base::LedgerId& home, const std::string& to,
                      const Identity& by) {
    REQUIRE(to.size() == publicSize);
    EpochGrant grant{home, epoch.id, epoch.number, thumbprint(Curve::X25519, to)};
    Secret content = Secret::ofSize(keySize + digestSize);
    const auto digest = digestOfNames(grant);
    std::copy_n(epoch.key.data(), keySize, content.data());
    std::copy(digest.begin(), digest.end(), content.data() + keySize);
    grant.box.resize(grantSize);
    REQUIRE(crypto_box_seal(bytePointer(grant.box), content.data(), content.size(),
                            bytePointer(std::string_view(to))) == 0);
    grant.by = by.known().kid();
    grant.signature = by.sign(signedText(grant));
    return grant;
}

bool EpochGrant::holdsBy(const PublicIdentity& giver) const {
    return by == giver.kid() && holds(signature, signedText(*this), giver);
}

base::Result<EpochKey> openGrant(const EpochGrant& grant, const std::string& publicKey,
                                 const Secret& secretKey) {
    const Error refused{Code::SealRefused, {"epoch"}};
    if (grant.box.size() != grantSize || publicKey.size() != publicSize) return refused;
    Secret content = Secret::ofSize(keySize + digestSize);
    const int failed = crypto_box_seal_open(
        content.data(), bytePointer(std::string_view(grant.box)), grant.box.size(),
        bytePointer(std::string_view(publicKey)), secretKey.data());
    if (failed != 0) return refused;
    const auto digest = digestOfNames(grant);
    if (!std::equal(digest.begin(), digest.end(), content.data() + keySize)) return refused;
    return EpochKey{grant.epoch, grant.number, Secret::copyOf(content.part(0, keySize))};
}

json EpochGrant::json() const {
    auto row = namesOf(*this);
    row["box"] = toBase64Url(box);
    row["by"] = by;
    row["signature"] = toBase64Url(signature);
    return row;
}

base::Result<EpochGrant> EpochGrant::parse(const nlohmann::json& json) {
    RowReader in(json, {"box", "by", "epoch", "home", "number", "signature", "to"});
    const auto home = in.id<base::LedgerId>("home");
    const auto epoch = in.id<EpochId>("epoch");
    const std::int64_t number = in.positive("number");
    EpochGrant read{.number = number,
                    .to = in.text("to"),
                    .box = in.bytes("box", grantSize),
                    .by = in.text("by"),
                    .signature = in.bytes("signature", crypto_sign_BYTES)};
    if (in.error()) return *in.error();
    read.home = *home;
    read.epoch = *epoch;
    return read;
}

PatientKey PatientKey::generate(const base::PatientId& patient) {
    return {PatientKeyId::random(), patient, Secret::random(keySize)};
}

WrappedPatientKey wrapPatientKey(const PatientKey& key, const EpochKey& epoch,
                                 const base::LedgerId& home) {
    WrappedPatientKey row{key.id, key.patient, epoch.id, home, {}};
    row.sealed = sealBytes(epoch.key, key.key.view(), boundText(row));
    return row;
}

base::Result<PatientKey> unwrapPatientKey(const WrappedPatientKey& row, const EpochKey& epoch,
                                          Secret into) {
    if (row.epoch != epoch.id) return Error{Code::SealKeyMissing};
    if (!openSecretInto(into, epoch.key, row.sealed, boundText(row)))
        return Error{Code::SealRefused, {"patient key"}};
    return PatientKey{row.id, row.patient, std::move(into)};
}

json WrappedPatientKey::json() const {
    auto row = boundMembers(*this);
    putSealed(row, sealed);
    return row;
}

base::Result<WrappedPatientKey> WrappedPatientKey::parse(const nlohmann::json& json) {
    RowReader in(json, {"epoch", "home", "id", "nonce", "patient", "sealed"});
    const auto id = in.id<PatientKeyId>("id");
    const auto patient = in.id<base::PatientId>("patient");
    const auto epoch = in.id<EpochId>("epoch");
    const auto home = in.id<base::LedgerId>("home");
    Sealed sealed = in.sealed(keySize);
    if (in.error()) return *in.error();
    return WrappedPatientKey{*id, *patient, *epoch, *home, std::move(sealed)};
}

}  // namespace seal
