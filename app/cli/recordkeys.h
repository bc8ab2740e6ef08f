// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/passphrase.h"
#include "seal/keyring.h"
#include "store/sqlledger.h"

namespace app {

using Ring = std::shared_ptr<const seal::Keyring>;

/// What `open` gives for the kind of record there is; `mode` says afterwards which it was.
template <class Open>
auto ofEitherKind(const Open& open, store::OpenMode& mode) {
    mode = store::OpenMode::Demonstration;
    auto opened = open(mode);
    if (opened || opened.error().code != base::Code::StoreOtherKind) return opened;
    mode = store::OpenMode::Real;
    return open(mode);
}

/// Lets the bodies be opened by the keys of whoever types their passphrase, see askSecret(), and
/// gives these keys. Whether the rows on the disk are those that the record tells of is not asked:
/// nobody is kept from verifying or mending it by that. Errors: those of askSecret(),
/// AccessNotSealed and AccessChanged where nobody signs in, SealWrongPassphrase, SealBadRow.
base::Result<Ring> readByKeysOf(const std::string& name, store::SqlLedger& ledger, int input,
                                std::ostream& err);

}  // namespace app
