// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/database.h"

#include <gtest/gtest.h>

#include "support/recordfolder.h"

namespace store {
namespace {

TEST(Database, AStatementEndsWhenItIsToldTo) {
    const support::RecordFolder folder;
    const auto database = *Database::open(folder.path(), Access::ReadWrite);
    // One row that is the last of many.
    const char* const late =
        "WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n LIMIT 500000) "
        "SELECT max(x) FROM n";
    int asked = 0;
    database->stopWhen([&] { return ++asked > 1000; });
    EXPECT_EQ(database->value(late)->toInt(), 500'000);
    EXPECT_GT(asked, 0);
    const int askedOnce = asked;
    database->stopWhen([&] { return ++asked > askedOnce + 1; });
    EXPECT_EQ(database->value(late).error().code, base::Code::VerifyStopped);
    bool isRead = false;
    const auto scanned = database->scan(late, [&](const RowView&) { return isRead = true; });
    EXPECT_EQ(scanned.error().code, base::Code::VerifyStopped);
    EXPECT_FALSE(isRead);
}

}  // namespace
}  // namespace store
