// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "ledger/lineage.h"
#include "ledger/tail.h"
#include "store/database.h"

namespace store {

/// What can be wrong with a record's file.
enum class Damage {
    Gap,         ///< the entry at this place is missing
    Unreadable,  ///< its bytes are no entry in canonical form
    OtherPlace,  ///< it says another place or ledger, or follows what it did not go on from
    TickBack,    ///< its tick is not above the one before
    DoubledId,   ///< its command's id is that of an earlier entry
    Index,       ///< it can't be found by its command or its subject
    RightEdge,   ///< the stored edge is not that of the entries
    Blob,        ///< a blob is not what its digest says; seq is its row
};

struct Finding {
    Damage damage;
    std::uint64_t seq = 0;
    bool operator==(const Finding&) const = default;
};

struct CheckReport {
    ledger::Head head;           ///< over the entries that were read
    std::uint64_t edgeSize = 0;  ///< so many entries the stored edge speaks of; 0: unreadable
    std::vector<Finding> findings;
    std::uint64_t closed = 0;  ///< entries whose bodies could not be read
    bool isIntact() const { return findings.empty(); }
};

/// Holds every entry, its leaf, the rows that lead to it, and every blob against each other. Of an
/// entry that the codec can't open only the envelope is looked at.
base::Result<CheckReport> checkRecord(Database& database, const ledger::Lineage& lineage,
                                      ledger::Codec& codec);

/// Calls with the place and the bytes of every entry in order, some at a time, until it returns
/// false.
using EntryVisitor = std::function<bool(std::uint64_t seq, const std::string& bytes)>;
base::Outcome eachEntry(Database& database, const EntryVisitor& visit);

}  // namespace store
