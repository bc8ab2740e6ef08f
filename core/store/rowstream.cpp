// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rowstream.h"

#include <optional>

#include "ledger/bytes.h"
#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;
using ledger::ByteReader;
using ledger::ByteWriter;

constexpr std::size_t longestRow = std::size_t{64} << 20U;  // bytes

base::Result<std::vector<std::string>> tablesOf(Database& database) {
    const auto rows = database.rows(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' "
        "ORDER BY name");
    if (!rows) return rows.error();
    std::vector<std::string> names;
    for (const Row& row : *rows) names.push_back(textOf(row[0]));
    return names;
}

base::Result<std::vector<std::string>> columnsOf(Database& database, const std::string& table) {
    const auto rows =
        database.rows("SELECT name FROM pragma_table_info(?) ORDER BY cid", {textValue(table)});
    if (!rows) return rows.error();
    std::vector<std::string> names;
    for (const Row& row : *rows) names.push_back(textOf(row[0]));
    return names;
}

std::string listed(const std::vector<std::string>& names) {
    std::string list;
    for (const std::string& name : names) list += (list.empty() ? "\"" : ", \"") + name + '"';
    return list;
}

enum class Record : std::uint64_t { Table, Row };
enum class Kind : std::uint64_t { Null, Integer, Text, Bytes };

void putValue(ByteWriter& out, const QVariant& value) {
    const auto put = [&](Kind kind) -> ByteWriter& {
        return out.count(static_cast<std::uint64_t>(kind));
    };
    if (value.isNull())
        put(Kind::Null);
    else if (value.typeId() == QMetaType::QString)
        put(Kind::Text).text(textOf(value));
    else if (value.typeId() == QMetaType::QByteArray)
        put(Kind::Bytes).text(bytesOf(value));
    else
        put(Kind::Integer).count(countOf(value));
}

/// Nothing for a kind there is none of.
std::optional<QVariant> valueFrom(ByteReader& in) {
    switch (static_cast<Kind>(in.count())) {
        case Kind::Null:
            return QVariant();
        case Kind::Integer:
            return countValue(in.count());
        case Kind::Text:
            return textValue(std::string(in.text()));
        case Kind::Bytes:
            return bytesValue(std::string(in.text()));
    }
    return std::nullopt;
}

std::string afterItsLength(ByteWriter& content) {
    const std::string bytes = content.take();
    return lengthText(bytes.size()) + bytes;
}

std::string tableRecord(const std::string& table, const std::vector<std::string>& columns) {
    ByteWriter out;
    out.count(static_cast<std::uint64_t>(Record::Table)).text(table).count(columns.size());
    for (const std::string& column : columns) out.text(column);
    return afterItsLength(out);
}

std::string rowRecord(const Row& row) {
    ByteWriter out;
    out.count(static_cast<std::uint64_t>(Record::Row)).count(row.size());
    for (const QVariant& value : row) putValue(out, value);
    return afterItsLength(out);
}

base::Outcome writeTable(Database& database, const std::string& table, const TakeBytes& take) {
    const auto columns = columnsOf(database, table);
    if (!columns) return columns.error();
    if (const auto done = take(tableRecord(table, *columns)); !done) return done;
    const std::string sql = "SELECT " + listed(*columns) + " FROM \"" + table + "\" ORDER BY 1";
    base::Outcome taken = base::Done{};
    const auto read = database.each(sql, [&](const Row& row) {
        const std::string bytes = rowRecord(row);
        const std::size_t size = bytes.size() - lengthBytes;
        taken = size <= longestRow ? take(bytes)
                                   : Error{Code::BackupRowTooLong,
                                           {std::to_string(size), std::to_string(longestRow)}};
        return taken.ok();
    });
    return read ? taken : read;
}

}  // namespace

base::Outcome writeRows(Database& database, const TakeBytes& take) {
    const auto tables = tablesOf(database);
    if (!tables) return tables.error();
    for (const std::string& table : *tables)
        if (const auto done = writeTable(database, table, take); !done) return done;
    return base::Done{};
}

base::Outcome RowReceiver::take(std::string_view bytes) {
    m_left.append(bytes);
    std::size_t at = 0;
    while (m_left.size() - at >= lengthBytes) {
        const std::size_t size = lengthIn(std::string_view(m_left).substr(at));
        if (size > longestRow) return Error{Code::BackupChanged};
        if (m_left.size() - at - lengthBytes < size) break;
        if (const auto done = record(std::string_view(m_left).substr(at + lengthBytes, size));
            !done)
            return done;
        at += lengthBytes + size;
    }
    m_left.erase(0, at);
    return base::Done{};
}

base::Outcome RowReceiver::finish() const {
    if (!m_left.empty()) return Error{Code::BackupCutShort};
    return base::Done{};
}

base::Outcome RowReceiver::table(const std::string& name, const std::vector<std::string>& columns) {
    // Names go into a statement: only those that stand in this program's own schema.
    const auto known = columnsOf(m_database, name);
    if (!known) return known.error();
    if (known->empty() || *known != columns) return Error{Code::BackupChanged};
    m_columns = columns.size();
    m_insert = "INSERT INTO \"" + name + "\" (" + listed(columns) + ") VALUES (?";
    for (std::size_t i = 1; i < m_columns; ++i) m_insert += ", ?";
    m_insert += ')';
    return base::Done{};
}

base::Outcome RowReceiver::record(std::string_view bytes) {
    ByteReader in(bytes);
    switch (static_cast<Record>(in.count())) {
        case Record::Table: {
            const std::string name(in.text());
            std::vector<std::string> columns(in.countOf(sizeof(std::uint64_t)));
            for (std::string& column : columns) column = in.text();
            return in.isWhole() ? table(name, columns) : Error{Code::BackupChanged};
        }
        case Record::Row: {
            Values values;
            for (std::uint64_t left = in.countOf(sizeof(std::uint64_t)); left > 0; --left) {
                auto value = valueFrom(in);
                if (!value) return Error{Code::BackupChanged};
                values.push_back(std::move(*value));
            }
            return in.isWhole() ? row(values) : Error{Code::BackupChanged};
        }
    }
    return Error{Code::BackupChanged};
}

base::Outcome RowReceiver::row(const Values& values) {
    if (m_insert.empty() || values.size() != m_columns) return Error{Code::BackupChanged};
    auto done = m_database.run(m_insert.c_str(), values);
    if (!done && done.error().code == Code::Internal) return Error{Code::BackupChanged};
    return done;
}

}  // namespace store
