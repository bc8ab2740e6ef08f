// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/tail.h"

#include <set>

namespace ledger {

base::Result<std::vector<WrittenEntry>> extend(Tail& tail, const base::LedgerId& ledger,
                                               const std::vector<Draft>& drafts,
                                               const base::Instant& now, Codec& codec) {
    Tail next = tail;
    std::set<base::CommandId> ids;
    std::vector<WrittenEntry> written;
    for (const Draft& draft : drafts) {
        if (!ids.insert(draft.body.id).second)
            return base::Error{base::Code::LedgerDoubledId, {draft.body.id.text()}};
        Entry entry{.ledger = ledger, .body = draft.body};
        entry.seq = next.edge.size();
        entry.tick = ++next.tick;
        entry.wallMs = now.wallMs;
        entry.bootId = now.bootId;
        entry.bootMs = now.bootMs;
        entry.subject = draft.subject;
        auto bytes = entryBytes(entry, codec);
        if (!bytes) return bytes.error();
        const Digest leaf = leafHash(*bytes);
        next.edge.append(leaf);
        written.push_back({std::move(entry), std::move(*bytes), leaf});
    }
    tail = std::move(next);
    return written;
}

}  // namespace ledger
