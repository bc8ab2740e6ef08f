// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include "store/database.h"

/// All rows of a record as a stream of bytes: for each table its name and columns, then its rows,
/// each after its length, see lengthText().
namespace store {

using TakeBytes = std::function<base::Outcome(const std::string& bytes)>;

/// Inside a snapshot. Tables come in the order of their names, rows in that of their first column.
/// Errors: BackupRowTooLong, as such a row would be refused on the way back; those of the disk and
/// of `take`.
base::Outcome writeRows(Database& database, const TakeBytes& take);

/// Puts such rows into the tables of an empty record.
class RowReceiver {
  public:
    explicit RowReceiver(Database& database) : m_database(database) {}
    /// Any piece of the stream. Errors: BackupChanged for what writeRows() does not write or the
    /// tables do not take, those of the disk.
    base::Outcome take(std::string_view bytes);
    /// Errors: BackupCutShort.
    base::Outcome finish() const;

  private:
    base::Outcome record(std::string_view bytes);
    base::Outcome row(const Values& values);
    base::Outcome table(const std::string& name, const std::vector<std::string>& columns);

    Database& m_database;
    std::string m_left;
    std::string m_insert;  ///< for the table the rows are of
    std::size_t m_columns = 0;
};

}  // namespace store
