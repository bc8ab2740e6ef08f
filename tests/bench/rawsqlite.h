// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <string>

namespace bench {

/// One prepared statement of SQLite's own interface, nothing between.
class RawStatement {
  public:
    RawStatement(sqlite3* database, const char* sql) {
        m_isGood = sqlite3_prepare_v3(database, sql, -1, SQLITE_PREPARE_PERSISTENT, &m_statement,
                                      nullptr) == SQLITE_OK;
    }
    ~RawStatement() { sqlite3_finalize(m_statement); }
    RawStatement(const RawStatement&) = delete;
    RawStatement& operator=(const RawStatement&) = delete;

    RawStatement& text(int place, const std::string& value) {
        sqlite3_bind_text(m_statement, place, value.data(), int(value.size()), SQLITE_STATIC);
        return *this;
    }
    RawStatement& blob(int place, const std::string& value) {
        sqlite3_bind_blob(m_statement, place, value.data(), int(value.size()), SQLITE_STATIC);
        return *this;
    }
    RawStatement& count(int place, std::uint64_t value) {
        sqlite3_bind_int64(m_statement, place, static_cast<sqlite3_int64>(value));
        return *this;
    }
    bool hasRow() { return m_isGood && sqlite3_step(m_statement) == SQLITE_ROW; }
    std::string bytesAt(int column) {
        const void* bytes = sqlite3_column_blob(m_statement, column);
        const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column));
        return bytes ? std::string(static_cast<const char*>(bytes), size) : std::string();
    }
    std::uint64_t countAt(int column) {
        return static_cast<std::uint64_t>(sqlite3_column_int64(m_statement, column));
    }
    void reset() { sqlite3_reset(m_statement); }
    /// Runs it to its end.
    bool run() {
        int step = SQLITE_ROW;
        while (m_isGood && step == SQLITE_ROW) step = sqlite3_step(m_statement);
        sqlite3_reset(m_statement);
        return m_isGood && step == SQLITE_DONE;
    }

  private:
    sqlite3_stmt* m_statement = nullptr;
    bool m_isGood = false;
};

/// A file of SQLite opened as the program's store opens it.
class RawDatabase {
  public:
    explicit RawDatabase(const std::string& path) {
        m_isGood = sqlite3_open(path.c_str(), &m_database) == SQLITE_OK;
        for (const char* pragma : {"PRAGMA foreign_keys = ON", "PRAGMA trusted_schema = OFF",
                                   "PRAGMA cell_size_check = ON", "PRAGMA journal_mode = WAL",
                                   "PRAGMA synchronous = FULL", "PRAGMA secure_delete = ON"})
            m_isGood = sqlite3_exec(m_database, pragma, nullptr, nullptr, nullptr) == SQLITE_OK &&
                       m_isGood;
    }
    ~RawDatabase() { sqlite3_close(m_database); }
    RawDatabase(const RawDatabase&) = delete;
    RawDatabase& operator=(const RawDatabase&) = delete;

    bool isGood() const { return m_isGood; }
    sqlite3* handle() { return m_database; }

  private:
    sqlite3* m_database = nullptr;
    bool m_isGood = false;
};

}  // namespace bench
