// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QVariant>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "store/statement.h"

namespace store {

enum class Access {
    ReadWrite,
    ReadOnly,
    /// To read, in a process that has the file open to write. SQLite's own descriptors only:
    /// closing any other one of the file would drop the writer's POSIX locks (fcntl(2), "Record
    /// locks").
    Beside,
};

inline constexpr int usualWaitMs = 2000;

class Database;

/// Rows of one statement that are read while others run in between; all of one state of the file
/// when that is so for the others as well. Goes before its database does.
class Cursor {
  public:
    /// The next rows, `most` or all that are left; whether there may be more. After the last one,
    /// and after an error, it takes none.
    base::Result<bool> take(std::size_t most, const std::function<void(const RowView&)>& visit);

  private:
    friend class Database;
    Cursor(const Database& database, std::unique_ptr<Statement> statement)
        : m_database(&database), m_statement(std::move(statement)) {}
    const Database* m_database;
    std::unique_ptr<Statement> m_statement;  ///< null after the last row
};

/// One connection to a file of SQLite, set up as the record needs it: write-ahead log, every
/// commit on the disk before it returns. Belongs to the thread that opened it. Errors of all
/// functions: StoreFull, StoreReadOnly, StoreBusy, StoreCutShort, StoreDisk.
class Database {
  public:
    static base::Result<std::unique_ptr<Database>> open(const std::string& path, Access access);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /// Runs one statement that has no rows. It is prepared once and kept.
    base::Outcome run(const char* sql, const Values& values = {});
    /// The same of one that puts one row; StoreFences when something in the file kept it from that
    /// and said nothing.
    base::Outcome putOne(const char* sql, const Values& values);
    /// Runs one statement and takes all its rows.
    base::Result<std::vector<Row>> rows(const std::string& sql, const Values& values = {});
    /// Runs one statement and hands out its rows one by one until `visit` returns false.
    base::Outcome each(const std::string& sql, const std::function<bool(const Row&)>& visit);
    /// The same without Qt's values in between, for tables that are read as a whole. `from` stands
    /// for the first "?", if there is one.
    base::Outcome scan(const std::string& sql, const std::function<bool(const RowView&)>& visit,
                       std::optional<std::int64_t> from = {});
    /// The rows of one statement that are taken some at a time, see Cursor.
    base::Result<Cursor> cursor(std::string_view sql);
    /// The first value of the first row; an invalid one when there is no row.
    base::Result<QVariant> value(const char* sql, const Values& values = {});
    /// How many milliseconds a statement waits for a lock of another program.
    base::Outcome waitForOthers(int milliseconds);
    /// Asks now and then while a statement runs; once it is to stop, it ends with VerifyStopped.
    void stopWhen(std::function<bool()> isStopped);
    /// Runs one statement of a text that is used once.
    base::Outcome runOnce(const QString& sql);

    Access access() const { return m_access; }
    const std::string& path() const { return m_path; }

  private:
    friend class Cursor;
    Database(std::string path, Access access, QString connection)
        : m_path(std::move(path)), m_access(access), m_connection(std::move(connection)) {}
    base::Outcome setUp();
    base::Outcome eachOf(const std::string& sql, const Values& values,
                         const std::function<bool(const RowView&)>& visit);
    base::Error lastError() const;
    base::Result<Statement*> prepared(const std::string& sql, const Values& values);

    std::string m_path;
    Access m_access;
    QString m_connection;         ///< as Qt names it
    sqlite3* m_handle = nullptr;  ///< what it is to SQLite
    std::map<std::string, std::unique_ptr<Statement>> m_statements;
    std::function<bool()> m_isStopped;
};

}  // namespace store
