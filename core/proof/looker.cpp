// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "proof/looker.h"

#include "record/purpose.h"
#include "record/shapes.h"
#include "seal/signature.h"

namespace proof {
namespace {

/// The blobs without which the entry does not say what it said.
std::vector<std::string> blobsIn(const record::Payload& payload) {
    if (const auto* opened = std::get_if<practice::OpenVisit>(&payload))
        return {opened->pack.digest};
    if (const auto* issued = std::get_if<record::IssuePaper>(&payload); issued && issued->ground)
        return {issued->ground->pack.digest};
    const auto* signedOff = std::get_if<record::SignOff>(&payload);
    if (signedOff && signedOff->acknowledgement.drawing)
        return {*signedOff->acknowledgement.drawing};
    return {};
}

/// Papers were not signed by earlier programs.
bool mustBeSigned(const ledger::Body& body, const record::Payload& payload) {
    return !std::holds_alternative<record::IssuePaper>(payload) ||
           body.tv >= record::IssuePaper::firstSigned;
}

/// Whether what a later entry is worth depends on this one.
bool isForLater(const record::Payload& payload) {
    return isAboutKeys(payload) || std::holds_alternative<record::ContinueLedger>(payload) ||
           std::holds_alternative<record::ErasePatient>(payload);
}

}  // namespace

bool isAboutKeys(const record::Payload& payload) {
    return std::holds_alternative<record::AddStaff>(payload) ||
           std::holds_alternative<record::ChangeAccess>(payload);
}

std::shared_ptr<const Looker::Keys> Looker::keysIn(const seal::KeyRows& rows) {
    auto keys = std::make_shared<Keys>();
    for (const seal::WrappedIdentity& person : rows.people)
        keys->emplace(person.known.kid(), person.known);
    for (const seal::PublicIdentity& one : rows.former) keys->emplace(one.kid(), one);
    return keys;
}

Seen Looker::look(std::uint64_t seq, std::string_view bytes) {
    Seen seen{.seq = seq, .leaf = ledger::leafHash(bytes)};
    const auto box = m_codec->seals() ? ledger::Box::Read : ledger::Box::Checked;
    auto envelope = ledger::readEnvelope(bytes, box);
    if (!envelope) return seen;
    seen.envelope = std::move(*envelope);
    open(seen, bytes);
    seen.envelope->closed.nonce = {};
    seen.envelope->closed.body = {};
    return seen;
}

void Looker::open(Seen& seen, std::string_view bytes) const {
    auto body = ledger::readBody(*seen.envelope, bytes, *m_codec);
    if (!body) {
        seen.refused = body.error().code;
        return;
    }
    seen.body = std::move(*body);
    if (seen.body) read(seen);
}

void Looker::read(Seen& seen) const {
    ledger::Body& body = *seen.body;
    auto payload = record::lifted(body).payload;
    seen.isUnderstood = payload.ok();
    seen.isSigned = !body.sigs.empty();
    if (payload) {
        seen.blobs = blobsIn(*payload);
        if (mustBeSigned(body, *payload)) seen.purpose = record::purposeOf(*payload);
        if (const auto* signedOff = std::get_if<record::SignOff>(&*payload)) {
            seen.root = signedOff->root;
            seen.mustNameRoot = body.tv >= record::SignOff::firstWithRoot;
        }
        if (m_keys && !isAboutKeys(*payload)) lookSignatures(seen);
        if (isForLater(*payload)) {
            seen.payload = std::move(*payload);
            return;
        }
    }
    // Here, as it takes longer on the thread that puts all in order.
    body.data = nullptr;
    body.sigs = nullptr;
    body.about = {};
    body.app = {};
}

void Looker::lookSignatures(Seen& seen) const {
    for (const auto& signature : seen.body->sigs) {
        seen.signatures.push_back(lookSignature(seen, signature));
        if (seen.signatures.back().how != Holding::Holds) return;
    }
}

SeenSignature Looker::lookSignature(const Seen& seen, const nlohmann::json& signature) const {
    const auto claim = seal::readSignature(signature);
    if (!claim) return {Holding::Bad};
    const auto key = m_keys->find(claim->kid);
    if (key == m_keys->end()) return {Holding::UnknownKey};
    const seal::SignedFor place(seen.envelope->ledger, seen.envelope->subject);
    if (!seal::verifyClaim(*claim, place, *seen.body, key->second)) return {Holding::Bad};
    return {Holding::Holds, claim->kid, claim->purpose};
}

}  // namespace proof
