// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <utility>

#include "ledger/entry.h"
#include "seal/identity.h"

/// What a person signs and how it is written: JSON Web Signature (RFC 7515) with EdDSA (RFC 8037)
/// over a payload that is not repeated (RFC 7515 appendix F).
namespace seal {

/// Why somebody signs. The codes are those of ASTM E1762 which FHIR's Signature.type takes from
/// urn:iso-astm:E1762-95:2013.
enum class Purpose {
    Author,         ///< wrote the record
    CoParticipant,  ///< took part: the learner
    Verification,
    EventWitness,  ///< has observed a procedure and attests to it: a return demonstration
    Interpreter,
    Review,
    Addendum,
    Modification,
    AdministrativeError,  ///< for instance the wrong chart
};

/// "1.2.840.10065.1.12.1.1" and so on.
std::string codeOf(Purpose purpose);
std::optional<Purpose> purposeOf(const std::string& code);

/// What a signature is for, beside the body: the record, and whose part of it; none: the house's
/// own.
struct SignedFor {
    SignedFor(base::LedgerId home, std::optional<base::PatientId> whose = std::nullopt)
        : ledger(std::move(home)), subject(std::move(whose)) {}
    static SignedFor of(const ledger::Entry& entry) { return {entry.ledger, entry.subject}; }

    base::LedgerId ledger;
    std::optional<base::PatientId> subject;
};

/// One element of an entry's "sigs": {"protected","signature","purpose"}. The payload is the
/// canonical JSON of {"body","ledger","purpose"} and, in a patient's entry, "subject": a signature
/// holds for no other body, record, patient or purpose. That the body stands at its place is for
/// the ledger to prove: its id is part of it, and no ledger holds an id twice. What signatures the
/// body has already is no part of it. Errors: those of ledger::bodyText().
base::Result<nlohmann::json> signBody(const Identity& by, const SignedFor& place, Purpose purpose,
                                      const ledger::Body& body);

/// Puts such a signature beside those a body has. Errors: as signBody().
base::Outcome addSignature(ledger::Body& body, const Identity& by, const SignedFor& place,
                           Purpose purpose);

/// What a signature says of itself before it is verified.
struct SignatureClaim {
    std::string kid = {};  ///< whose key to look up
    Purpose purpose = Purpose::Author;
    std::string bytes = {};  ///< of the signature
};
/// Errors: SealBadSignature with what is odd about it.
base::Result<SignatureClaim> readSignature(const nlohmann::json& signature);
/// Errors: SealBadSignature, those of ledger::bodyText().
base::Outcome verifyClaim(const SignatureClaim& claim, const SignedFor& place,
                          const ledger::Body& body, const PublicIdentity& by);
/// Both.
base::Result<SignatureClaim> verifyBody(const nlohmann::json& signature, const SignedFor& place,
                                        const ledger::Body& body, const PublicIdentity& by);

/// BASE64URL(header).BASE64URL(payload), RFC 7515 section 5.1.
std::string signingInput(const std::string& protectedHeader, const std::string& payload);

}  // namespace seal
