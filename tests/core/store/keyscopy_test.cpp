// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/keyscopy.h"

#include <gtest/gtest.h>

#include "support/recordfolder.h"

namespace store {
namespace {

using support::RecordFolder;

struct KeysCopied : testing::Test {
    const RecordFolder folder;
    std::vector<ledger::KeyRow> rows;

    /// Ids that do not rise as the rows are put in.
    KeysCopied() {
        const auto ledger = folder.open();
        for (int i = 0; i < 9; ++i) {
            const std::string id = "k" + std::to_string(i * 4 % 9) + std::string(40, 'k');
            rows.push_back({id, base::PatientId::random(), "wrapped " + id});
            EXPECT_TRUE(ledger->keyShelf().put(rows.back()).ok());
        }
    }
    std::optional<ledger::KeyRow> copied(const std::string& id) const {
        const auto database = *Database::open(folder.path(), Access::ReadOnly);
        return KeysCopy::of(*database)->byId(id).value();
    }
};

TEST_F(KeysCopied, EachIsFoundByItsId) {
    for (const ledger::KeyRow& row : rows) EXPECT_EQ(copied(row.id), row);
    EXPECT_EQ(copied("k"), std::nullopt);
    EXPECT_EQ(copied(""), std::nullopt);
}

TEST_F(KeysCopied, OneThatWasTakenOutOrEmptiedIsSo) {
    support::tamper(folder.path(), "DELETE FROM subject_key WHERE place = 4");
    support::tamper(folder.path(), "UPDATE subject_key SET text = '' WHERE place = 6");
    rows[5].text.clear();
    for (std::size_t i = 0; i < rows.size(); ++i)
        EXPECT_EQ(copied(rows[i].id), i == 3 ? std::nullopt : std::optional(rows[i])) << i;
}

TEST_F(KeysCopied, WhatIsBehindALaterOneIsNotFound) {
    support::exchangeRows(folder.path(), "sqlite_autoindex_subject_key_1", 2, 3);
    for (const ledger::KeyRow& row : rows)
        EXPECT_EQ(copied(row.id).has_value(), row.id[1] != '2') << row.id;
    support::exchangeRows(folder.path(), "sqlite_autoindex_subject_key_1", 2, 3);
    support::exchangeRows(folder.path(), "subject_key", 5, 6);
    for (std::size_t i = 0; i < rows.size(); ++i)
        EXPECT_EQ(copied(rows[i].id).has_value(), i != 5) << rows[i].id;
}

}  // namespace
}  // namespace store
