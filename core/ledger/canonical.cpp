// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/canonical.h"

#include "ledger/jcs.h"
#include "ledger/plainscan.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr int deepestPlain = 40;

bool takeValue(PlainScan& in, int level, json& value);

bool takeObject(PlainScan& in, int level, json& value) {
    value = json::object();
    auto& members = value.get_ref<json::object_t&>();
    in.take("{");
    while (in.isGood() && in.next() != '}') {
        if (!members.empty()) in.take(",");
        std::string key(in.text());
        if (!members.empty() && key <= members.rbegin()->first) return false;
        const auto at = members.emplace_hint(members.end(), std::move(key), nullptr);
        if (!in.take(":") || !takeValue(in, level + 1, at->second)) return false;
    }
    return in.take("}");
}

bool takeArray(PlainScan& in, int level, json& value) {
    value = json::array();
    auto& items = value.get_ref<json::array_t&>();
    in.take("[");
    while (in.isGood() && in.next() != ']') {
        if (!items.empty()) in.take(",");
        if (!takeValue(in, level + 1, items.emplace_back())) return false;
    }
    return in.take("]");
}

/// As nlohmann/json keeps numbers: those that are not below 0 without a sign.
bool takeNumber(PlainScan& in, json& value) {
    const std::int64_t number = in.integer();
    if (number < 0)
        value = number;
    else
        value = static_cast<std::uint64_t>(number);
    return in.isGood();
}

bool takeValue(PlainScan& in, int level, json& value) {
    if (level > deepestPlain) return false;
    switch (in.next()) {
        case '{':
            return takeObject(in, level, value);
        case '[':
            return takeArray(in, level, value);
        case '"':
            value = in.text();
            return in.isGood();
        case 'n':
            value = nullptr;
            return in.take("null");
        case 't':
            value = true;
            return in.take("true");
        case 'f':
            value = false;
            return in.take("false");
        default:
            return takeNumber(in, value);
    }
}

}  // namespace

bool takePlain(PlainScan& in, json& value) { return takeValue(in, 0, value); }

std::optional<json> readPlain(std::string_view bytes) {
    PlainScan in(bytes);
    json value;
    if (!takePlain(in, value) || !in.isAtEnd()) return std::nullopt;
    return value;
}

base::Result<json> parseCanonical(const std::string& bytes) {
    if (auto plain = readPlain(bytes)) return std::move(*plain);
    json parsed = json::parse(bytes, nullptr, false);
    if (parsed.is_discarded()) return Error{Code::LedgerBadEntry, {"", "is not JSON"}};
    const auto again = entryJcs(parsed);
    if (!again) return again.error();
    if (*again != bytes) return Error{Code::LedgerNotCanonical};
    return parsed;
}

}  // namespace ledger
