// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/transaction.h"

namespace store {

base::Result<Transaction> Transaction::begin(Database& database) {
    if (database.access() != Access::ReadWrite) return base::Error{base::Code::StoreReadOnly};
    if (const auto begun = database.run("BEGIN IMMEDIATE"); !begun) return begun.error();
    return Transaction(database);
}

Transaction::~Transaction() {
    // Fails when SQLite has undone it by itself, after a full disk for instance; the end is the
    // same.
    if (m_database) static_cast<void>(m_database->run("ROLLBACK").ok());
}

base::Outcome Transaction::commit() {
    auto done = m_database->run("COMMIT");
    if (done) m_database = nullptr;
    return done;
}

base::Result<Snapshot> Snapshot::begin(Database& database) {
    if (const auto begun = database.run("SAVEPOINT moment"); !begun) return begun.error();
    return Snapshot(database);
}

Snapshot::~Snapshot() {
    if (m_database) static_cast<void>(m_database->run("RELEASE moment").ok());
}

base::Outcome emptyJournal(Database& database) {
    // Whoever writes does not wait for somebody who reads: it is tried again later.
    if (const auto set = database.waitForOthers(0); !set) return set;
    const auto flushed = database.rows("PRAGMA wal_checkpoint(TRUNCATE)");
    if (const auto set = database.waitForOthers(usualWaitMs); !set) return set;
    if (!flushed) return flushed.error();
    // Its first column is 1 when somebody who reads kept it from being emptied.
    const bool isBusy = !flushed->empty() && flushed->front().front().toInt() != 0;
    if (isBusy) return base::Error{base::Code::StoreBusy};
    return base::Done{};
}

}  // namespace store
