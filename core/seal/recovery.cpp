// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/recovery.h"

#include <sodium.h>

namespace seal {
namespace {

/// The seed of the pair: BLAKE2b of the random bytes, personalised so that the same bytes give
/// nothing of use anywhere else.
Secret seedOf(const Secret& bytes) {
    static_assert(crypto_generichash_blake2b_PERSONALBYTES == 16);
    const std::string purpose = "ninebark recover";
    Secret seed = Secret::ofSize(32);
    crypto_generichash_blake2b_salt_personal(seed.data(), seed.size(), bytes.data(), bytes.size(),
                                             nullptr, 0, nullptr,
                                             bytePointer(std::string_view(purpose)));
    return seed;
}

}  // namespace

Recovery::Recovery(Secret bytes)
    : m_bytes(std::move(bytes)), m_pair(BoxPair::fromSeed(seedOf(m_bytes))) {}

Recovery Recovery::generate() { return Recovery(Secret::random(codeBytes)); }

base::Result<Recovery> Recovery::fromLetters(const Secret& typed) {
    auto bytes = readCode(CodeKind::Recovery, typed);
    if (!bytes) return bytes.error();
    return Recovery(std::move(*bytes));
}

}  // namespace seal
