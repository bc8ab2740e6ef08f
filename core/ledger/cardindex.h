// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <set>
#include <string>
#include <vector>

#include "ledger/beginnings.h"
#include "ledger/cardshelf.h"
#include "ledger/ledger.h"
#include "ledger/merkle.h"
#include "ledger/segment.h"

namespace ledger {

/// More words than these are left out of a search.
inline constexpr std::size_t mostWords = 16;

/// The order of the cards and the words they are found by. On the shelf it is a few segments, each
/// four times as large as all that are newer, so that a card that is put costs little and few lie
/// beside each other; the front, which is the first cards in their order, so that the first page
/// is there without reading a segment; and one row that names all of these and the head of the
/// ledger they belong to, so that none can be left out or be put back as it once was. A newer
/// segment's card stands in the place of an older's.
///
/// What was opened stays in memory until close(), which wipes it. That is too much to be locked in
/// memory on most machines: a system that swaps has to encrypt its swap space.
class CardIndex {
  public:
    struct Page {
        std::vector<std::string> learners = {};
        std::uint64_t total = 0;
    };
    struct Change {
        bool isNew = false;  ///< there was no card of this learner
        CardKeys keys;
    };

    explicit CardIndex(CardShelf& shelf) : m_shelf(shelf) {}
    ~CardIndex() { close(); }
    CardIndex(const CardIndex&) = delete;
    CardIndex& operator=(const CardIndex&) = delete;

    void use(std::shared_ptr<Codec> codec);
    /// Wipes what was read; also after anything put was undone.
    void close();

    // Errors of all: SealKeyMissing, SealRefused, StoreEdgeWrong when it is not the index of a
    // ledger with this edge, and those of the shelf.

    /// Whether there is one at all.
    base::Result<bool> isMade(const RightEdge& edge);
    base::Result<Page> find(const CardQuery& query, const RightEdge& edge);
    /// A card of each learner at most once. `after`: the edge that the ledger comes to have.
    base::Outcome put(const std::vector<Change>& changes, const RightEdge& before,
                      const RightEdge& after);
    /// Puts one of these cards in the place of whatever there is, even of what can't be read.
    base::Outcome make(std::vector<CardKeys> all, const RightEdge& edge);
    /// Writes everything again without these learners.
    base::Outcome forget(const std::set<std::string>& learners, const RightEdge& edge);
    /// Everything it says, ordered by learner. Also holds its parts against each other.
    base::Result<std::vector<CardKeys>> all(const RightEdge& edge);

    /// How many segments there are, for tests of what lies beside each other.
    std::size_t segments() const { return m_slots.size(); }

  private:
    struct Slot {
        std::string name = {};
        std::uint64_t cards = 0;
        std::shared_ptr<const Segment> segment = nullptr;  ///< none: not read yet
        RankSet dead{0};  ///< cards that a newer segment has; known when m_isLoaded
        Beginnings beginnings = {};
    };
    struct Place {
        std::string sortKey = {}, learner = {};
        auto operator<=>(const Place&) const = default;
    };

    base::Result<std::string> readRow(const std::string& name) const;
    base::Outcome writeRow(const std::string& name, const std::string& row);
    base::Error wrong() const;
    base::Outcome open(const RightEdge& edge);
    base::Outcome readManifest(const RightEdge& edge);
    base::Outcome readFront();
    base::Outcome writeManifest(const RightEdge& edge);
    base::Outcome writeFront();
    base::Outcome load();
    base::Outcome loadOne(Slot& slot);
    base::Outcome addSegment(std::string bytes);
    base::Outcome replaceFrom(std::size_t first, std::string bytes);
    bool placeInFront(const Change& change, bool& isWhole);
    base::Outcome updateFront(const std::vector<Change>& changes, bool isWhole);
    std::vector<RankSet> matching(const std::vector<std::string>& words) const;
    bool comesBefore(std::size_t slot, std::uint32_t rank, std::size_t otherSlot,
                     std::uint32_t otherRank) const;
    /// `Ranks` is RankSet, or Begun as far as what is asked for is among its first ones.
    template <class Ranks>
    std::vector<Place> places(const std::vector<Ranks>& among, std::uint64_t offset,
                              std::uint64_t limit) const;
    template <class Ranks>
    Page pageOf(const std::vector<Ranks>& found, const CardQuery& query) const;

    CardShelf& m_shelf;
    std::shared_ptr<Codec> m_codec = plainCodec();
    bool m_isOpen = false;    ///< manifest and front are read
    bool m_isMade = false;    ///< there is a manifest
    bool m_isLoaded = false;  ///< all segments are read
    Head m_head;
    std::uint64_t m_total = 0;
    std::string m_frontName;
    std::vector<Place> m_front;
    std::vector<Slot> m_slots;  ///< the oldest first
};

}  // namespace ledger
