// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/entry.h"

#include <algorithm>
#include <set>

#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/merkle.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr int envelopeVersion = 1;

Error badEntry(const std::string& where, const std::string& what) {
    return Error{Code::LedgerBadEntry, {where, what}};
}

/// Whether ISO 8601 with a year of four digits can say this moment.
bool isWritable(std::int64_t wallMs) { return base::parseIsoUtc(base::isoUtc(wallMs)) == wallMs; }

template <class Id>
json idOrNull(const std::optional<Id>& id) {
    return id ? json(id->text()) : json(nullptr);
}

json bodyJson(const Body& body, const base::LedgerId& ledger) {
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
    if (body.basis)
        out["basis"] = {{ledger.text(), {{"size", body.basis->size}, {"root", body.basis->root}}}};
    return out;
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
    if (body.basis && !digestOf(body.basis->root)) return badEntry("/body/basis", "has no root");
    return base::Done{};
}

/// Reads the members of one object and remembers the first thing that is wrong with it.
class MemberReader {
  public:
    MemberReader(const json& object, std::string where)
        : m_object(object), m_where(std::move(where)) {
        if (!object.is_object()) refuse("", "is no object");
    }

    void only(const std::set<std::string>& known) {
        if (m_error) return;
        for (const auto& item : m_object.items())
            if (known.count(item.key()) == 0) refuse("/" + item.key(), "is not known");
    }
    bool has(const char* key) const { return !m_error && m_object.contains(key); }

    const json* member(const char* key, json::value_t type) {
        if (m_error) return nullptr;
        const auto found = m_object.find(key);
        if (found == m_object.end()) return refuse(std::string("/") + key, "is missing");
        const bool fits = type == json::value_t::number_integer ? found->is_number_integer()
                                                                : found->type() == type;
        if (!fits) return refuse(std::string("/") + key, "is of the wrong kind");
        return &*found;
    }

    std::string text(const char* key) {
        const json* value = member(key, json::value_t::string);
        return value ? value->get<std::string>() : std::string();
    }
    std::int64_t integer(const char* key, std::int64_t least, std::int64_t most) {
        const json* value = member(key, json::value_t::number_integer);
        if (!value) return least;
        const bool tooLarge = value->is_number_unsigned() &&
                              value->get<std::uint64_t>() > static_cast<std::uint64_t>(most);
        if (tooLarge || value->get<std::int64_t>() < least || value->get<std::int64_t>() > most) {
            refuse(std::string("/") + key, "is out of range");
            return least;
        }
        return value->get<std::int64_t>();
    }
    std::int64_t moment(const char* key) {
        const auto ms = base::parseIsoUtc(text(key));
        if (!ms) refuse(std::string("/") + key, "is no moment");
        return ms.value_or(0);
    }
    template <class Id>
    std::optional<Id> id(const char* key) {
        const auto read = Id::parse(text(key));
        if (!read) refuse(std::string("/") + key, "is no id");
        return read ? std::optional<Id>(*read) : std::nullopt;
    }
    template <class Id>
    std::optional<Id> idOrNull(const char* key) {
        if (has(key) && m_object.at(key).is_null()) return std::nullopt;
        return id<Id>(key);
    }

    std::nullptr_t refuse(const std::string& key, const std::string& what) {
        if (!m_error) m_error = badEntry(m_where + key, what);
        return nullptr;
    }
    const std::optional<Error>& error() const { return m_error; }

  private:
    const json& m_object;
    std::string m_where;
    std::optional<Error> m_error;
};

base::Result<json> parseCanonical(const std::string& bytes) {
    json parsed = json::parse(bytes, nullptr, false);
    if (parsed.is_discarded()) return badEntry("", "is not JSON");
    const auto again = entryJcs(parsed);
    if (!again) return again.error();
    if (*again != bytes) return Error{Code::LedgerNotCanonical};
    return parsed;
}

