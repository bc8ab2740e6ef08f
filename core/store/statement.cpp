// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/statement.h"

#include <sqlite3.h>

namespace store {

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

QVariant RowView::value(int column) const {
    switch (sqlite3_column_type(m_statement, column)) {
        case SQLITE_INTEGER:
            return static_cast<qlonglong>(number(column));
        case SQLITE_FLOAT:
            return sqlite3_column_double(m_statement, column);
        case SQLITE_TEXT: {
            const std::string_view found = text(column);
            return QString::fromUtf8(found.data(), static_cast<qsizetype>(found.size()));
        }
        case SQLITE_BLOB: {
            const std::string_view found = bytes(column);
            return QByteArray(found.data(), static_cast<qsizetype>(found.size()));
        }
        default:
            return QVariant(QMetaType::fromType<QByteArray>());
    }
}

Row RowView::values() const {
    const int columns = sqlite3_data_count(m_statement);
    Row row;
    row.reserve(static_cast<std::size_t>(columns));
    for (int i = 0; i < columns; ++i) row.push_back(value(i));
    return row;
}

std::unique_ptr<Statement> Statement::prepare(sqlite3* connection, std::string_view sql,
                                              int& code) {
    sqlite3_stmt* made = nullptr;
    sqlite3_prepare_v3(connection, sql.data(), static_cast<int>(sql.size()),
                       SQLITE_PREPARE_PERSISTENT, &made, nullptr);
    code = sqlite3_extended_errcode(connection);
    if (made == nullptr) return nullptr;
    return std::unique_ptr<Statement>(new Statement(made));
}

Statement::~Statement() { sqlite3_finalize(m_statement); }

int Statement::bind(const Values& values) {
    if (sqlite3_bind_parameter_count(m_statement) != static_cast<int>(values.size()))
        return SQLITE_RANGE;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (const int code = bind(static_cast<int>(i) + 1, values[i]); code != SQLITE_OK)
            return code;
    return SQLITE_OK;
}

int Statement::bind(int place, const QVariant& value) {
    if (value.isNull()) return sqlite3_bind_null(m_statement, place);
    switch (value.typeId()) {
        case QMetaType::Bool:
        case QMetaType::Int:
        case QMetaType::LongLong:
            return sqlite3_bind_int64(m_statement, place, value.toLongLong());
        case QMetaType::QByteArray: {
            const QByteArray bytes = value.toByteArray();  // shares what `value` holds
            return sqlite3_bind_blob(m_statement, place, bytes.constData(),
                                     static_cast<int>(bytes.size()), SQLITE_STATIC);
        }
        case QMetaType::QString: {
            const QByteArray text = value.toString().toUtf8();
            return sqlite3_bind_text(m_statement, place, text.constData(),
                                     static_cast<int>(text.size()), SQLITE_TRANSIENT);
        }
        default:
            return SQLITE_MISMATCH;
    }
}

int Statement::step() { return sqlite3_step(m_statement); }

void Statement::reset() {
    sqlite3_reset(m_statement);
    sqlite3_clear_bindings(m_statement);
}

}  // namespace store
