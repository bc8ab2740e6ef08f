// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/aead.h"

#include <sodium.h>

#include "base/check.h"

namespace seal {
namespace {

static_assert(keySize == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);
static_assert(nonceSize == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
static_assert(tagSize == crypto_aead_xchacha20poly1305_ietf_ABYTES);

bool hasRightSizes(const Secret& key, std::string_view nonce, std::string_view box) {
    return key.size() == keySize && nonce.size() == nonceSize && box.size() >= tagSize;
}

/// Writes box.size() - tagSize bytes to `out`.
bool openInto(unsigned char* out, const Secret& key, std::string_view nonce, std::string_view box,
              std::string_view with) {
    return crypto_aead_xchacha20poly1305_ietf_decrypt(out, nullptr, nullptr, bytePointer(box),
                                                      box.size(), bytePointer(with), with.size(),
                                                      bytePointer(nonce), key.data()) == 0;
}

}  // namespace

Sealed sealBytes(const Secret& key, std::string_view plain, std::string_view with) {
    return sealBytesWithNonce(key, randomBytes(nonceSize), plain, with);
}

Sealed sealBytesWithNonce(const Secret& key, std::string_view nonce, std::string_view plain,
                          std::string_view with) {
    REQUIRE(key.size() == keySize && nonce.size() == nonceSize);
    Sealed sealed{std::string(nonce), std::string(plain.size() + tagSize, '\0')};
    crypto_aead_xchacha20poly1305_ietf_encrypt(bytePointer(sealed.box), nullptr, bytePointer(plain),
                                               plain.size(), bytePointer(with), with.size(),
                                               nullptr, bytePointer(nonce), key.data());
    return sealed;
}

std::optional<Secret> openSecret(const Secret& key, const Sealed& sealed, std::string_view with) {
    if (!hasRightSizes(key, sealed.nonce, sealed.box)) return std::nullopt;
    Secret plain = Secret::ofSize(sealed.box.size() - tagSize);
    if (!openSecretInto(plain, key, sealed, with)) return std::nullopt;
    return plain;
}

bool openSecretInto(Secret& plain, const Secret& key, const Sealed& sealed, std::string_view with) {
    return hasRightSizes(key, sealed.nonce, sealed.box) &&
           plain.size() == sealed.box.size() - tagSize &&
           openInto(plain.data(), key, sealed.nonce, sealed.box, with);
}

std::optional<std::string> openBytes(const Secret& key, const Sealed& sealed,
                                     std::string_view with) {
    return openBytes(key, sealed.nonce, sealed.box, with);
}

std::optional<std::string> openBytes(const Secret& key, std::string_view nonce,
                                     std::string_view box, std::string_view with) {
    if (!hasRightSizes(key, nonce, box)) return std::nullopt;
    std::string plain(box.size() - tagSize, '\0');
    if (!openInto(bytePointer(plain), key, nonce, box, with)) return std::nullopt;
    return plain;
}

}  // namespace seal