std::optional<Head> readBasis(MemberReader& body, const base::LedgerId& ledger) {
    if (!body.has("basis")) return std::nullopt;
    const json* basis = body.member("basis", json::value_t::object);
    if (!basis) return std::nullopt;
    MemberReader heads(*basis, "/body/basis");
    heads.only({ledger.text()});
    const json* own = heads.member(ledger.text().c_str(), json::value_t::object);
    if (!own) {
        body.refuse("/basis", "names another ledger");
        return std::nullopt;
    }
    MemberReader head(*own, "/body/basis");
    head.only({"size", "root"});
    const Head read{static_cast<std::uint64_t>(head.integer("size", 0, largestInteger)),
                    head.text("root")};
    if (heads.error() || head.error()) body.refuse("/basis", "is no head");
    return read;
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

base::Result<Body> readBody(const json& parsed, const base::LedgerId& ledger) {
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
    body.basis = readBasis(in, ledger);
    if (const json* data = in.member("data", json::value_t::object)) body.data = *data;
    if (const json* sigs = in.member("sigs", json::value_t::array)) body.sigs = *sigs;
    if (in.error()) return *in.error();
    if (const auto checked = checkBody(body); !checked) return checked.error();
    return body;
}

}  // namespace

base::Result<std::string> entryBytes(const Entry& entry) {
    if (const auto checked = checkBody(entry.body); !checked) return checked.error();
    if (!isWritable(entry.wallMs)) return badEntry("/wall", "is beyond the calendar");
    const auto body = entryJcs(bodyJson(entry.body, entry.ledger));
    if (!body) return body.error();
    return entryJcs({{"v", envelopeVersion},
                     {"ledger", entry.ledger.text()},
                     {"seq", entry.seq},
                     {"tick", entry.tick},
                     {"wall", base::isoUtc(entry.wallMs)},
                     {"boot", {{"id", entry.bootId}, {"ms", entry.bootMs}}},
                     {"subject", idOrNull(entry.subject)},
                     {"key", nullptr},
                     {"alg", "none"},
                     {"nonce", ""},
                     {"body", toBase64Url(*body)}});
}

base::Result<Entry> readEntry(const std::string& bytes) {
    const auto parsed = parseCanonical(bytes);
    if (!parsed) return parsed.error();
    MemberReader in(*parsed, "");
    in.only(
        {"v", "ledger", "seq", "tick", "wall", "boot", "subject", "key", "alg", "nonce", "body"});
    if (in.integer("v", envelopeVersion, envelopeVersion) != envelopeVersion || in.error())
        return *in.error();
    const std::string alg = in.text("alg");
    if (!in.error() && alg != "none") return Error{Code::LedgerUnknownAlg, {alg}};
    in.member("key", json::value_t::null);
    if (!in.text("nonce").empty()) in.refuse("/nonce", "is not empty");
    const json* boot = in.member("boot", json::value_t::object);
    const auto ledger = in.id<base::LedgerId>("ledger");
    const auto bodyBytes = fromBase64Url(in.text("body"));
    if (!bodyBytes) in.refuse("/body", "is not base 64");
    if (in.error()) return *in.error();

    MemberReader bootIn(*boot, "/boot");
    bootIn.only({"id", "ms"});
    const auto bodyParsed = parseCanonical(*bodyBytes);
    if (!bodyParsed) return bodyParsed.error();
    const auto body = readBody(*bodyParsed, *ledger);
    if (!body) return body.error();
    Entry entry{.ledger = *ledger, .body = *body};
    entry.seq = static_cast<std::uint64_t>(in.integer("seq", 0, largestInteger));
    entry.tick = static_cast<std::uint64_t>(in.integer("tick", 0, largestInteger));
    entry.wallMs = in.moment("wall");
    entry.bootId = bootIn.text("id");
    entry.bootMs = bootIn.integer("ms", -largestInteger, largestInteger);
    entry.subject = in.idOrNull<base::PatientId>("subject");
    if (in.error()) return *in.error();
    if (bootIn.error()) return *bootIn.error();
    return entry;
}

}  // namespace ledger
