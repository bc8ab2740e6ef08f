// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <map>
#include <optional>

#include "base/clock.h"
#include "base/id.h"
#include "seal/guarding.h"

namespace gate {

/// Counts wrong passphrases as long as the program runs, for each person by themselves: whoever
/// knows a passphrase of their own can't try a colleague's all the faster. Whoever tries, all wait.
class WrongPassphrases {
  public:
    /// Whose it was not; none: it was typed with a name that nobody has.
    using Whose = std::optional<base::StaffId>;

    void noteWrong(const Whose& whose, const base::Instant& now) {
        Count& count = m_counts[whose];
        ++count.inARow;
        count.last = now;
    }
    /// Names that nobody has are nobody's secret.
    void noteRight(const Whose& whose) {
        m_counts.erase(whose);
        m_counts.erase(Whose());
    }
    /// Milliseconds until the next one is looked at.
    std::int64_t waitMs(const base::Instant& now) const {
        std::int64_t longest = 0;
        // After another boot the times do not compare; the counts are gone then too.
        for (const auto& [whose, count] : m_counts)
            longest = std::max(
                longest, seal::waitAfterWrong(count.inARow) - (now.bootMs - count.last.bootMs));
        return longest;
    }

  private:
    struct Count {
        int inARow = 0;
        base::Instant last = {};
    };
    std::map<Whose, Count> m_counts;
};

}  // namespace gate
