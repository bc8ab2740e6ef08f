// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>

#include "store/sqlledger.h"

namespace support {

/// A folder of its own for the files of a record, gone at the end of the test.
class RecordFolder {
  public:
    std::string path(const std::string& name = "ward.record") const {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    std::unique_ptr<store::SqlLedger> open(const std::string& name = "ward.record") const {
        auto opened = store::SqlLedger::open(path(name), store::OpenMode::Demonstration);
        if (!opened) ADD_FAILURE() << base::english(opened.error());
        return opened ? std::move(*opened) : nullptr;
    }
    /// The code an attempt to open is refused with.
    base::Code refusal(const std::string& name = "ward.record") const {
        const auto opened = store::SqlLedger::open(path(name), store::OpenMode::Demonstration);
        if (opened) ADD_FAILURE() << "was opened";
        return opened ? base::Code::Internal : opened.error().code;
    }

  private:
    QTemporaryDir m_folder;
};

/// Changes a record behind the program's back; the fences against it are taken down first, and put
/// up again.
inline void tamper(store::Database& database, const QString& sql) {
    const auto fences = database.rows(
        "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' AND name LIKE 'entry%'");
    ASSERT_TRUE(fences.ok());
    for (const store::Row& row : *fences)
        ASSERT_TRUE(
            database.runOnce(QStringLiteral("DROP TRIGGER ") + row.front().toString()).ok());
    ASSERT_TRUE(database.runOnce(sql).ok()) << sql.toStdString();
    for (const store::Row& row : *fences) ASSERT_TRUE(database.runOnce(row[1].toString()).ok());
}
inline void tamper(const std::string& file, const char* sql) {
    const auto database = store::Database::open(file, store::Access::ReadWrite);
    ASSERT_TRUE(database.ok());
    tamper(**database, QString::fromUtf8(sql));
}

inline std::string bytesOfFile(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::stringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

inline void putFile(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// Changes the places of two rows of a table or an index that is one page, behind SQLite's back
/// ("Database File Format", 1.6: after eight bytes a leaf has the offsets of its cells, two bytes
/// each).
inline void exchangeRows(const std::string& path, const char* tree, std::size_t one,
                         std::size_t other) {
    constexpr std::size_t pageBytes = 4096, head = 8;
    std::size_t page = 0;
    {
        const auto database = store::Database::open(path, store::Access::ReadWrite);
        ASSERT_TRUE(database.ok());
        page = (*database)
                   ->value("SELECT rootpage FROM sqlite_schema WHERE name = ?",
                           {QString::fromLatin1(tree)})
                   ->toULongLong();
    }
    std::string file = bytesOfFile(path);
    const std::size_t at = (page - 1) * pageBytes;
    ASSERT_TRUE(file[at] == 13 || file[at] == 10) << "a leaf of a table or of an index";
    for (std::size_t i = 0; i < 2; ++i)
        std::swap(file[at + head + 2 * one + i], file[at + head + 2 * other + i]);
    putFile(path, file);
}

}  // namespace support
