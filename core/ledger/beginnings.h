// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>

#include "ledger/segment.h"

namespace ledger {

/// The cards of one segment that are alive and have a word that begins in one way.
struct Begun {
    std::uint64_t total = 0;
    std::vector<std::uint32_t> first = {};  ///< the least ranks of them, at most mostBegun

    static Begun of(const RankSet& ranks);
    /// The least of the first ones that is not below `rank`.
    std::optional<std::uint32_t> from(std::uint32_t rank) const;
    bool operator==(const Begun&) const = default;
};
inline constexpr std::size_t mostBegun = 256;

/// What a few typed letters find in one segment. So many cards have them that to gather these takes
/// milliseconds; so what begins with one letter, two and three is gathered once, when the segment
/// is read. At most mostKept of them stay, together below 6 MB.
class Beginnings {
  public:
    static constexpr std::size_t mostKept = 4096;
    /// What fewer cards have is quickly gathered each time.
    static constexpr std::uint32_t manyHolders = 8192;

    /// Gathers anew; the cards of `dead` do not count.
    void gather(const Segment& segment, const RankSet& dead);
    /// To be called when other cards have died.
    void clear() { m_kept.clear(); }
    Begun find(const Segment& segment, const RankSet& dead, const std::string& prefix);
    std::size_t kept() const { return m_kept.size(); }

  private:
    void gatherAmong(const Segment& segment, const RankSet& dead, std::uint32_t first,
                     std::uint32_t last, std::size_t letters);

    std::map<std::string, Begun, std::less<>> m_kept;
};

}  // namespace ledger
