// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/envelope.h"

#include <algorithm>

#include "base/clock.h"
#include "ledger/base64url.h"
#include "ledger/canonical.h"
#include "ledger/envelopescan.h"
#include "ledger/jcs.h"
#include "ledger/memberreader.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

class PlainCodec : public Codec {
  public:
    std::unique_ptr<Codec> reader(KeyShelf&) const override {
        return std::make_unique<PlainCodec>();
    }
    bool seals() const override { return false; }
    base::Result<Closed> close(const Binding&, const std::string& body) override {
        return Closed{.body = body};
    }
    base::Result<std::optional<std::string>> open(const Binding&, const Closed& closed) override {
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

enum class Members { All, Bound };

bool hasWritableNumbers(const Envelope& envelope) {
    constexpr auto most = static_cast<std::uint64_t>(largestInteger);
    return envelope.seq <= most && envelope.tick <= most && envelope.bootMs <= largestInteger &&
           envelope.bootMs >= -largestInteger;
}

/// A name or nothing: letters that need no escape.
std::string quotedOrNull(const std::string& text) {
    return text.empty() ? "null" : '"' + text + '"';
}

/// The members in their canonical order, which never changes.
base::Result<std::string> membersOf(const Envelope& envelope, const Closed& closed, Members which) {
    if (!hasWritableNumbers(envelope))
        return Error{Code::LedgerBadNumber, {"an integer beyond 2^53 - 1"}};
    const auto boot = entryJcs(envelope.bootId);
    if (!boot) return boot.error();
    const bool isAll = which == Members::All;
    std::string out = "{\"alg\":\"" + closed.alg + '"';
    if (isAll) out.append(",\"body\":\"").append(toBase64Url(closed.body)).append("\"");
    out.append(",\"boot\":{\"id\":").append(*boot);
    out.append(",\"ms\":").append(std::to_string(envelope.bootMs));
    out.append("},\"key\":").append(quotedOrNull(closed.key));
    out.append(",\"ledger\":\"").append(envelope.ledger.text()).append("\"");
    if (isAll) out.append(",\"nonce\":\"").append(toBase64Url(closed.nonce)).append("\"");
    out.append(",\"seq\":").append(std::to_string(envelope.seq)).append(",\"subject\":");
    out.append(quotedOrNull(envelope.subject ? envelope.subject->text() : std::string()));
    out.append(",\"tick\":").append(std::to_string(envelope.tick));
    out.append(",\"v\":").append(std::to_string(envelopeVersion));
    out.append(",\"wall\":\"").append(base::isoUtc(envelope.wallMs)).append("\"}");
    return out;
}

}  // namespace

std::shared_ptr<Codec> plainCodec() {
    static const auto codec = std::make_shared<PlainCodec>();
    return codec;
}

std::unique_ptr<Codec> Codec::reader(KeyShelf&) const { return nullptr; }

bool isWritable(std::int64_t wallMs) { return !base::isoUtc(wallMs).empty(); }

Binding bindingOf(const Envelope& envelope) {
    const auto text = [&envelope](const Closed& closed) {
        const auto members = membersOf(envelope, closed, Members::Bound);
        return members ? *members : std::string();
    };
    return {envelope.subject, text};
}

/// A member's name in quotes is nowhere else: within a text a quote has a backslash before it.
Binding bindingIn(const Envelope& envelope, std::string_view bytes) {
    const auto text = [bytes](const Closed&) {
        std::string out;
        std::string_view left = bytes;
        for (const std::string_view member : {",\"body\":\"", ",\"nonce\":\""}) {
            const std::size_t at = left.find(member);
            if (at == std::string_view::npos) return std::string();
            out.append(left.substr(0, at));
            left.remove_prefix(at + member.size());
            left.remove_prefix(std::min(left.size(), left.find('"') + 1));
        }
        return out.append(left);
    };
    return {envelope.subject, text};
}

base::Result<std::string> envelopeBytes(const Envelope& envelope) {
    if (!isWritable(envelope.wallMs))
        return Error{Code::LedgerBadEntry, {"/wall", "is beyond the calendar"}};
    return membersOf(envelope, envelope.closed, Members::All);
}

base::Result<Envelope> readEnvelope(std::string_view bytes, Box box) {
    if (auto usual = scanEnvelope(bytes, box)) return std::move(*usual);
    const auto parsed = parseCanonical(std::string(bytes));
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
