// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "ledger/ledger.h"
#include "ledger/merkle.h"

namespace ledger {

/// The ids a ledger had and has. One that was restored from a backup keeps its entries, and so the
/// roots that papers were printed with, and goes on under a new id: two that were restored from one
/// backup are never taken for each other.
class Lineage {
  public:
    explicit Lineage(base::LedgerId id, std::vector<Former> former = {})
        : m_id(std::move(id)), m_former(std::move(former)) {}
    /// Reads what formerText() wrote; "" is none. Errors: LedgerBadEntry.
    static base::Result<Lineage> parse(base::LedgerId id, const std::string& former);

    const base::LedgerId& id() const { return m_id; }
    const std::vector<Former>& former() const { return m_former; }
    /// The id that the entry at this place has to have.
    const base::LedgerId& at(std::uint64_t seq) const;
    /// Whether it went on from these entries, where it went on from so many.
    bool agreesWith(const RightEdge& edge) const;
    /// The same under a new id from this head on.
    Lineage continued(base::LedgerId id, Head head) const;
    std::string formerText() const;

  private:
    base::LedgerId m_id;
    std::vector<Former> m_former;  ///< sizes rise
};

}  // namespace ledger
