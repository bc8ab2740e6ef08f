// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/database.h"

#include <sqlite3.h>

#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <atomic>

#include "store/recordfile.h"

namespace store {
namespace {

using base::Code;
using base::Error;

/// Names the kind of failure by SQLite's extended code. Its text is left out: it could hold values.
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
    if (!connection.open()) return errorOf(connection.lastError().nativeErrorCode().toInt());
    database->m_handle = handleOf(name);
    if (database->m_handle == nullptr) return Error{Code::Internal, {"the connection"}};
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

Error Database::lastError() const { return errorOf(sqlite3_extended_errcode(m_handle)); }

base::Result<Statement*> Database::prepared(const std::string& sql, const Values& values) {
    auto found = m_statements.find(sql);
    if (found == m_statements.end()) {
        int code = SQLITE_OK;
        auto fresh = Statement::prepare(m_handle, sql, code);
        if (!fresh) return errorOf(code);
        found = m_statements.emplace(sql, std::move(fresh)).first;
    }
    Statement* const statement = found->second.get();
    if (const int code = statement->bind(values); code != SQLITE_OK) {
        statement->reset();
        return errorOf(code);
    }
    return statement;
}

base::Outcome Database::run(const char* sql, const Values& values) {
    return eachOf(sql, values, [](const RowView&) { return true; });
}

base::Outcome Database::putOne(const char* sql, const Values& values) {
    if (const auto done = run(sql, values); !done) return done;
    return sqlite3_changes(m_handle) == 1 ? base::Outcome(base::Done{}) : Error{Code::StoreFences};
}

base::Outcome Database::eachOf(const std::string& sql, const Values& values,
                               const std::function<bool(const RowView&)>& visit) {
    const auto statement = prepared(sql, values);
    if (!statement) return statement.error();
    int step = (*statement)->step();
    while (step == SQLITE_ROW && visit((*statement)->row())) step = (*statement)->step();
    // A page that can't be read is no end of the rows.
    const bool isRead = step == SQLITE_ROW || step == SQLITE_DONE;
    const base::Outcome outcome = isRead ? base::Outcome(base::Done{}) : lastError();
    (*statement)->reset();
    return outcome;
}

base::Outcome Database::each(const std::string& sql, const std::function<bool(const Row&)>& visit) {
    return eachOf(sql, {}, [&](const RowView& row) { return visit(row.values()); });
}

base::Outcome Database::scan(const std::string& sql,
                             const std::function<bool(const RowView&)>& visit,
                             std::optional<std::int64_t> from) {
    Values values;
    if (from) values.emplace_back(static_cast<qlonglong>(*from));
    return eachOf(sql, values, visit);
}

base::Result<Cursor> Database::cursor(std::string_view sql) {
    int code = SQLITE_OK;
    auto made = Statement::prepare(m_handle, sql, code);
    if (!made) return errorOf(code);
    return Cursor(*this, std::move(made));
}

base::Result<bool> Cursor::take(std::size_t most,
                                const std::function<void(const RowView&)>& visit) {
    for (std::size_t taken = 0; m_statement && taken < most; ++taken) {
        const int step = m_statement->step();
        if (step == SQLITE_ROW) {
            visit(m_statement->row());
            continue;
        }
        const base::Error error = m_database->lastError();
        m_statement.reset();
        if (step != SQLITE_DONE) return error;
    }
    return m_statement != nullptr;
}

base::Result<std::vector<Row>> Database::rows(const std::string& sql, const Values& values) {
    std::vector<Row> rows;
    const auto read = eachOf(sql, values, [&](const RowView& row) {
        rows.push_back(row.values());
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
    const std::string text = sql.toStdString();
    const auto done = run(text.c_str());
    m_statements.erase(text);
    return done;
}

void Database::stopWhen(std::function<bool()> isStopped) {
    constexpr int instructions = 200'000;  // of SQLite's machine: some 10 ms
    m_isStopped = std::move(isStopped);
    const auto ask = [](void* asked) -> int {
        return (*static_cast<std::function<bool()>*>(asked))() ? 1 : 0;
    };
    sqlite3_progress_handler(m_handle, instructions, ask, &m_isStopped);
}

base::Outcome Database::waitForOthers(int milliseconds) {
    return runOnce(QStringLiteral("PRAGMA busy_timeout = %1").arg(milliseconds));
}

}  // namespace store
