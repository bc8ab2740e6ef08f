// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/envelopescan.h"

#include "base/clock.h"
#include "ledger/base64url.h"
#include "ledger/plainscan.h"

namespace ledger {
namespace {

std::string_view takeText(PlainScan& in, std::string_view before) {
    return in.take(before) ? in.text() : std::string_view();
}

/// A string of base 64.
std::optional<std::string> takeBytes(PlainScan& in, std::string_view before) {
    return fromBase64Url(in.take(before) ? in.letters() : std::string_view());
}

/// "" for null.
std::string_view takeTextOrNull(PlainScan& in, std::string_view before) {
    if (!in.take(before)) return {};
    if (in.next() == 'n') return in.take("null"), std::string_view();
    const std::string_view text = in.text();
    if (text.empty()) in.fail();
    return text;
}

std::int64_t takeInteger(PlainScan& in, std::string_view before) {
    return in.take(before) ? in.integer() : 0;
}

bool fits(const Closed& closed) {
    if (closed.alg == sealAlg)
        return base::isIdText(closed.key) && closed.nonce.size() == sealNonceSize;
    return closed.alg == noAlg && closed.key.empty() && closed.nonce.empty();
}

}  // namespace

std::optional<Envelope> scanEnvelope(std::string_view bytes) {
    PlainScan in(bytes);
    Envelope read;
    read.closed.alg = takeText(in, "{\"alg\":");
    const auto body = takeBytes(in, ",\"body\":");
    read.bootId = takeText(in, ",\"boot\":{\"id\":");
    read.bootMs = takeInteger(in, ",\"ms\":");
    read.closed.key = takeTextOrNull(in, "},\"key\":");
    const auto ledger = base::LedgerId::parse(takeText(in, ",\"ledger\":"));
    const auto nonce = takeBytes(in, ",\"nonce\":");
    const std::int64_t seq = takeInteger(in, ",\"seq\":");
    const std::string_view subject = takeTextOrNull(in, ",\"subject\":");
    const std::int64_t tick = takeInteger(in, ",\"tick\":");
    if (takeInteger(in, ",\"v\":") != envelopeVersion) return std::nullopt;
    const auto wall = base::parseIsoUtc(std::string(takeText(in, ",\"wall\":")));
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
