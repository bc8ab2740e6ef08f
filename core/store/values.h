// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QVariant>
#include <string>
#include <string_view>

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

/// Before each piece and each row of a backup: four bytes, the most significant first.
inline constexpr std::size_t lengthBytes = 4;
inline std::string lengthText(std::size_t size) {
    std::string text(lengthBytes, '\0');
    for (std::size_t i = 0; i < lengthBytes; ++i)
        text[i] = static_cast<char>((size >> (8 * (lengthBytes - 1 - i))) & 0xffU);
    return text;
}
/// What the first bytes say; there are so many.
inline std::size_t lengthIn(std::string_view bytes) {
    std::size_t size = 0;
    for (const char byte : bytes.substr(0, lengthBytes))
        size = (size << 8U) | static_cast<unsigned char>(byte);
    return size;
}

}  // namespace store
