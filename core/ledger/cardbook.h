// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ledger/cardindex.h"

namespace ledger {

/// The cards of a ledger and their index, closed and opened by its codec. Both ledgers keep their
/// cards in one, each on a shelf of its own. Errors of all: SealKeyMissing, SealRefused,
/// StoreEdgeWrong, those of the shelf.
class CardBook {
  public:
    explicit CardBook(CardShelf& shelf) : m_shelf(shelf), m_index(shelf) {}

    void use(std::shared_ptr<Codec> codec);
    const std::shared_ptr<Codec>& codec() const { return m_codec; }
    /// To be called when what was put was undone, or when another wrote to the shelf.
    void forgetRead() { m_index.close(); }

    /// Whether the cards are kept beside the entries. Those of a record of an older schema are not
    /// before they are made again.
    base::Result<bool> isKept(const RightEdge& edge);
    base::Outcome put(const std::vector<CardRow>& cards, const RightEdge& before,
                      const RightEdge& after);
    base::Result<CardPage> find(const CardQuery& query, const RightEdge& edge);
    /// Puts these in the place of all cards.
    base::Outcome rebuild(const std::vector<CardRow>& cards, const RightEdge& edge);
    /// Takes the cards of one patient away and closes all that named them anew.
    base::Outcome forget(const base::PatientId& patient, const RightEdge& edge);
    /// All cards as text, ordered by learner, from the cards and from their index. Equal texts,
    /// equal cards, however the index is parted.
    base::Result<std::string> text(const RightEdge& edge);
    /// The same text when these are the cards.
    static std::string textOf(const std::vector<CardRow>& cards);

  private:
    base::Result<CardRow> open(const StoredCard& stored) const;
    base::Result<bool> store(const CardRow& card, std::vector<CardIndex::Change>& changes);

    CardShelf& m_shelf;
    CardIndex m_index;
    std::shared_ptr<Codec> m_codec = plainCodec();
};

}  // namespace ledger
