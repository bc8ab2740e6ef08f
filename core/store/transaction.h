// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/database.h"

namespace store {

/// A transaction that is undone at the end of the block unless commit() was called and succeeded.
class Transaction {
  public:
    /// Takes the right to write at once, so that nothing read inside can be outdated.
    static base::Result<Transaction> begin(Database& database);

    Transaction(Transaction&& other) noexcept
        : m_database(std::exchange(other.m_database, nullptr)) {}
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();

    base::Outcome commit();

  private:
    explicit Transaction(Database& database) : m_database(&database) {}
    Database* m_database;  ///< nullptr once it has ended
};

/// While it lives everything that is read is of one moment, also beside a copy that writes. Inside
/// another one it is of that one's moment.
class Snapshot {
  public:
    static base::Result<Snapshot> begin(Database& database);

    Snapshot(Snapshot&& other) noexcept : m_database(std::exchange(other.m_database, nullptr)) {}
    Snapshot& operator=(Snapshot&&) = delete;
    ~Snapshot();

  private:
    explicit Snapshot(Database& database) : m_database(&database) {}
    Database* m_database;
};

/// Brings what the write-ahead log holds into the file and empties it. Outside a transaction.
base::Outcome emptyJournal(Database& database);

}  // namespace store
