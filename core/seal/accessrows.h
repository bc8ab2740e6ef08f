// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ledger/access.h"
#include "seal/keyring.h"

/// The key rows as a ledger keeps them, and what changes in them when people come and go.
namespace seal {

/// Ordered by kind and id; kinds: "former", "grant", "ledger", "person".
std::vector<ledger::AccessRow> accessRows(const KeyRows& rows);
/// Nothing when there are no rows: nobody was ever let in. Errors: SealBadRow.
base::Result<std::optional<KeyRows>> readKeyRows(const std::vector<ledger::AccessRow>& rows);
/// What has to be written so that `before` becomes `after`; an empty text takes a row away.
std::vector<ledger::AccessRow> changedRows(const KeyRows& before, const KeyRows& after);

/// The person's row, if they can sign in.
const WrappedIdentity* rowOf(const KeyRows& rows, const base::StaffId& person);
/// Lets somebody in, or back in with new keys: the former public ones stay to verify by.
void letIn(KeyRows& rows, Admission admission);
/// The same person and keys under a new passphrase, cost or typed name.
void putInPlace(KeyRows& rows, WrappedIdentity row);
/// A new epoch for everybody who can sign in and the recovery key: what comes from now on nobody
/// else can read, whatever keys and copies they have from before. `ring` is that of the one who
/// does it and has an identity.
void beginEpoch(KeyRows& rows, Keyring& ring);
/// Takes a person's row and grants away and begins a new epoch.
void retire(KeyRows& rows, const base::StaffId& person, Keyring& ring);
/// A new recovery sheet and a new epoch.
void replaceRecovery(KeyRows& rows, const Recovery& recovery, Keyring& ring);

}  // namespace seal
