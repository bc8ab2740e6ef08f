// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "ledger/ledger.h"
#include "ledger/tail.h"
#include "store/database.h"

/// The rows beside the entries, all of which can be made from the entries again. Called inside a
/// transaction.
namespace store {

/// Where the entry of a command is, and whose record it is part of.
base::Outcome putIndex(Database& database, const ledger::Entry& entry);
/// The tail, and the edge as it was before the last entry.
base::Outcome putTail(Database& database, const ledger::Tail& tail,
                      const ledger::RightEdge& previous);
base::Outcome putDerived(Database& database, const ledger::Derived& derived);
base::Outcome clearDerived(Database& database);
/// The same after clearIndex(). An entry that stays closed keeps the row of its command, which is
/// then the only place where its id can be read.
base::Outcome remakeIndex(Database& database, const ledger::Entry& entry);
/// Leaves the rows of commands that lead to some entry, for remakeIndex().
base::Outcome clearIndex(Database& database);

/// More words than these are left out of a search.
inline constexpr std::size_t mostWords = 16;
/// From so many matches on it takes less to walk the cards in their order and ask each whether it
/// matches than to sort all that match. Measured among 100,000 learners by tests/bench.
inline constexpr std::uint64_t manyMatches = 2000;

/// The statements of a search. The values of `words` are bound to each; after them, in the pages,
/// most rows and rows left out.
struct CardSearch {
    std::string count;    ///< how many match
    std::string fewPage;  ///< one page of fewer than manyMatches
    std::string manyPage;
    Values words;
};
CardSearch cardSearch(const std::vector<std::string>& words);
base::Result<ledger::CardPage> findCards(Database& database, const ledger::CardQuery& query);

/// All derived rows as text, in a fixed order: equal texts, equal rows.
base::Result<std::string> derivedText(Database& database);

/// Whether exactly these are the derived rows, the index and the right edge left aside.
base::Result<bool> areDerived(Database& database, const ledger::Derived& all);

}  // namespace store
