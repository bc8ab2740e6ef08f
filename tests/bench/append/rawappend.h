// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "bench/rawsqlite.h"
#include "ledger/tail.h"
#include "store/sqlledger.h"

namespace bench {

/// Everything that one append writes, ready to be bound.
struct RawRows {
    std::string command, patient, entry, edge, previous;
    std::uint64_t seq = 0, tick = 0;
    ledger::CardRow card;
    std::size_t bytes() const;
};

/// The statements of SqlLedger::append by SQLite's own interface.
class RawAppend {
  public:
    explicit RawAppend(const std::string& path);

    bool isGood() const { return m_database && m_database->isGood() && m_statements.size() == 11; }
    RawRows rowsFor(int number);
    bool write(const RawRows& rows);

  private:
    std::unique_ptr<RawDatabase> m_database;
    std::vector<std::unique_ptr<RawStatement>> m_statements;
    std::unique_ptr<ledger::Ledger> m_name;  ///< an empty ledger, for an id
    ledger::Tail m_tail;
};

}  // namespace bench
