// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/beginnings.h"

#include <algorithm>

namespace ledger {
namespace {

constexpr std::size_t mostLetters = 3;

/// The first letters of a word of UTF-8; nothing when it has fewer.
std::optional<std::string_view> firstLetters(std::string_view word, std::size_t letters) {
    std::size_t at = 0;
    for (std::size_t letter = 0; letter < letters; ++letter) {
        if (at == word.size()) return std::nullopt;
        ++at;
        while (at < word.size() && (static_cast<unsigned char>(word[at]) & 0xc0U) == 0x80U) ++at;
    }
    return word.substr(0, at);
}

RankSet living(const Segment& segment, const RankSet& dead, std::string_view prefix) {
    RankSet ranks = segment.beginning(prefix);
    ranks.remove(dead);
    return ranks;
}

}  // namespace

Begun Begun::of(const RankSet& ranks) {
    Begun begun{.total = ranks.size()};
    for (auto rank = ranks.from(0); rank && begun.first.size() < mostBegun;
         rank = ranks.from(*rank + 1))
        begun.first.push_back(*rank);
    return begun;
}

std::optional<std::uint32_t> Begun::from(std::uint32_t rank) const {
    const auto found = std::lower_bound(first.begin(), first.end(), rank);
    return found == first.end() ? std::nullopt : std::optional<std::uint32_t>(*found);
}

void Beginnings::gather(const Segment& segment, const RankSet& dead) {
    m_kept.clear();
    gatherAmong(segment, dead, 0, segment.words(), 1);
}

/// Of the words from `first` to before `last`, which have all letters but one in common. What few
/// cards have is left out with all that begins so.
void Beginnings::gatherAmong(const Segment& segment, const RankSet& dead, std::uint32_t first,
                             std::uint32_t last, std::size_t letters) {
    for (std::uint32_t next = first; first < last; first = next) {
        const auto prefix = firstLetters(segment.word(first), letters);
        next = prefix ? segment.endOf(*prefix) : first + 1;
        const std::uint32_t holders =
            segment.holders(next - 1).second - segment.holders(first).first;
        if (!prefix || holders < manyHolders || m_kept.size() >= mostKept) continue;
        m_kept.emplace(*prefix, Begun::of(living(segment, dead, *prefix)));
        if (letters < mostLetters) gatherAmong(segment, dead, first, next, letters + 1);
    }
}

Begun Beginnings::find(const Segment& segment, const RankSet& dead, const std::string& prefix) {
    if (const auto kept = m_kept.find(prefix); kept != m_kept.end()) return kept->second;
    Begun begun = Begun::of(living(segment, dead, prefix));
    if (begun.total >= manyHolders && m_kept.size() < mostKept) m_kept.emplace(prefix, begun);
    return begun;
}

}  // namespace ledger
