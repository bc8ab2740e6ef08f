// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ledger {

/// Bytes in the URL-safe base 64 of RFC 4648 section 5, without padding.
std::string toBase64Url(std::string_view bytes);
/// The bytes of such a text; nothing when it has padding, other letters, or spare bits set.
std::optional<std::string> fromBase64Url(std::string_view text);
/// Whether it is such a text.
bool isBase64Url(std::string_view text);

}  // namespace ledger
