// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "ledger/entry.h"

namespace ledger {

enum class Signatures { With, Without };

/// The canonical JSON of a body, RFC 8785: what is sealed, and without its signatures what they are
/// over. Errors: LedgerBadEntry, those of entryJcs().
base::Result<std::string> bodyText(const Body& body, Signatures which);

/// Reads such text with its signatures. Errors: LedgerBadEntry, LedgerNotCanonical, those of
/// entryJcs().
base::Result<Body> readBodyText(const std::string& text);
/// The same of a body that holds nothing unusual, in one pass; nothing when another way has to be
/// taken.
std::optional<Body> scanBody(std::string_view text);

}  // namespace ledger
