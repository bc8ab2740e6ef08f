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

/// Looks on while a ledger is gone through, so that nobody has to open every body once more.
class Onlooker {
  public:
    virtual ~Onlooker() = default;
    /// First every entry, in the order of seq.
    virtual void see(const ledger::Entry& entry) = 0;
    /// That was the last. An error ends it all.
    virtual base::Outcome sawAll() = 0;
    /// Then the entries of one patient after the other; their packs are on the shelf.
    virtual base::Outcome seeRecord(const std::vector<ledger::Entry>& entries) = 0;
};

/// Everything derived from the entries of a whole ledger, as it was when each was written: a card
/// for every learner and the visit that is open. Holds one record at a time. Errors: those of the
/// ledger and of who looks on.
base::Result<ledger::Derived> deriveAll(const ledger::Ledger& ledger, procedure::Shelf& shelf,
                                        Onlooker* onlooker = nullptr);

}  // namespace record
