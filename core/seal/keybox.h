// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "seal/keyring.h"

/// A key given to everybody who may open the record, without any secret of theirs: whoever makes a
/// backup needs no passphrase, whoever opens one needs their own.
namespace seal {

/// The key for one holder of an X25519 key (crypto_box_seal of libsodium). Says nothing of who
/// made it.
struct KeyBox {
    std::string to = {};  ///< thumbprint of the X25519 key
    std::string box = {};

    bool operator==(const KeyBox&) const = default;
};
inline constexpr std::size_t keyBoxSize = keySize + 48;

/// For all who can sign in, and for the recovery sheet.
std::vector<KeyBox> boxKey(const Secret& key, const KeyRows& rows);

/// Errors: SealWrongPassphrase, alike for a name that nobody has, SealKeyMissing, SealRefused,
/// those of unwrap().
base::Result<Secret> unboxKey(const std::vector<KeyBox>& boxes, const KeyRows& rows,
                              const std::string& name, const Secret& passphrase);
/// Errors: SealKeyMissing when none is for them, SealRefused.
base::Result<Secret> unboxKey(const std::vector<KeyBox>& boxes, const Identity& identity);
/// Errors: SealKeyMissing when it is another sheet, SealRefused.
base::Result<Secret> unboxKey(const std::vector<KeyBox>& boxes, const Recovery& sheet);

}  // namespace seal
