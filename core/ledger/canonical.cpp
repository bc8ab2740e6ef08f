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

bool takeValue(PlainScan& in, int level);

bool takeObject(PlainScan& in, int level) {
    in.take("{");
    std::string_view before;
    for (bool isFirst = true; in.isGood() && in.next() != '}'; isFirst = false) {
        if (!isFirst) in.take(",");
        const std::string_view key = in.text();
        if (!isFirst && key <= before) return false;
        before = key;
        if (!in.take(":") || !takeValue(in, level + 1)) return false;
    }
    return in.take("}");
}

bool takeArray(PlainScan& in, int level) {
    in.take("[");
    for (bool isFirst = true; in.isGood() && in.next() != ']'; isFirst = false) {
        if (!isFirst) in.take(",");
        if (!takeValue(in, level + 1)) return false;
    }
    return in.take("]");
}

bool takeValue(PlainScan& in, int level) {
    if (level > deepestPlain) return false;
    switch (in.next()) {
        case '{':
            return takeObject(in, level);
        case '[':
            return takeArray(in, level);
        case '"':
            in.text();
            return in.isGood();
        case 'n':
            return in.take("null");
        case 't':
            return in.take("true");
        case 'f':
            return in.take("false");
        default:
            in.integer();
            return in.isGood();
    }
}

}  // namespace

bool isPlainlyCanonical(std::string_view bytes) {
    PlainScan in(bytes);
    return takeValue(in, 0) && in.isAtEnd();
}

base::Result<json> parseCanonical(const std::string& bytes) {
    json parsed = json::parse(bytes, nullptr, false);
    if (parsed.is_discarded()) return Error{Code::LedgerBadEntry, {"", "is not JSON"}};
    if (isPlainlyCanonical(bytes)) return parsed;
    const auto again = entryJcs(parsed);
    if (!again) return again.error();
    if (*again != bytes) return Error{Code::LedgerNotCanonical};
    return parsed;
}

}  // namespace ledger
