// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/recovery.h"

#include <sodium.h>

namespace seal {
namespace {

/// BLAKE2b of the random bytes, personalised so that the same bytes give nothing of use anywhere
/// else.
Secret derived(const Secret& bytes, const std::string& purpose, std::size_t size) {
    static_assert(crypto_generichash_blake2b_PERSONALBYTES == 16);
    Secret seed = Secret::ofSize(size);
    crypto_generichash_blake2b_salt_personal(seed.data(), seed.size(), bytes.data(), bytes.size(),
                                             nullptr, 0, nullptr,
                                             bytePointer(std::string_view(purpose)));
    return seed;
}

}  // namespace

Recovery::Recovery(Secret bytes)
    : m_bytes(std::move(bytes)),
      m_pair(BoxPair::fromSeed(derived(m_bytes, "ninebark recover", 32))),
      m_signer(Identity::fromSecret(derived(m_bytes, "ninebark rec.sig", 64))) {}

Recovery Recovery::generate() { return Recovery(Secret::random(codeBytes)); }

base::Result<Recovery> Recovery::fromLetters(const Secret& typed) {
    auto bytes = readCode(CodeKind::Recovery, typed);
    if (!bytes) return bytes.error();
    return Recovery(std::move(*bytes));
}

}  // namespace seal
