// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "procedure/shelf.h"
#include "store/sqlledger.h"

namespace bench {

/// Invented people in great number, as the program itself would have written them: ten entries for
/// each, cards and search keys by record::derive. The same people at every run, but for their ids.
base::Result<base::StaffId> addHouse(ledger::Ledger& ledger, const base::Instant& now);
base::Outcome addPeople(ledger::Ledger& ledger, int count, const base::Instant& now);

/// The entries and derived rows of one more person.
struct PersonDrafts {
    std::vector<ledger::Draft> drafts;
    ledger::Derived derived;
};
PersonDrafts personDrafts(const ledger::Ledger& ledger, int number, const base::Instant& now);
/// Without all entries but the last.
PersonDrafts lastEntryOf(PersonDrafts person);

/// Noon of a day in 2026, UTC.
base::Instant noon();

}  // namespace bench
