// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/database.h"

#include <sqlite3.h>

#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <QUrl>
#include <atomic>

#include "store/recordfile.h"

namespace store {
namespace {

using base::Code;
using base::Error;

/// Names the kind of failure by SQLite's extended code.
Error errorOf(int extended) {
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
        case SQLITE_INTERRUPT:
            return Error{Code::VerifyStopped};
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return Error{Code::StoreCutShort, {std::to_string(extended)}};
        default:
            return Error{Code::StoreDisk, {std::to_string(extended)}};
    }
}

/// SQLite's text is left out: it could hold values.
Error errorOf(const QSqlError& failed) { return errorOf(failed.nativeErrorCode().toInt()); }

/// What the connection is to SQLite; null when Qt gives it to nobody.
sqlite3* handleOf(const QString& connection) {
    const QVariant handle = QSqlDatabase::database(connection, false).driver()->handle();
    if (qstrcmp(handle.typeName(), "sqlite3*") != 0) return nullptr;
    return *static_cast<sqlite3* const*>(handle.data());
}

QString nextConnection() {
    static std::atomic<int> count{0};
    return QStringLiteral("record-%1").arg(++count);
}

/// Without a writable folder SQLite can't make the shared memory of its write-ahead log; when the
/// log is empty the file can be read as one that nobody changes. Where it could be changed it is
/// never read so: another copy may begin to write at any moment.
QString readOnlyUri(const std::string& path, Access access) {
    QUrl url = QUrl::fromLocalFile(QString::fromStdString(path));
    const auto isUnchanging = [&path] {
        const auto state = inspect(path);
        return state && *state == FileState::Readable && !hasJournal(path);
    };
    const bool isFixed = access != Access::Beside && isUnchanging();
    url.setQuery(isFixed ? QStringLiteral("immutable=1") : QStringLiteral("mode=ro"));
    return url.toString(QUrl::FullyEncoded);
}

}  // namespace

std::int64_t RowView::number(int column) const { return sqlite3_column_int64(m_statement, column); }

std::string_view RowView::text(int column) const {
    const unsigned char* const text = sqlite3_column_text(m_statement, column);
    const int size = sqlite3_column_bytes(m_statement, column);
    return text ? std::string_view(reinterpret_cast<const char*>(text),
                                   static_cast<std::size_t>(size))
                : std::string_view();
}

std::string_view RowView::bytes(int column) const {
    const void* const bytes = sqlite3_column_blob(m_statement, column);
    const int size = sqlite3_column_bytes(m_statement, column);
    return bytes ? std::string_view(static_cast<const char*>(bytes), static_cast<std::size_t>(size))
                 : std::string_view();
}

base::Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access) {
    const QString name = nextConnection();
    std::unique_ptr<Database> database(new Database(path, access, name));
    QSqlDatabase connection = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(usualWaitMs);
    if (access != Access::ReadWrite) {
        connection.setDatabaseName(readOnlyUri(path, access));
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

base::Outcome Database::scan(const std::string& sql,
                             const std::function<bool(const RowView&)>& visit,
                             std::optional<std::int64_t> from) {
    sqlite3* const handle = handleOf(m_connection);
    if (handle == nullptr) return Error{Code::Internal, {"the connection"}};
    sqlite3_stmt* made = nullptr;
    if (sqlite3_prepare_v2(handle, sql.c_str(), -1, &made, nullptr) != SQLITE_OK)
        return errorOf(sqlite3_extended_errcode(handle));
    const std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> statement(made, sqlite3_finalize);
    if (from) sqlite3_bind_int64(made, 1, *from);
    const RowView row(made);
    int step = sqlite3_step(made);
    for (; step == SQLITE_ROW; step = sqlite3_step(made))
        if (!visit(row)) return base::Done{};
    if (step != SQLITE_DONE) return errorOf(sqlite3_extended_errcode(handle));
    return base::Done{};
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

void Database::stopWhen(std::function<bool()> isStopped) {
    constexpr int instructions = 200'000;  // of SQLite's machine: some 10 ms
    m_isStopped = std::move(isStopped);
    const auto ask = [](void* asked) -> int {
        return (*static_cast<std::function<bool()>*>(asked))() ? 1 : 0;
    };
    if (sqlite3* const handle = handleOf(m_connection); handle != nullptr)
        sqlite3_progress_handler(handle, instructions, ask, &m_isStopped);
}

base::Outcome Database::waitForOthers(int milliseconds) {
    return runOnce(QStringLiteral("PRAGMA busy_timeout = %1").arg(milliseconds));
}

}  // namespace store
