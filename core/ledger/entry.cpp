// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/entry.h"

#include <algorithm>
#include <set>

#include "ledger/canonical.h"
#include "ledger/jcs.h"
#include "ledger/memberreader.h"
#include "ledger/merkle.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

Error badEntry(const std::string& where, const std::string& what) {
    return Error{Code::LedgerBadEntry, {where, what}};
}

template <class Id>
json idOrNull(const std::optional<Id>& id) {
    return id ? json(id->text()) : json(nullptr);
}

/// What the types of Body leave open; the same when writing and when reading.
base::Outcome checkBody(const Body& body) {
    if (body.type.empty()) return badEntry("/body/type", "is empty");
    if (body.tv < 1) return badEntry("/body/tv", "is below 1");
    if (!isWritable(body.atMs)) return badEntry("/body/at", "is beyond the calendar");
    if (!body.data.is_object()) return badEntry("/body/data", "is no object");
    if (!body.sigs.is_array()) return badEntry("/body/sigs", "is no list");
    for (const std::string& id : body.about)
        if (!base::isIdText(id)) return badEntry("/body/about", "holds what is no id");
    return base::Done{};
}

Basis readBasis(MemberReader& body) {
    Basis basis;
    if (!body.has("basis")) return basis;
    const json* sizes = body.member("basis", json::value_t::object);
    if (!sizes) return basis;
    if (sizes->empty()) body.refuse("/basis", "is empty");
    MemberReader in(*sizes, "/body/basis");
    for (const auto& item : sizes->items()) {
        const auto ledger = base::LedgerId::parse(item.key());
        const auto size = in.integer(item.key().c_str(), 0, largestInteger);
        if (!ledger || in.error())
            body.refuse("/basis", "holds what is no ledger's size");
        else
            basis[*ledger] = static_cast<std::uint64_t>(size);
    }
    return basis;
}

std::vector<std::string> readAbout(MemberReader& body) {
    std::vector<std::string> about;
    if (!body.has("about")) return about;
    const json* list = body.member("about", json::value_t::array);
    if (!list) return about;
    if (list->empty()) body.refuse("/about", "is empty");
    for (const json& id : *list) {
        if (!id.is_string()) body.refuse("/about", "holds what is no id");
        about.push_back(id.is_string() ? id.get<std::string>() : std::string());
    }
    return about;
}

/// Takes out of `parsed` what it holds of the payload and the signatures.
base::Result<Body> readBody(json& parsed) {
    MemberReader in(parsed, "/body");
    in.only({"id", "type", "tv", "must", "at", "offset", "zone", "by", "role", "app", "visit",
             "about", "basis", "data", "sigs"});
    const auto id = in.id<base::CommandId>("id");
    if (!id) return *in.error();
    Body body{.id = *id};
    body.type = in.text("type");
    body.tv = static_cast<int>(in.integer("tv", 1, 1'000'000));
    const json* must = in.member("must", json::value_t::boolean);
    body.must = must && must->get<bool>();
    body.atMs = in.moment("at");
    body.offsetMinutes = static_cast<int>(in.integer("offset", -100'000, 100'000));
    body.zone = in.text("zone");
    body.by = in.idOrNull<base::StaffId>("by");
    body.role = in.text("role");
    body.app = in.text("app");
    if (in.has("visit")) body.visit = in.id<base::VisitId>("visit");
    body.about = readAbout(in);
    body.basis = readBasis(in);
    in.member("data", json::value_t::object);
    in.member("sigs", json::value_t::array);
    if (in.error()) return *in.error();
    body.data = std::move(parsed["data"]);
    body.sigs = std::move(parsed["sigs"]);
    if (const auto checked = checkBody(body); !checked) return checked.error();
    return body;
}

Envelope envelopeOf(const Entry& entry) {
    return {entry.ledger, entry.seq,    entry.tick,    entry.wallMs,
            entry.bootId, entry.bootMs, entry.subject, {}};
}

}  // namespace

json bodyJson(const Body& body) {
    json out = {{"id", body.id.text()},
                {"type", body.type},
                {"tv", body.tv},
                {"must", body.must},
                {"at", base::isoUtc(body.atMs)},
                {"offset", body.offsetMinutes},
                {"zone", body.zone},
                {"by", idOrNull(body.by)},
                {"role", body.role},
                {"app", body.app},
                {"data", body.data},
                {"sigs", body.sigs}};
    if (body.visit) out["visit"] = body.visit->text();
    if (!body.about.empty()) out["about"] = body.about;
    for (const auto& [ledger, size] : body.basis) out["basis"][ledger.text()] = size;
    return out;
}

base::Result<std::string> entryBytes(Entry& entry, Codec& codec) {
    if (const auto checked = checkBody(entry.body); !checked) return checked.error();
    const auto body = entryJcs(bodyJson(entry.body));
    if (!body) return body.error();
    Envelope envelope = envelopeOf(entry);
    auto closed = codec.close(bindingOf(envelope), *body);
    if (!closed) return closed.error();
    envelope.closed = std::move(*closed);
    entry.key = envelope.closed.key;
    return envelopeBytes(envelope);
}

base::Result<Entry> readEntry(const std::string& bytes, Codec& codec) {
    const auto envelope = readEnvelope(bytes);
    if (!envelope) return envelope.error();
    return readEntry(*envelope, codec);
}

base::Result<Entry> readEntry(const Envelope& envelope, Codec& codec) {
    Entry entry{.ledger = envelope.ledger,
                .seq = envelope.seq,
                .tick = envelope.tick,
                .wallMs = envelope.wallMs,
                .bootId = envelope.bootId,
                .bootMs = envelope.bootMs,
                .subject = envelope.subject,
                .key = envelope.closed.key};
    const auto opened = codec.open(bindingOf(envelope), envelope.closed);
    if (!opened) return opened.error();
    entry.isOpen = opened->has_value();
    if (!entry.isOpen) return entry;
    auto parsed = parseCanonical(**opened);
    if (!parsed) return parsed.error();
    auto body = readBody(*parsed);
    if (!body) return body.error();
    entry.body = std::move(*body);
    return entry;
}

base::Result<std::string> entryBytes(Entry entry) { return entryBytes(entry, *plainCodec()); }

base::Result<Entry> readEntry(const std::string& bytes) { return readEntry(bytes, *plainCodec()); }

}  // namespace ledger
