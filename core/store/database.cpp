// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/database.h"

#include <sqlite3.h>

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlRecord>
#include <QUrl>
#include <atomic>

#include "store/recordfile.h"

namespace store {
namespace {

using base::Code;
using base::Error;

/// Names the kind of failure. SQLite's text is left out: it could hold values.
Error errorOf(const QSqlError& failed) {
    const int extended = failed.nativeErrorCode().toInt();
    switch (extended & 0xff) {
        case SQLITE_FULL:
            return Error{Code::StoreFull};
        case SQLITE_READONLY:
            return Error{Code::StoreReadOnly};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return Error{Code::StoreBusy};
        case SQLITE_CONSTRAINT:
            return Error{Code::Internal, {"a rule of the record's file"}};
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return Error{Code::StoreCutShort, {std::to_string(extended)}};
        default:
            return Error{Code::StoreDisk, {std::to_string(extended)}};
    }
}

QString nextConnection() {
    static std::atomic<int> count{0};
    return QStringLiteral("record-%1").arg(++count);
}

/// Without a writable folder SQLite can't make the shared memory of its write-ahead log; when the
/// log is empty the file can be read as one that nobody changes. Where it could be changed it is
/// never read so: another copy may begin to write at any moment.
QString readOnlyUri(const std::string& path) {
    QUrl url = QUrl::fromLocalFile(QString::fromStdString(path));
    const auto state = inspect(path);
    const bool isFixed = state && *state == FileState::Readable && !hasJournal(path);
    url.setQuery(isFixed ? QStringLiteral("immutable=1") : QStringLiteral("mode=ro"));
    return url.toString(QUrl::FullyEncoded);
}

}  // namespace

base::Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access) {
    const QString name = nextConnection();
    std::unique_ptr<Database> database(new Database(path, access, name));
    QSqlDatabase connection = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(usualWaitMs);
    if (access == Access::ReadOnly) {
        connection.setDatabaseName(readOnlyUri(path));
        options += QStringLiteral(";QSQLITE_OPEN_URI;QSQLITE_OPEN_READONLY");
    } else {
        connection.setDatabaseName(QString::fromStdString(path));
    }
    connection.setConnectOptions(options);
    if (!connection.open()) return errorOf(connection.lastError());
    if (const auto ready = database->setUp(); !ready) return ready.error();
    return database;
}

Database::~Database() {
    m_statements.clear();  // an unfinished statement would keep the file open
    QSqlDatabase::database(m_connection, false).close();
    QSqlDatabase::removeDatabase(m_connection);
}

base::Outcome Database::setUp() {
    std::vector<const char*> pragmas = {"PRAGMA foreign_keys = ON", "PRAGMA trusted_schema = OFF",
                                        "PRAGMA cell_size_check = ON",
                                        "PRAGMA temp_store = MEMORY"};
    if (m_access == Access::ReadWrite) {
        pragmas.push_back("PRAGMA journal_mode = WAL");
        pragmas.push_back("PRAGMA synchronous = FULL");
        pragmas.push_back("PRAGMA secure_delete = ON");  // a destroyed key leaves no trace
    }
    for (const char* pragma : pragmas)
        if (const auto done = runOnce(QString::fromLatin1(pragma)); !done) return done;
    return base::Done{};
}

base::Result<QSqlQuery*> Database::prepared(const std::string& sql, const Values& values) {
    auto found = m_statements.find(sql);
    if (found == m_statements.end()) {
        QSqlQuery fresh(QSqlDatabase::database(m_connection, false));
        fresh.setForwardOnly(true);
        if (!fresh.prepare(QString::fromStdString(sql))) return errorOf(fresh.lastError());
        found = m_statements.emplace(sql, std::move(fresh)).first;
    }
    QSqlQuery& query = found->second;
    for (std::size_t i = 0; i < values.size(); ++i) query.bindValue(static_cast<int>(i), values[i]);
    return &query;
}

base::Outcome Database::run(const char* sql, const Values& values) {
    const auto query = prepared(sql, values);
    if (!query) return query.error();
    const bool done = (*query)->exec();
    const QSqlError failed = (*query)->lastError();
    (*query)->finish();
    if (!done) return errorOf(failed);
    return base::Done{};
}

base::Outcome Database::eachOf(const std::string& sql, const Values& values,
                               const std::function<bool(const Row&)>& visit) {
    const auto query = prepared(sql, values);
    if (!query) return query.error();
    if (!(*query)->exec()) {
        const Error failed = errorOf((*query)->lastError());
        (*query)->finish();
        return failed;
    }
    const int columns = (*query)->record().count();
    bool isWanted = true;
    while (isWanted && (*query)->next()) {
        Row row;
        for (int i = 0; i < columns; ++i) row.push_back((*query)->value(i));
        isWanted = visit(row);
    }
    // next() also ends when a page can't be read; that is no end of the rows.
    const QSqlError failed = (*query)->lastError();
    (*query)->finish();
    if (failed.isValid()) return errorOf(failed);
    return base::Done{};
}

base::Outcome Database::each(const std::string& sql, const std::function<bool(const Row&)>& visit) {
    return eachOf(sql, {}, visit);
}

base::Result<std::vector<Row>> Database::rows(const std::string& sql, const Values& values) {
    std::vector<Row> rows;
    const auto read = eachOf(sql, values, [&](const Row& row) {
        rows.push_back(row);
        return true;
    });
    if (!read) return read.error();
    return rows;
}

base::Result<QVariant> Database::value(const char* sql, const Values& values) {
    const auto found = rows(sql, values);
    if (!found) return found.error();
    return found->empty() ? QVariant() : found->front().front();
}

base::Outcome Database::runOnce(const QString& sql) {
    QSqlQuery query(QSqlDatabase::database(m_connection, false));
    if (!query.exec(sql)) return errorOf(query.lastError());
    return base::Done{};
}

base::Outcome Database::waitForOthers(int milliseconds) {
    return runOnce(QStringLiteral("PRAGMA busy_timeout = %1").arg(milliseconds));
}

}  // namespace store
