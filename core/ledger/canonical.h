// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"

namespace ledger {

/// JSON whose bytes are its own canonical form. Errors: LedgerBadEntry, LedgerNotCanonical, those
/// of entryJcs().
base::Result<nlohmann::json> parseCanonical(const std::string& bytes);

/// Reads bytes that are the canonical form of an entry's JSON and are seen to be in one pass:
/// printable ASCII without escapes, keys in their order, whole numbers below 10^15, few levels.
/// Nothing says nothing: nearly all that is written is so, the rest has to be written again and
/// compared.
std::optional<nlohmann::json> readPlain(std::string_view bytes);

class PlainScan;
/// The same of one value among others; false when it is not so.
bool takePlain(PlainScan& in, nlohmann::json& value);

}  // namespace ledger
