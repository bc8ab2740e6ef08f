// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "ledger/lineage.h"
#include "proof/finding.h"
#include "seal/papercode.h"

namespace proof {

/// What somebody else knew of the record at some time: a paper, a backup, another workstation.
struct KnownHead {
    std::uint64_t size = 0;
    std::string begin, end = {};  ///< of the root in hex; a whole root is all in `begin`
    std::optional<base::LedgerId> ledger = {};  ///< whose head it is; papers do not say

    static KnownHead of(const ledger::Head& head) { return {head.size, head.root}; }
    static KnownHead of(const seal::PaperCode& code) { return {code.size, code.rootStart}; }
    bool agreesWith(const std::string& root) const {
        return root.starts_with(begin) && root.ends_with(end);
    }
    bool operator==(const KnownHead&) const = default;
};

using KnownHeads = std::vector<KnownHead>;

/// The root the record has over its first entries, by how many: what heads are held against.
using Roots = std::map<std::uint64_t, std::string>;

/// What is wrong between a record of `size` entries and what was known of it. `roots` has one for
/// every known size up to that. A tree with the root of a known head has exactly the entries of
/// then (RFC 9162 section 2.1: another list with the same root is a collision of SHA-256), so what
/// was changed lies behind the largest head that agrees, and before the first that does not.
std::vector<Finding> holdAgainst(const ledger::Lineage& lineage, std::uint64_t size,
                                 const Roots& roots, const std::vector<KnownHead>& heads);

}  // namespace proof
