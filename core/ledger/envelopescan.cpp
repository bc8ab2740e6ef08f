// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/envelopescan.h"

#include "base/clock.h"
#include "ledger/base64url.h"
#include "ledger/plainscan.h"

namespace ledger {
namespace {

/// A string of base 64. What is only checked is left empty.
std::optional<std::string> takeBytes(PlainScan& in, std::string_view before, Box box) {
    const std::string_view text = in.take(before) ? in.letters() : std::string_view();
    if (box == Box::Read) return fromBase64Url(text);
    return isBase64Url(text) ? std::optional<std::string>("") : std::nullopt;
}

/// "" for null.
std::string_view takeTextOrNull(PlainScan& in, std::string_view before) {
    if (!in.take(before)) return {};
    if (in.next() == 'n') return in.take("null"), std::string_view();
    const std::string_view text = in.text();
    if (text.empty()) in.fail();
    return text;
}

bool fits(const Closed& closed) {
    if (closed.alg == sealAlg)
        return base::isIdText(closed.key) && closed.nonce.size() == sealNonceSize;
    return closed.alg == noAlg && closed.key.empty() && closed.nonce.empty();
}

}  // namespace

std::optional<Envelope> scanEnvelope(std::string_view bytes, Box box) {
    PlainScan in(bytes);
    Envelope read;
    read.closed.alg = in.textAfter("{\"alg\":");
    const bool isSealed = read.closed.alg == sealAlg;
    const auto body = takeBytes(in, ",\"body\":", isSealed ? box : Box::Read);
    read.bootId = in.textAfter(",\"boot\":{\"id\":");
    read.bootMs = in.integerAfter(",\"ms\":");
    read.closed.key = takeTextOrNull(in, "},\"key\":");
    const auto ledger = base::LedgerId::parse(in.textAfter(",\"ledger\":"));
    const auto nonce = takeBytes(in, ",\"nonce\":", Box::Read);
    const std::int64_t seq = in.integerAfter(",\"seq\":");
    const std::string_view subject = takeTextOrNull(in, ",\"subject\":");
    const std::int64_t tick = in.integerAfter(",\"tick\":");
    if (in.integerAfter(",\"v\":") != envelopeVersion) return std::nullopt;
    const auto wall = base::parseIsoUtc(in.textAfter(",\"wall\":"));
    in.take("}");
    if (!in.isAtEnd() || !body || !nonce || !ledger || !wall || seq < 0 || tick < 0)
        return std::nullopt;
    if (!subject.empty()) {
        const auto patient = base::PatientId::parse(subject);
        if (!patient) return std::nullopt;
        read.subject = *patient;
    }
    read.closed.body = std::move(*body);
    read.closed.nonce = std::move(*nonce);
    if (!fits(read.closed)) return std::nullopt;
    read.ledger = *ledger;
    read.seq = static_cast<std::uint64_t>(seq);
    read.tick = static_cast<std::uint64_t>(tick);
    read.wallMs = *wall;
    return read;
}

}  // namespace ledger
