// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The writing half of Segment.
#include <algorithm>
#include <iterator>
#include <tuple>

#include "ledger/bytes.h"
#include "ledger/segment.h"

namespace ledger {

/// Puts the parts of a segment together: cards in their order, words in theirs.
class SegmentWriter {
  public:
    ~SegmentWriter() {
        for (std::string* text : {&m_sorts, &m_texts}) wipe(*text);
    }
    void addCard(std::string_view learner, std::string_view sortKey) {
        m_learners += learner;
        m_sorts += sortKey;
        m_sortEnds.push_back(static_cast<std::uint32_t>(m_sorts.size()));
    }
    void addLearner(std::uint32_t rank) { m_byLearner.push_back(rank); }
    void addHolder(std::uint32_t rank) { m_holders.push_back(rank); }
    /// Of the holders that were added since the last word; none: no such word.
    void addWord(std::string_view word) {
        const std::size_t before = m_holderEnds.empty() ? 0 : m_holderEnds.back();
        if (m_holders.size() == before) return;
        std::sort(m_holders.begin() + static_cast<std::ptrdiff_t>(before), m_holders.end());
        m_texts += word;
        m_wordEnds.push_back(static_cast<std::uint32_t>(m_texts.size()));
        m_holderEnds.push_back(static_cast<std::uint32_t>(m_holders.size()));
    }

    std::string bytes() const {
        Segment::Head head{};
        head.cards = static_cast<std::uint32_t>(m_sortEnds.size());
        head.words = static_cast<std::uint32_t>(m_wordEnds.size());
        head.holders = static_cast<std::uint32_t>(m_holders.size());
        head.sortBytes = static_cast<std::uint32_t>(m_sorts.size());
        head.wordBytes = static_cast<std::uint32_t>(m_texts.size());
        const auto arrays = {&m_sortEnds, &m_byLearner, &m_wordEnds, &m_holderEnds, &m_holders};
        std::size_t size = sizeof head + m_sorts.size() + m_texts.size() + m_learners.size();
        for (const auto* array : arrays) size += array->size() * sizeof(std::uint32_t);
        std::string bytes;
        bytes.reserve(size);  // no copy of it is left behind by growing
        bytes.append(reinterpret_cast<const char*>(&head), sizeof head);
        for (const auto* array : arrays)
            bytes.append(reinterpret_cast<const char*>(array->data()),
                         array->size() * sizeof(std::uint32_t));
        return bytes.append(m_sorts).append(m_texts).append(m_learners);
    }

  private:
    std::vector<std::uint32_t> m_sortEnds, m_byLearner, m_wordEnds, m_holderEnds, m_holders;
    std::string m_sorts, m_texts, m_learners;
};

std::string Segment::write(std::vector<CardKeys> cards) {
    std::sort(cards.begin(), cards.end(), [](const CardKeys& a, const CardKeys& b) {
        return std::tie(a.sortKey, a.learner) < std::tie(b.sortKey, b.learner);
    });
    SegmentWriter writer;
    std::vector<std::pair<std::string_view, std::uint32_t>> learners, words;
    for (std::uint32_t rank = 0; rank < cards.size(); ++rank) {
        writer.addCard(cards[rank].learner, cards[rank].sortKey);
        learners.emplace_back(cards[rank].learner, rank);
        for (const std::string& key : cards[rank].searchKeys) words.emplace_back(key, rank);
    }
    std::sort(learners.begin(), learners.end());
    for (const auto& [learner, rank] : learners) writer.addLearner(rank);
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end());
    for (std::size_t i = 0; i < words.size(); ++i) {
        writer.addHolder(words[i].second);
        if (i + 1 == words.size() || words[i + 1].first != words[i].first)
            writer.addWord(words[i].first);
    }
    std::string bytes = writer.bytes();
    for (CardKeys& card : cards) {
        wipe(card.sortKey);
        for (std::string& key : card.searchKeys) wipe(key);
    }
    return bytes;
}

namespace {

/// A card of one of several segments.
struct PartRank {
    std::uint32_t part, rank;
};

/// Merges lists that are in this order already, the short ones first.
template <class Less>
std::vector<PartRank> mergedLists(std::vector<std::vector<PartRank>> lists, const Less& less) {
    std::sort(lists.begin(), lists.end(),
              [](const auto& a, const auto& b) { return a.size() < b.size(); });
    std::vector<PartRank> all;
    for (const std::vector<PartRank>& list : lists) {
        std::vector<PartRank> next;
        next.reserve(all.size() + list.size());
        std::merge(all.begin(), all.end(), list.begin(), list.end(), std::back_inserter(next),
                   less);
        all = std::move(next);
    }
    return all;
}

/// Where each living card of each part comes to stand.
using NewRanks = std::vector<std::vector<std::uint32_t>>;

NewRanks mergeCards(const std::vector<Segment::Part>& parts, SegmentWriter& writer) {
    NewRanks ranks;
    std::vector<std::vector<PartRank>> inOrder(parts.size()), byLearner(parts.size());
    for (std::uint32_t part = 0; part < parts.size(); ++part) {
        const Segment& from = *parts[part].segment;
        ranks.emplace_back(from.cards());
        for (std::uint32_t i = 0; i < from.cards(); ++i) {
            if (!parts[part].dead->has(i)) inOrder[part].push_back({part, i});
            const std::uint32_t rank = from.byLearner(i);
            if (!parts[part].dead->has(rank)) byLearner[part].push_back({part, rank});
        }
    }
    const auto sortKey = [&](PartRank one) { return parts[one.part].segment->sortKey(one.rank); };
    const auto learner = [&](PartRank one) { return parts[one.part].segment->learner(one.rank); };
    std::uint32_t next = 0;
    for (const PartRank one : mergedLists(std::move(inOrder), [&](PartRank a, PartRank b) {
             const int order = sortKey(a).compare(sortKey(b));
             return order == 0 ? learner(a) < learner(b) : order < 0;
         })) {
        writer.addCard(learner(one), sortKey(one));
        ranks[one.part][one.rank] = next++;
    }
    for (const PartRank one : mergedLists(
             std::move(byLearner), [&](PartRank a, PartRank b) { return learner(a) < learner(b); }))
        writer.addLearner(ranks[one.part][one.rank]);
    return ranks;
}

}  // namespace

std::string Segment::merge(const std::vector<Part>& parts) {
    SegmentWriter writer;
    const NewRanks ranks = mergeCards(parts, writer);
    std::vector<std::uint32_t> places(parts.size(), 0);
    for (;;) {
        std::optional<std::string_view> least;
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (places[i] < parts[i].segment->words())
                if (const auto word = parts[i].segment->word(places[i]); !least || word < *least)
                    least = word;
        if (!least) break;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const Segment& from = *parts[i].segment;
            if (places[i] == from.words() || from.word(places[i]) != *least) continue;
            const auto [begin, end] = from.holders(places[i]++);
            for (std::uint32_t index = begin; index < end; ++index)
                if (const std::uint32_t rank = from.holder(index); !parts[i].dead->has(rank))
                    writer.addHolder(ranks[i][rank]);
        }
        writer.addWord(*least);
    }
    return writer.bytes();
}

}  // namespace ledger
