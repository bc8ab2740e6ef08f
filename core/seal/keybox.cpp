// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/keybox.h"

#include <sodium.h>

#include "base/check.h"

namespace seal {
namespace {

using base::Code;
using base::Error;

static_assert(keyBoxSize == keySize + crypto_box_SEALBYTES);

KeyBox boxFor(const Secret& key, const std::string& publicKey) {
    KeyBox made{thumbprint(Curve::X25519, publicKey), std::string(keyBoxSize, '\0')};
    REQUIRE(crypto_box_seal(bytePointer(made.box), key.data(), key.size(),
                            bytePointer(publicKey)) == 0);
    return made;
}

base::Result<Secret> unbox(const std::vector<KeyBox>& boxes, const std::string& publicKey,
                           const Secret& secretKey) {
    const std::string name = thumbprint(Curve::X25519, publicKey);
    for (const KeyBox& one : boxes) {
        if (one.to != name || one.box.size() != keyBoxSize) continue;
        Secret key = Secret::ofSize(keySize);
        if (crypto_box_seal_open(key.data(), bytePointer(one.box), one.box.size(),
                                 bytePointer(publicKey), secretKey.data()) != 0)
            return Error{Code::SealRefused, {"key"}};
        return key;
    }
    return Error{Code::SealKeyMissing};
}

}  // namespace

std::vector<KeyBox> boxKey(const Secret& key, const KeyRows& rows) {
    std::vector<KeyBox> boxes = {boxFor(key, rows.recoveryKey)};
    for (const WrappedIdentity& one : rows.people) boxes.push_back(boxFor(key, one.known.boxing));
    return boxes;
}

base::Result<Secret> unboxKey(const std::vector<KeyBox>& boxes, const KeyRows& rows,
                              const std::string& name, const Secret& passphrase) {
    const auto handle = nameHandle(name, rows.names);
    if (!handle) return handle.error();
    for (const WrappedIdentity& row : rows.people) {
        if (row.handle != *handle) continue;
        const auto identity = unwrap(row, passphrase);
        if (!identity) return identity.error();
        return unboxKey(boxes, *identity);
    }
    return Error{Code::SealWrongPassphrase};
}

base::Result<Secret> unboxKey(const std::vector<KeyBox>& boxes, const Identity& identity) {
    return unbox(boxes, identity.known().boxing, identity.boxingKey());
}

base::Result<Secret> unboxKey(const std::vector<KeyBox>& boxes, const Recovery& sheet) {
    return unbox(boxes, sheet.pair().publicKey, sheet.pair().secretKey);
}

}  // namespace seal
