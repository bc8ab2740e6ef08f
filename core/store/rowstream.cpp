// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rowstream.h"

#include <nlohmann/json.hpp>

#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr std::size_t lengthSize = 4;
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

json jsonOf(const QVariant& value) {
    switch (value.typeId()) {
        case QMetaType::QString:
            return textOf(value);
        case QMetaType::QByteArray: {
            const QByteArray bytes = value.toByteArray();
            return json::binary({bytes.begin(), bytes.end()});
        }
        default:
            return value.isNull() ? json() : json(value.toLongLong());
    }
}

QVariant valueOf(const json& value) {
    if (value.is_string()) return textValue(value.get_ref<const std::string&>());
    if (value.is_number_integer()) return value.get<qlonglong>();
    if (!value.is_binary()) return {};
    const auto& bytes = value.get_binary();
    return bytesValue({bytes.begin(), bytes.end()});
}

std::string framed(const json& content) {
    std::string bytes(lengthSize, '\0');
    json::to_cbor(content, bytes);
    const std::size_t size = bytes.size() - lengthSize;
    for (std::size_t i = 0; i < lengthSize; ++i)
        bytes[i] = static_cast<char>((size >> (8 * (lengthSize - 1 - i))) & 0xffU);
    return bytes;
}

std::size_t lengthIn(std::string_view bytes) {
    std::size_t size = 0;
    for (const char byte : bytes.substr(0, lengthSize))
        size = (size << 8U) | static_cast<unsigned char>(byte);
    return size;
}

base::Outcome writeTable(Database& database, const std::string& table, const TakeBytes& take) {
    const auto columns = columnsOf(database, table);
    if (!columns) return columns.error();
    if (const auto done = take(framed({{"columns", *columns}, {"table", table}})); !done)
        return done;
    const std::string sql = "SELECT " + listed(*columns) + " FROM \"" + table + "\" ORDER BY 1";
    base::Outcome taken = base::Done{};
    const auto read = database.each(sql, [&](const Row& row) {
        json content = json::array();
        for (const QVariant& value : row) content.push_back(jsonOf(value));
        taken = take(framed(content));
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
    while (m_left.size() - at >= lengthSize) {
        const std::size_t size = lengthIn(std::string_view(m_left).substr(at));
        if (size > longestRow) return Error{Code::BackupChanged};
        if (m_left.size() - at - lengthSize < size) break;
        if (const auto done = row(m_left.substr(at + lengthSize, size)); !done) return done;
        at += lengthSize + size;
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

base::Outcome RowReceiver::row(const std::string& cbor) {
    const json content = json::from_cbor(cbor, true, false);
    if (content.is_object()) {
        if (!content.contains("table") || !content["table"].is_string() ||
            !content.contains("columns") || !content["columns"].is_array())
            return Error{Code::BackupChanged};
        std::vector<std::string> columns;
        for (const json& one : content["columns"])
            columns.push_back(one.is_string() ? one.get<std::string>() : std::string());
        return table(content["table"], columns);
    }
    if (!content.is_array() || m_insert.empty() || content.size() != m_columns)
        return Error{Code::BackupChanged};
    Values values;
    for (const json& one : content) values.push_back(valueOf(one));
    auto done = m_database.run(m_insert.c_str(), values);
    if (!done && done.error().code == Code::Internal) return Error{Code::BackupChanged};
    return done;
}

}  // namespace store
