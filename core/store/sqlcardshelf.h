// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ledger/cardshelf.h"
#include "store/database.h"

namespace store {

/// The rows of card and segment. Runs inside the transaction that is open, if one is.
class SqlCardShelf : public ledger::CardShelf {
  public:
    explicit SqlCardShelf(Database& database) : m_database(database) {}

    base::Result<std::optional<ledger::StoredCard>> card(
        const base::LearnerId& learner) const override;
    base::Result<std::vector<ledger::StoredCard>> cards() const override;
    base::Outcome putCard(const ledger::StoredCard& card) override;
    base::Outcome removeCard(const base::LearnerId& learner) override;
    base::Result<std::optional<std::string>> segment(const std::string& name) const override;
    base::Outcome putSegment(const std::string& name, const std::string& row) override;
    base::Outcome removeSegment(const std::string& name) override;
    base::Outcome clear() override;

  private:
    Database& m_database;
};

}  // namespace store
