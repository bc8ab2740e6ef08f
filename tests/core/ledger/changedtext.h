// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <random>
#include <string>
#include <string_view>

#include "ledger/jcs.h"

namespace ledger {

inline bool isCanonical(const std::string& bytes) {
    const auto parsed = nlohmann::json::parse(bytes, nullptr, false);
    if (parsed.is_discarded()) return false;
    const auto again = entryJcs(parsed);
    return again && *again == bytes;
}

/// One letter changed, put in, taken out, or a piece put elsewhere.
inline std::string changed(std::string bytes, std::mt19937& random) {
    constexpr std::string_view letters = "{}[]\",:0123456789-+.eEtrufalsnl \\ab\xc3\x7f\t";
    const auto place = [&] { return random() % bytes.size(); };
    const char letter = letters[random() % letters.size()];
    switch (random() % 4) {
        case 0:
            bytes[place()] = letter;
            break;
        case 1:
            bytes.insert(place(), 1, letter);
            break;
        case 2:
            bytes.erase(place(), 1 + random() % 3);
            break;
        default:
            bytes.insert(place(), bytes.substr(place(), 1 + random() % 20));
    }
    return bytes;
}

}  // namespace ledger
