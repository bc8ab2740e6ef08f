// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/lineage.h"

#include "ledger/jcs.h"

namespace ledger {

using base::Code;
using base::Error;
using nlohmann::json;

namespace {

constexpr std::size_t rootHexDigits = 64;

/// Nothing where it is no former ledger that comes after one of this size.
std::optional<Former> formerFrom(const json& row, std::uint64_t after) {
    if (!row.is_object() || row.size() != 3 || !row.contains("ledger") || !row.contains("root") ||
        !row.contains("size"))
        return std::nullopt;
    const json &id = row["ledger"], &root = row["root"], &size = row["size"];
    if (!id.is_string() || !root.is_string() || !size.is_number_unsigned()) return std::nullopt;
    const auto ledger = base::LedgerId::parse(id.get<std::string>());
    Former read{ledger ? *ledger : base::LedgerId(), {size, root}};
    if (!ledger || read.head.root.size() != rootHexDigits || read.head.size <= after)
        return std::nullopt;
    return read;
}

}  // namespace

base::Result<Lineage> Lineage::parse(base::LedgerId id, const std::string& former) {
    std::vector<Former> read;
    if (former.empty()) return Lineage(std::move(id));
    const json rows = json::parse(former, nullptr, false);
    if (!rows.is_array()) return Error{Code::LedgerBadEntry, {"former", "ids"}};
    for (const json& row : rows) {
        auto one = formerFrom(row, read.empty() ? 0 : read.back().head.size);
        if (!one) return Error{Code::LedgerBadEntry, {"former", "ids"}};
        read.push_back(std::move(*one));
    }
    return Lineage(std::move(id), std::move(read));
}

const base::LedgerId& Lineage::at(std::uint64_t seq) const {
    for (const Former& one : m_former)
        if (seq < one.head.size) return one.ledger;
    return m_id;
}

bool Lineage::agreesWith(const RightEdge& edge) const {
    for (const Former& one : m_former)
        if (one.head.size == edge.size() && one.head.root != toHex(edge.root())) return false;
    return true;
}

Lineage Lineage::continued(base::LedgerId id, Head head) const {
    std::vector<Former> all = m_former;
    all.push_back({m_id, std::move(head)});
    return Lineage(std::move(id), std::move(all));
}

std::string Lineage::formerText() const {
    if (m_former.empty()) return {};
    json rows = json::array();
    for (const Former& one : m_former)
        rows.push_back(
            {{"ledger", one.ledger.text()}, {"root", one.head.root}, {"size", one.head.size}});
    return *jcs(rows);
}

}  // namespace ledger
