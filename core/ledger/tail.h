// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "ledger/ledger.h"
#include "ledger/merkle.h"

namespace ledger {

/// The end of a ledger: all that is needed to write the next entry.
struct Tail {
    std::uint64_t tick = 0;  ///< of the last entry; 0 when there is none
    RightEdge edge;

    Head head() const { return {edge.size(), toHex(edge.root())}; }
    bool operator==(const Tail&) const = default;
};

/// An entry and the bytes that are stored for it.
struct WrittenEntry {
    Entry entry;
    std::string bytes;
    Digest leaf{};
};

/// Gives each draft its envelope and moves the tail past them. A wall clock earlier than the last
/// entry's is written as it is: clocks are shown, never sorted by. On an error the tail is as it
/// was. Errors: LedgerDoubledId, and those of entryBytes.
base::Result<std::vector<WrittenEntry>> extend(Tail& tail, const base::LedgerId& ledger,
                                               const std::vector<Draft>& drafts,
                                               const base::Instant& now, Codec& codec);

}  // namespace ledger
