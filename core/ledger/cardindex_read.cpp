// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The reading half of CardIndex.
#include <algorithm>

#include "ledger/cardindex.h"

namespace ledger {
namespace {

std::vector<std::string> wordsAsked(const CardQuery& query) {
    std::vector<std::string> words;
    for (const std::string& word : query.words)
        if (!word.empty() && words.size() < mostWords) words.push_back(word);
    return words;
}

}  // namespace

base::Result<bool> CardIndex::isMade(const RightEdge& edge) {
    if (const auto opened = open(edge); !opened) return opened.error();
    return m_isMade;
}

/// Of each segment the cards that are alive and have a word that begins with each of these.
std::vector<RankSet> CardIndex::matching(const std::vector<std::string>& words) const {
    std::vector<RankSet> found;
    for (const Slot& slot : m_slots) {
        RankSet ranks = words.empty() ? RankSet::ofAll(slot.segment->cards())
                                      : slot.segment->beginning(words.front());
        for (std::size_t i = 1; i < words.size(); ++i)
            ranks.intersect(slot.segment->beginning(words[i]));
        ranks.remove(slot.dead);
        found.push_back(std::move(ranks));
    }
    return found;
}

/// So many of these cards in their order, from the one that is `offset`th.
template <class Ranks>
std::vector<CardIndex::Place> CardIndex::places(const std::vector<Ranks>& among,
                                                std::uint64_t offset, std::uint64_t limit) const {
    std::vector<std::optional<std::uint32_t>> next;
    for (const Ranks& ranks : among) next.push_back(ranks.from(0));
    std::vector<Place> places;
    for (std::uint64_t i = 0; places.size() < limit; ++i) {
        std::optional<std::size_t> least;
        for (std::size_t slot = 0; slot < next.size(); ++slot)
            if (next[slot] && (!least || comesBefore(slot, *next[slot], *least, *next[*least])))
                least = slot;
        if (!least) break;
        const Segment& segment = *m_slots[*least].segment;
        const std::uint32_t rank = *next[*least];
        if (i >= offset)
            places.push_back(
                {std::string(segment.sortKey(rank)), std::string(segment.learner(rank))});
        next[*least] = among[*least].from(rank + 1);
    }
    return places;
}

template std::vector<CardIndex::Place> CardIndex::places(const std::vector<RankSet>&, std::uint64_t,
                                                         std::uint64_t) const;

bool CardIndex::comesBefore(std::size_t slot, std::uint32_t rank, std::size_t otherSlot,
                            std::uint32_t otherRank) const {
    const Segment& one = *m_slots[slot].segment;
    const Segment& other = *m_slots[otherSlot].segment;
    const int order = one.sortKey(rank).compare(other.sortKey(otherRank));
    return order == 0 ? one.learner(rank) < other.learner(otherRank) : order < 0;
}

namespace {

std::uint64_t sizeOf(const RankSet& ranks) { return ranks.size(); }
std::uint64_t sizeOf(const Begun& begun) { return begun.total; }

}  // namespace

template <class Ranks>
CardIndex::Page CardIndex::pageOf(const std::vector<Ranks>& found, const CardQuery& query) const {
    Page page;
    for (const Ranks& ranks : found) page.total += sizeOf(ranks);
    for (Place& place : places(found, query.offset, query.limit))
        page.learners.push_back(std::move(place.learner));
    return page;
}

base::Result<CardIndex::Page> CardIndex::find(const CardQuery& query, const RightEdge& edge) {
    if (const auto opened = open(edge); !opened) return opened.error();
    const std::vector<std::string> words = wordsAsked(query);
    Page page{.total = m_total};
    const std::uint64_t end = std::uint64_t{query.offset} + query.limit;
    if (words.empty() && (end <= m_front.size() || m_front.size() == m_total)) {
        for (std::uint64_t i = query.offset; i < std::min<std::uint64_t>(end, m_front.size()); ++i)
            page.learners.push_back(m_front[i].learner);
        return page;
    }
    if (const auto read = load(); !read) return read.error();
    if (words.size() != 1 || end > mostBegun) return pageOf(matching(words), query);
    std::vector<Begun> found;
    for (Slot& slot : m_slots)
        found.push_back(slot.beginnings.find(*slot.segment, slot.dead, words.front()));
    return pageOf(found, query);
}

base::Result<std::vector<CardKeys>> CardIndex::all(const RightEdge& edge) {
    if (const auto opened = open(edge); !opened) return opened.error();
    if (const auto read = load(); !read) return read.error();
    const std::vector<RankSet> found = matching({});
    if (m_front != places(found, 0, m_front.size())) return wrong();
    std::vector<CardKeys> all;
    for (std::size_t i = 0; i < m_slots.size(); ++i) {
        const Segment& segment = *m_slots[i].segment;
        std::vector<std::vector<std::string>> words(segment.cards());
        for (std::uint32_t place = 0; place < segment.words(); ++place)
            for (auto [at, end] = segment.holders(place); at < end; ++at)
                words[segment.holder(at)].emplace_back(segment.word(place));
        for (auto rank = found[i].from(0); rank; rank = found[i].from(*rank + 1))
            all.push_back({std::string(segment.learner(*rank)), std::string(segment.sortKey(*rank)),
                           std::move(words[*rank])});
    }
    std::sort(all.begin(), all.end(),
              [](const CardKeys& a, const CardKeys& b) { return a.learner < b.learner; });
    return all;
}

}  // namespace ledger
