// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/envelope.h"

#include "base/clock.h"
#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/memberreader.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr int envelopeVersion = 1;
const std::string noAlg = "none";
const std::string sealAlg = "xchacha20poly1305";
constexpr std::size_t sealNonceSize = 24;

class PlainCodec : public Codec {
  public:
    bool seals() const override { return false; }
    base::Result<Closed> close(const json&, const std::string& body) override {
        return Closed{.body = body};
    }
    base::Result<std::optional<std::string>> open(const json&, const Closed& closed) override {
        if (closed.alg != noAlg) return std::optional<std::string>();
        return std::optional<std::string>(closed.body);
    }
    base::Result<std::string> closeRow(std::string_view, const std::string& row) override {
        return row;
    }
    base::Result<std::optional<std::string>> openRow(std::string_view,
                                                     std::string_view stored) override {
        if (stored.starts_with(sealedRowMark)) return std::optional<std::string>();
        return std::optional<std::string>(stored);
    }
};

/// Which members go with which alg; the first that is wrong is remembered by `in`.
Closed readClosed(MemberReader& in) {
    Closed closed{.alg = in.text("alg")};
    const bool isSealed = closed.alg == sealAlg;
    if (isSealed)
        closed.key = in.text("key");
    else
        in.member("key", json::value_t::null);
    if (isSealed && !base::isIdText(closed.key)) in.refuse("/key", "is no id");
    const auto nonce = fromBase64Url(in.text("nonce"));
    if (!nonce || nonce->size() != (isSealed ? sealNonceSize : 0))
        in.refuse("/nonce", isSealed ? "is not 24 bytes" : "is not empty");
    const auto body = fromBase64Url(in.text("body"));
    if (!body) in.refuse("/body", "is not base 64");
    closed.nonce = nonce.value_or("");
    closed.body = body.value_or("");
    return closed;
}

}  // namespace

std::shared_ptr<Codec> plainCodec() {
    static const auto codec = std::make_shared<PlainCodec>();
    return codec;
}

std::string boundText(json head, const Closed& closed) {
    head["alg"] = closed.alg;
    head["key"] = closed.key.empty() ? json(nullptr) : json(closed.key);
    const auto text = entryJcs(head);
    return text ? *text : std::string();
}

bool isWritable(std::int64_t wallMs) { return base::parseIsoUtc(base::isoUtc(wallMs)) == wallMs; }

base::Result<json> parseCanonical(const std::string& bytes) {
    json parsed = json::parse(bytes, nullptr, false);
    if (parsed.is_discarded()) return Error{Code::LedgerBadEntry, {"", "is not JSON"}};
    const auto again = entryJcs(parsed);
    if (!again) return again.error();
    if (*again != bytes) return Error{Code::LedgerNotCanonical};
    return parsed;
}

json headOf(const Envelope& envelope) {
    return {{"v", envelopeVersion},
            {"ledger", envelope.ledger.text()},
            {"seq", envelope.seq},
            {"tick", envelope.tick},
            {"wall", base::isoUtc(envelope.wallMs)},
            {"boot", {{"id", envelope.bootId}, {"ms", envelope.bootMs}}},
            {"subject", envelope.subject ? json(envelope.subject->text()) : json(nullptr)}};
}

base::Result<std::string> envelopeBytes(const Envelope& envelope) {
    if (!isWritable(envelope.wallMs))
        return Error{Code::LedgerBadEntry, {"/wall", "is beyond the calendar"}};
    json all = headOf(envelope);
    const Closed& closed = envelope.closed;
    all["alg"] = closed.alg;
    all["key"] = closed.key.empty() ? json(nullptr) : json(closed.key);
    all["nonce"] = toBase64Url(closed.nonce);
    all["body"] = toBase64Url(closed.body);
    return entryJcs(all);
}

base::Result<Envelope> readEnvelope(const std::string& bytes) {
    const auto parsed = parseCanonical(bytes);
    if (!parsed) return parsed.error();
    MemberReader in(*parsed, "");
    in.only(
        {"v", "ledger", "seq", "tick", "wall", "boot", "subject", "key", "alg", "nonce", "body"});
    if (in.integer("v", envelopeVersion, envelopeVersion) != envelopeVersion || in.error())
        return *in.error();
    const std::string alg = in.text("alg");
    if (!in.error() && alg != noAlg && alg != sealAlg) return Error{Code::LedgerUnknownAlg, {alg}};
    const json* boot = in.member("boot", json::value_t::object);
    const auto ledger = in.id<base::LedgerId>("ledger");
    Envelope read{.closed = readClosed(in)};
    read.seq = static_cast<std::uint64_t>(in.integer("seq", 0, largestInteger));
    read.tick = static_cast<std::uint64_t>(in.integer("tick", 0, largestInteger));
    read.wallMs = in.moment("wall");
    read.subject = in.idOrNull<base::PatientId>("subject");
    if (in.error()) return *in.error();
    MemberReader bootIn(*boot, "/boot");
    bootIn.only({"id", "ms"});
    read.bootId = bootIn.text("id");
    read.bootMs = bootIn.integer("ms", -largestInteger, largestInteger);
    if (bootIn.error()) return *bootIn.error();
    read.ledger = *ledger;
    return read;
}

}  // namespace ledger
