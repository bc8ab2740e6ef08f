// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "base/result.h"
#include "seal/secret.h"

/// From what a person types to a key, by Argon2id (RFC 9106) with one lane.
namespace seal {

/// What one guess costs.
struct Cost {
    std::uint32_t memKiB = 64 * 1024;
    std::uint32_t passes = 3;

    /// The least the library allows; for tests alone.
    static Cost least() { return {8, 1}; }
    /// Whether a guess takes at least as much memory and as many passes.
    bool covers(const Cost& other) const {
        return memKiB >= other.memKiB && passes >= other.passes;
    }
    bool operator==(const Cost&) const = default;
};

/// Everything beside the passphrase that its key depends on. Holds no hash of it: that the wrapped
/// secret opens is the only check there is.
struct Stretch {
    Cost cost = {};
    std::string salt = {};  ///< 16 bytes

    static Stretch withNewSalt(const Cost& cost);
    /// "$argon2id$v=19$m=65536,t=3,p=1$SALT", the PHC string format without its last part.
    std::string phc() const;
    /// Refuses every other spelling, and costs beyond 4 GiB or 100 passes, which would only keep
    /// a person waiting for a row that somebody made up. Errors: SealBadRow.
    static base::Result<Stretch> parse(const std::string& phc);

    bool operator==(const Stretch&) const = default;
};

/// A typed passphrase as it is stretched: every space of Unicode as the plain one, then form NFC
/// (OpaqueString of RFC 8265 section 4.2), so that another keyboard gives the same bytes. Errors:
/// LedgerBadText when it is not UTF-8.
base::Result<Secret> prepared(const Secret& typed);

/// 32 bytes. Takes as long as it is meant to: not on the thread of a window. Errors: those of
/// prepared(), SealNoMemory.
base::Result<Secret> stretched(const Secret& typed, const Stretch& stretch);

/// The name of a person's row: 16 bytes by Argon2id of the typed name, folded (NFKC_Casefold of
/// Unicode, white space joined), under the ledger's salt. A disk holds neither a readable name nor
/// a hash that can be tried quickly; who guesses a name pays the cost for each guess. It can be
/// worked out while the passphrase is still being typed. Errors: as stretched().
base::Result<std::string> nameHandle(const std::string& typedName, const Stretch& ledgerStretch);

}  // namespace seal
