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
/// All but the cards and the fold's version.
base::Outcome putDerived(Database& database, const ledger::Derived& derived);
base::Outcome putFold(Database& database, int version);
/// What people sign in by, ordered by kind and id.
base::Result<std::vector<ledger::AccessRow>> accessRowsIn(Database& database);
/// All but the cards and what people sign in by.
base::Outcome clearDerived(Database& database);
/// The same after clearIndex(). An entry that stays closed keeps the row of its command, which is
/// then the only place where its id can be read.
base::Outcome remakeIndex(Database& database, const ledger::Entry& entry);
/// Leaves the rows of commands that lead to some entry, for remakeIndex().
base::Outcome clearIndex(Database& database);

/// All rows but the cards as text, in a fixed order: equal texts, equal rows. The index and the
/// right edge; then open visit and fold version.
base::Result<std::string> indexText(Database& database);
base::Result<std::string> shownText(Database& database);
/// What shownText() gives when these are the rows.
std::string shownTextOf(const ledger::Derived& all);

}  // namespace store
