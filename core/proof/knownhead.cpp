// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "proof/knownhead.h"

#include <algorithm>

namespace proof {
namespace {

/// The entries a head speaks of.
Finding allOf(Kind kind, const KnownHead& head) {
    return {kind, 0, head.size == 0 ? 0 : head.size - 1};
}

}  // namespace

std::vector<Finding> holdAgainst(const ledger::Lineage& lineage, std::uint64_t size,
                                 const Roots& roots, const std::vector<KnownHead>& heads) {
    std::vector<Finding> found;
    std::uint64_t agreed = 0, longest = size;
    std::vector<KnownHead> others;
    for (const KnownHead& head : heads) {
        if (head.ledger && head.size > 0 && *head.ledger != lineage.at(head.size - 1))
            found.push_back(allOf(Kind::OtherRecord, head));
        else if (head.size > size)
            longest = std::max(longest, head.size);
        else if (head.agreesWith(roots.at(head.size)))
            agreed = std::max(agreed, head.size);
        else
            others.push_back(head);
    }
    std::uint64_t nearest = 0;  // the first size after `agreed` at which another root was known
    for (const KnownHead& head : others) {
        if (head.size <= agreed)
            found.push_back(allOf(Kind::Forked, head));
        else
            nearest = nearest == 0 ? head.size : std::min(nearest, head.size);
    }
    if (nearest != 0) found.push_back({Kind::Rewritten, agreed, nearest - 1});
    if (longest > size) found.push_back({Kind::CutOff, size, longest - 1});
    return found;
}

}  // namespace proof
