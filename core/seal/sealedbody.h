// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "seal/aead.h"

namespace seal {

/// How much longer a sealed body is told in: a reader of the disk learns its length in such steps.
inline constexpr std::size_t bodyStep = 256;

/// The plaintext is 32 zero bytes, the body, and a padding to a multiple of bodyStep (0x80 and
/// zeros as in ISO/IEC 7816-4, at least one byte, so that every body comes back as it was).
///
/// The zeros are there because Poly1305 alone does not bind to a key: whoever holds the keys could
/// make one ciphertext that opens to two bodies under two keys, and change afterwards which key is
/// at hand while the leaf in the ledger stays the same. With known bytes of the length of a key in
/// front, two such keys would have to give equal key streams (Albertini and others, "How to Abuse
/// and Fix Authenticated Encryption Without Key Commitment", USENIX Security 2022;
/// title from memory).
///
/// `with`: the canonical JSON of the entry without nonce and body.
Sealed sealBody(const Secret& key, const std::string& body, std::string_view with);
/// Nothing when anything was changed.
std::optional<std::string> openBody(const Secret& key, const Sealed& sealed, std::string_view with);
std::optional<std::string> openBody(const Secret& key, std::string_view nonce, std::string_view box,
                                    std::string_view with);

}  // namespace seal
