// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a body member by member, which can say what is wrong with it.
#include "ledger/bodytext.h"
#include "ledger/canonical.h"
#include "ledger/jcs.h"
#include "ledger/memberreader.h"

namespace ledger {
namespace {

using nlohmann::json;

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
        if (!id.is_string() || !base::isIdText(id.get_ref<const std::string&>())) {
            body.refuse("/about", "holds what is no id");
            return about;
        }
        about.push_back(id.get<std::string>());
    }
    return about;
}

/// Takes out of `parsed` what it holds of the payload and the signatures.
base::Result<Body> readMembers(json& parsed) {
    MemberReader in(parsed, "/body");
    in.only({"id", "type", "tv", "must", "at", "offset", "zone", "by", "role", "app", "visit",
             "about", "basis", "data", "sigs"});
    const auto id = in.id<base::CommandId>("id");
    if (!id) return *in.error();
    Body body{.id = *id};
    body.type = in.text("type");
    if (body.type.empty()) in.refuse("/type", "is empty");
    body.tv = static_cast<int>(in.integer("tv", 1, largestVersion));
    const json* must = in.member("must", json::value_t::boolean);
    body.must = must && must->get<bool>();
    body.atMs = in.moment("at");
    body.offsetMinutes = static_cast<int>(in.integer("offset", -largestOffset, largestOffset));
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
    return body;
}

}  // namespace

base::Result<Body> readBodyText(const std::string& text) {
    if (auto usual = scanBody(text)) return std::move(*usual);
    auto parsed = parseCanonical(text);
    if (!parsed) return parsed.error();
    return readMembers(*parsed);
}

}  // namespace ledger
