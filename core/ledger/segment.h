// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/result.h"

namespace ledger {

/// What the list of learners is ordered and searched by, for one learner.
struct CardKeys {
    std::string learner = {};  ///< id
    std::string sortKey = {};
    std::vector<std::string> searchKeys = {};

    bool operator==(const CardKeys&) const = default;
};

/// A set of the cards of one segment, by their ranks.
class RankSet {
  public:
    explicit RankSet(std::uint32_t ranks) : m_words((ranks + 63) / 64) {}

    static RankSet ofAll(std::uint32_t ranks);
    void insert(std::uint32_t rank) { m_words[rank / 64] |= std::uint64_t{1} << (rank % 64); }
    bool has(std::uint32_t rank) const { return (m_words[rank / 64] >> (rank % 64) & 1) != 0; }
    void intersect(const RankSet& other);
    void remove(const RankSet& other);
    std::uint64_t size() const;
    /// The least one that is not below `rank`; none when there is no more.
    std::optional<std::uint32_t> from(std::uint32_t rank) const;

  private:
    std::vector<std::uint64_t> m_words;
};

/// Some cards in their order with the words they are found by, as one run of bytes that is read
/// where it lies. A card is known by its rank: its place among the segment's cards when they are
/// ordered by sort key and learner. Never changed; wiped when it goes, since it names people.
class Segment {
  public:
    /// Errors: StoreEdgeWrong for bytes that are no segment.
    static base::Result<std::shared_ptr<const Segment>> read(std::string bytes);
    /// The bytes of a segment of these; no learner may be among them twice.
    static std::string write(std::vector<CardKeys> cards);
    /// The bytes of one that holds of each part the cards that are alive. No learner may be alive
    /// in two of them.
    struct Part {
        const Segment* segment;
        const RankSet* dead;
    };
    static std::string merge(const std::vector<Part>& parts);

    ~Segment();
    Segment(const Segment&) = delete;
    Segment& operator=(const Segment&) = delete;

    std::uint32_t cards() const { return m_head.cards; }
    std::uint32_t words() const { return m_head.words; }
    std::string_view learner(std::uint32_t rank) const;
    std::string_view sortKey(std::uint32_t rank) const { return part(m_sortEnds, m_sorts, rank); }
    std::string_view word(std::uint32_t place) const { return part(m_wordEnds, m_texts, place); }
    /// The ranks of the cards with this word, ascending: from the first to before the second.
    std::pair<std::uint32_t, std::uint32_t> holders(std::uint32_t place) const;
    std::uint32_t holder(std::uint32_t index) const { return at(m_holders, index); }
    /// The rank of the card that is `place`th when they are ordered by learner.
    std::uint32_t byLearner(std::uint32_t place) const { return at(m_byLearner, place); }
    std::optional<std::uint32_t> rankOf(std::string_view learner) const;
    /// The place of the first word after all that begin so.
    std::uint32_t endOf(std::string_view prefix) const;
    /// The cards with some word that begins so.
    RankSet beginning(std::string_view prefix) const;

  private:
    /// What the bytes begin with; then the arrays of 32-bit numbers, then the texts.
    static constexpr std::uint64_t segmentMark = 0x3167'6573'6472'6163;  ///< "cardseg1"
    struct Head {
        std::uint64_t mark = segmentMark;
        std::uint32_t cards = 0, words = 0, holders = 0, sortBytes = 0, wordBytes = 0, spare = 0;
    };
    friend class SegmentWriter;

    explicit Segment(std::string bytes) : m_bytes(std::move(bytes)) {}
    bool layOut();
    bool isSound() const;
    std::uint32_t at(const char* array, std::uint32_t index) const;
    std::string_view part(const char* ends, const char* texts, std::uint32_t index) const;
    std::uint32_t firstFrom(std::string_view word) const;

    std::string m_bytes;
    Head m_head{};
    // Where in m_bytes each begins.
    const char *m_sortEnds = nullptr, *m_byLearner = nullptr, *m_wordEnds = nullptr,
               *m_holderEnds = nullptr, *m_holders = nullptr, *m_sorts = nullptr,
               *m_texts = nullptr, *m_learners = nullptr;
};

/// The least bytes that come after everything that begins with `word`; empty when nothing does.
std::string afterPrefix(std::string word);

}  // namespace ledger
