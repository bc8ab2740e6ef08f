// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>

#include "base/result.h"

namespace ledger {

/// The largest integer of an entry, 2^53 - 1: beyond it a double can't hold every integer.
inline constexpr std::int64_t largestInteger = 9007199254740991;

/// JSON in the one canonical form of RFC 8785. Refused: text that is not valid UTF-8 (a lone
/// surrogate is none), NaN and infinity, more than 100 levels.
base::Result<std::string> jcs(const nlohmann::json& value);

/// The same for our entries, which are stricter: also refuses fractions (any floating number),
/// integers beyond largestInteger either way, and text that is not in Unicode's form NFC.
base::Result<std::string> entryJcs(const nlohmann::json& value);

/// Whether the bytes are valid UTF-8.
bool isUtf8(const std::string& text);
/// The text in form NFC, which is how text enters an entry. Refuses what is not valid UTF-8.
base::Result<std::string> nfc(const std::string& text);

}  // namespace ledger
