// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ledger/lineage.h"
#include "seal/keyring.h"

namespace gate {

/// Whether the keys on the disk are those the record itself tells of. Whoever can write to the disk
/// but has nobody's passphrase can put rows there: another epoch, so that what is sealed from now
/// on can be read, or a person of their own. So every entry about staff and keys has to be signed
/// by an educator of that moment (the first and a recovered person sign for themselves) and sealed
/// under an epoch that was told of before; and every epoch that opened has to be one of those.
/// `entries` are the house's own, opened. Where the ledger has another id than before, an entry has
/// to tell from which head it went on, and none tells of more. That the whole record was put in the
/// place of another one is for the heads on papers and backups to show. Who comes in by the
/// recovery sheet signs by the sheet too, so nobody of the staff can say so without having it in
/// hand. Errors: AccessChanged, naming what.
base::Outcome trust(const std::vector<ledger::Entry>& entries, const ledger::Lineage& lineage,
                    const seal::KeyRows& rows, const seal::Keyring& ring);

}  // namespace gate
