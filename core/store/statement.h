// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVariant>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace store {

using Values = std::vector<QVariant>;
using Row = std::vector<QVariant>;

/// One row while it is read, without a copy of what it holds.
class RowView {
  public:
    explicit RowView(sqlite3_stmt* statement) : m_statement(statement) {}
    std::int64_t number(int column) const;
    /// Both are good until the next row, and "" for null.
    std::string_view text(int column) const;
    std::string_view bytes(int column) const;
    /// Integers as qlonglong, texts as QString, bytes as QByteArray, null as a null one.
    Row values() const;

  private:
    QVariant value(int column) const;
    sqlite3_stmt* m_statement;
};

/// A prepared statement of SQLite's interface. Qt's QSqlQuery would turn each text into UTF-16 and
/// back. Codes are those of SQLite, extended ones by sqlite3_extended_errcode().
class Statement {
  public:
    /// Null, with the code in `code`, when SQLite refuses it. `sql` is one statement.
    static std::unique_ptr<Statement> prepare(sqlite3* connection, std::string_view sql, int& code);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    /// For the "?" in their order; `values` outlive the next reset(). It holds no lock until
    /// step(), and none after reset().
    int bind(const Values& values);
    /// SQLITE_ROW, SQLITE_DONE or an error.
    int step();
    RowView row() const { return RowView(m_statement); }
    /// Ready to be bound again; also lets go of what is bound.
    void reset();

  private:
    explicit Statement(sqlite3_stmt* statement) : m_statement(statement) {}
    int bind(int place, const QVariant& value);
    sqlite3_stmt* m_statement;
};

}  // namespace store
