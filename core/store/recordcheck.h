// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <set>

#include "proof/spread.h"
#include "proof/verifier.h"
#include "store/database.h"

namespace store {

/// What verify found, and how far the stored end goes.
struct CheckReport : proof::Report {
    std::uint64_t edgeSize = 0;  ///< so many entries the stored edge speaks of; 0: unreadable
    bool isIntact() const { return !isWrong(); }
};

/// Holds every entry, its leaf, the rows that lead to it, and every blob against each other, and
/// all of it against the known heads. Of an entry that the codec can't open only the envelope is
/// looked at. Errors: VerifyStopped when the pace says so, those of the disk.
base::Result<CheckReport> checkRecord(Database& database, proof::Grounds grounds,
                                      const proof::Pace& pace = {});

/// Calls with the place and the bytes of every entry in order, some at a time, until it returns
/// false. A place that is none, below 0 or beyond 2^53 - 1, comes as one beyond. Errors:
/// StoreDamaged when the file has no order, those of the disk.
using EntryVisitor = std::function<bool(std::uint64_t seq, std::string_view bytes)>;
base::Outcome eachEntry(Database& database, const EntryVisitor& visit);

/// The roots over the first so many entries, for each of these sizes that there are entries for.
/// Reads up to the largest of them, once. Errors: VerifyStopped once `goOn` says so, those of
/// eachEntry().
base::Result<proof::Roots> rootsOf(Database& database, const std::set<std::uint64_t>& sizes,
                                   const std::function<bool()>& goOn = {});

}  // namespace store
