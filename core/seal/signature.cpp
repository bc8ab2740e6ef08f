// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/signature.h"

#include "ledger/base64url.h"
#include "ledger/bodytext.h"
#include "ledger/jcs.h"

namespace seal {
namespace {

using base::Code;
using base::Error;
using ledger::fromBase64Url;
using ledger::toBase64Url;
using nlohmann::json;

constexpr std::size_t signatureSize = 64;  // RFC 8032
const std::string codeRoot = "1.2.840.10065.1.12.1.";

constexpr std::array<std::pair<Purpose, const char*>, 9> purposeCodes = {{
    {Purpose::Author, "1"},
    {Purpose::CoParticipant, "3"},
    {Purpose::Verification, "5"},
    {Purpose::EventWitness, "9"},
    {Purpose::Interpreter, "12"},
    {Purpose::Review, "13"},
    {Purpose::Addendum, "15"},
    {Purpose::Modification, "16"},
    {Purpose::AdministrativeError, "17"},
}};

/// The only header there is for a key, so that nothing in it has to be trusted.
std::string headerFor(const std::string& kid) {
    return *ledger::jcs({{"alg", "EdDSA"}, {"kid", kid}});
}

/// The members in their canonical order; beside the body there are but letters that need no escape.
base::Result<std::string> payloadOf(const SignedFor& place, Purpose purpose,
                                    const ledger::Body& body) {
    const auto part = ledger::bodyText(body, ledger::Signatures::Without);
    if (!part) return part.error();
    std::string payload = "{\"body\":" + *part;
    payload.append(",\"ledger\":\"").append(place.ledger.text());
    payload.append("\",\"purpose\":\"").append(codeOf(purpose));
    if (place.subject) payload.append("\",\"subject\":\"").append(place.subject->text());
    return payload.append("\"}");
}

Error badSignature(const std::string& what) { return Error{Code::SealBadSignature, {what}}; }

/// The text of a member, empty when there is none.
std::string textIn(const json& object, const char* member) {
    const auto found = object.find(member);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

}  // namespace

std::string codeOf(Purpose purpose) {
    for (const auto& [one, last] : purposeCodes)
        if (one == purpose) return codeRoot + last;
    return {};
}

std::optional<Purpose> purposeOf(const std::string& code) {
    for (const auto& [one, last] : purposeCodes)
        if (code == codeRoot + last) return one;
    return std::nullopt;
}

std::string signingInput(const std::string& protectedHeader, const std::string& payload) {
    return toBase64Url(protectedHeader) + "." + toBase64Url(payload);
}

base::Result<json> signBody(const Identity& by, const SignedFor& place, Purpose purpose,
                            const ledger::Body& body) {
    const auto payload = payloadOf(place, purpose, body);
    if (!payload) return payload.error();
    const std::string header = headerFor(by.known().kid());
    return json{{"protected", toBase64Url(header)},
                {"purpose", codeOf(purpose)},
                {"signature", toBase64Url(by.sign(signingInput(header, *payload)))}};
}

base::Outcome addSignature(ledger::Body& body, const Identity& by, const SignedFor& place,
                           Purpose purpose) {
    auto signature = signBody(by, place, purpose, body);
    if (!signature) return signature.error();
    body.sigs.push_back(std::move(*signature));
    return base::Done{};
}

base::Result<SignatureClaim> readSignature(const json& signature) {
    if (!signature.is_object() || signature.size() != 3) return badSignature("members");
    const auto purpose = purposeOf(textIn(signature, "purpose"));
    if (!purpose) return badSignature("purpose");
    const auto header = fromBase64Url(textIn(signature, "protected"));
    const json parsed = json::parse(header.value_or(""), nullptr, false);
    if (!parsed.is_object()) return badSignature("header");
    const std::string kid = textIn(parsed, "kid");
    if (*header != headerFor(kid)) return badSignature("header");
    const auto bytes = fromBase64Url(textIn(signature, "signature"));
    if (!bytes || bytes->size() != signatureSize) return badSignature("signature");
    return SignatureClaim{kid, *purpose, *bytes};
}

base::Outcome verifyClaim(const SignatureClaim& claim, const SignedFor& place,
                          const ledger::Body& body, const PublicIdentity& by) {
    if (claim.kid != by.kid()) return badSignature("key");
    const auto payload = payloadOf(place, claim.purpose, body);
    if (!payload) return payload.error();
    if (!holds(claim.bytes, signingInput(headerFor(claim.kid), *payload), by))
        return badSignature("signature");
    return base::Done{};
}

base::Result<SignatureClaim> verifyBody(const json& signature, const SignedFor& place,
                                        const ledger::Body& body, const PublicIdentity& by) {
    auto claim = readSignature(signature);
    if (!claim) return claim;
    if (const auto held = verifyClaim(*claim, place, body, by); !held) return held.error();
    return claim;
}

}  // namespace seal
