// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/bodytext.h"

#include "ledger/jcs.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

Error badEntry(const std::string& where, const std::string& what) {
    return Error{Code::LedgerBadEntry, {where, what}};
}

/// What the types of Body leave open.
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

/// Writes the members of an object one behind the other; whoever uses it keeps their order.
class MemberWriter {
  public:
    /// Letters that need no escape.
    void letters(const char* key, std::string_view value) {
        begin(key) += '"';
        m_out.append(value) += '"';
    }
    void plain(const char* key, std::string_view value) { begin(key).append(value); }
    void value(const char* key, const json& value) {
        auto text = entryJcs(value);
        if (text)
            begin(key).append(*text);
        else if (!m_error)
            m_error = text.error();
    }
    base::Result<std::string> take() {
        if (m_error) return *m_error;
        return std::move(m_out += '}');
    }

  private:
    std::string& begin(const char* key) {
        if (m_out.size() > 1) m_out += ',';
        return m_out.append(1, '"').append(key).append("\":");
    }
    std::string m_out = "{";
    std::optional<Error> m_error;
};

json sizesOf(const Basis& basis) {
    json sizes = json::object();
    for (const auto& [ledger, size] : basis) sizes[ledger.text()] = size;
    return sizes;
}

}  // namespace

base::Result<std::string> bodyText(const Body& body, Signatures which) {
    if (const auto checked = checkBody(body); !checked) return checked.error();
    MemberWriter out;
    if (!body.about.empty()) out.value("about", body.about);
    out.value("app", body.app);
    out.letters("at", base::isoUtc(body.atMs));
    if (!body.basis.empty()) out.value("basis", sizesOf(body.basis));
    if (body.by)
        out.letters("by", body.by->text());
    else
        out.plain("by", "null");
    out.value("data", body.data);
    out.letters("id", body.id.text());
    out.plain("must", body.must ? "true" : "false");
    out.plain("offset", std::to_string(body.offsetMinutes));
    out.value("role", body.role);
    if (which == Signatures::With) out.value("sigs", body.sigs);
    out.plain("tv", std::to_string(body.tv));
    out.value("type", body.type);
    if (body.visit) out.letters("visit", body.visit->text());
    out.value("zone", body.zone);
    return out.take();
}

}  // namespace ledger
