// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/sealedbody.h"

#include <sodium.h>

#include "base/check.h"

namespace seal {
namespace {

constexpr std::size_t zeroBytes = 32;

}  // namespace

Sealed sealBody(const Secret& key, const std::string& body, std::string_view with) {
    const std::size_t size = zeroBytes + body.size();
    std::string plain(size + bodyStep, '\0');
    body.copy(plain.data() + zeroBytes, body.size());
    std::size_t padded = 0;
    REQUIRE(sodium_pad(&padded, bytePointer(plain), size, bodyStep, plain.size()) == 0);
    plain.resize(padded);
    return sealBytes(key, plain, with);
}

std::optional<std::string> openBody(const Secret& key, const Sealed& sealed,
                                    std::string_view with) {
    return openBody(key, sealed.nonce, sealed.box, with);
}

std::optional<std::string> openBody(const Secret& key, std::string_view nonce, std::string_view box,
                                    std::string_view with) {
    auto plain = openBytes(key, nonce, box, with);
    if (!plain || plain->size() < bodyStep || plain->size() % bodyStep != 0) return std::nullopt;
    if (sodium_is_zero(bytePointer(std::string_view(*plain)), zeroBytes) != 1) return std::nullopt;
    std::size_t size = 0;
    if (sodium_unpad(&size, bytePointer(*plain), plain->size(), bodyStep) != 0) return std::nullopt;
    if (size < zeroBytes) return std::nullopt;
    // In its place, so that no second copy of it is left in memory.
    plain->resize(size);
    plain->erase(0, zeroBytes);
    return plain;
}

}  // namespace seal
