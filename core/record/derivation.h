// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ledger/ledger.h"
#include "procedure/shelf.h"

namespace record {

/// Packs of old visits and papers that are not on the shelf any more are read from the ledger's
/// blobs; one that can't be read as a pack is left out. Errors: those of the ledger.
base::Outcome fetchPacks(const ledger::Ledger& ledger, procedure::Shelf& shelf,
                         const std::vector<ledger::Entry>& entries);

/// Everything derived from the entries of a whole ledger, as it was when each was written: a card
/// for every learner and the visit that is open. Holds one record at a time. Errors: those of the
/// ledger.
base::Result<ledger::Derived> deriveAll(const ledger::Ledger& ledger, procedure::Shelf& shelf);

}  // namespace record
