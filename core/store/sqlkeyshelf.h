// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ledger/codec.h"
#include "store/database.h"

namespace store {

/// The rows of subject_key. Runs inside the transaction that is open, if one is. The journal that
/// still has what was erased is for the ledger to empty; copies of the file, and what a disk keeps
/// of blocks written before, are out of reach.
class SqlKeyShelf : public ledger::KeyShelf {
  public:
    explicit SqlKeyShelf(Database& database) : m_database(database) {}

    base::Result<std::optional<ledger::KeyRow>> byId(const std::string& id) const override;
    base::Result<std::optional<ledger::KeyRow>> ofSubject(
        const base::PatientId& subject) const override;
    base::Outcome put(const ledger::KeyRow& row) override;
    base::Outcome erase(const base::PatientId& subject) override;

  private:
    base::Result<std::optional<ledger::KeyRow>> one(const char* sql,
                                                    const std::string& asked) const;
    Database& m_database;
};

}  // namespace store
