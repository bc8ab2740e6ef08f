// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/trust.h"

#include "gate/follower.h"

namespace gate {

base::Outcome trust(const std::vector<ledger::Entry>& entries, const ledger::Lineage& lineage,
                    const seal::KeyRows& rows, const seal::Keyring& ring) {
    Follower follower(lineage, rows);
    for (const ledger::Entry& entry : entries)
        if (const auto taken = follower.take(entry); !taken) return taken;
    if (const auto known = follower.knows(ring); !known) return known;
    return follower.knowsRows();
}

}  // namespace gate
