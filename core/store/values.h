// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QVariant>
#include <string>

/// Between our values and those of Qt's SQL.
namespace store {

/// A text of UTF-8. Never null: an empty text is stored as one.
inline QVariant textValue(const std::string& text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
/// Bytes, compared byte by byte. Never null.
inline QVariant bytesValue(const std::string& bytes) {
    return QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size()));
}
/// Sizes and places in the ledger end at 2^53 - 1.
inline QVariant countValue(std::uint64_t count) { return static_cast<qlonglong>(count); }

inline std::string textOf(const QVariant& value) { return value.toString().toStdString(); }
inline std::string bytesOf(const QVariant& value) { return value.toByteArray().toStdString(); }
inline std::uint64_t countOf(const QVariant& value) {
    return static_cast<std::uint64_t>(value.toLongLong());
}

}  // namespace store
