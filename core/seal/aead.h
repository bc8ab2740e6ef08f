// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "seal/secret.h"

/// XChaCha20-Poly1305 as in draft-irtf-cfrg-xchacha: the one way in which bytes are sealed under a
/// key. Its nonce is long enough to be drawn at random for every message.
namespace seal {

inline constexpr std::size_t keySize = 32;
inline constexpr std::size_t nonceSize = 24;
inline constexpr std::size_t tagSize = 16;

/// What is stored in the place of the bytes.
struct Sealed {
    std::string nonce = {};  ///< 24 bytes
    std::string box = {};    ///< the ciphertext and its tag

    bool operator==(const Sealed&) const = default;
};

/// Seals under a key of keySize bytes with a nonce of its own. `with` is not hidden, but has to be
/// the same when it is opened.
Sealed sealBytes(const Secret& key, std::string_view plain, std::string_view with);
/// The same with a given nonce; only to compare with published vectors.
Sealed sealBytesWithNonce(const Secret& key, std::string_view nonce, std::string_view plain,
                          std::string_view with);
/// Nothing when any bit of key, nonce, box or `with` is another one.
std::optional<Secret> openSecret(const Secret& key, const Sealed& sealed, std::string_view with);
/// Into a secret that has the size of what was sealed; false also where it has another.
bool openSecretInto(Secret& plain, const Secret& key, const Sealed& sealed, std::string_view with);
/// The same for bytes that need no memory of their own.
std::optional<std::string> openBytes(const Secret& key, const Sealed& sealed,
                                     std::string_view with);
std::optional<std::string> openBytes(const Secret& key, std::string_view nonce,
                                     std::string_view box, std::string_view with);

}  // namespace seal
