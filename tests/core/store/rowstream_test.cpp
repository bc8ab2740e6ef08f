// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rowstream.h"

#include <gtest/gtest.h>

#include "support/recordfolder.h"

namespace store {
namespace {

using base::Code;

/// The bytes of its value at which a row of `blob` has 64 MiB: each value comes after its kind and
/// its length, and the row after its own kind and the count of its values, in eight bytes each.
constexpr std::size_t mostOfBlob = (std::size_t{64} << 20U) - 6 * 8 - 1;

base::Outcome written(SqlLedger& ledger, std::size_t bytes, const TakeBytes& take) {
    Database& database = ledger.database();
    EXPECT_TRUE(database.run("DELETE FROM blob").ok());
    EXPECT_TRUE(database
                    .run("INSERT INTO blob (digest, bytes) VALUES ('x', zeroblob(?))",
                         {static_cast<qlonglong>(bytes)})
                    .ok());
    return writeRows(database, take);
}

TEST(RowStream, WritesNoRowThatWouldBeRefusedOnTheWayBack) {
    const support::RecordFolder folder;
    const auto from = folder.open("from.record"), to = folder.open("to.record");
    for (const char* table : {"meta", "right_edge"})
        ASSERT_TRUE(to->database().run(("DELETE FROM " + std::string(table)).c_str()).ok());
    RowReceiver rows(to->database());
    const auto done =
        written(*from, mostOfBlob, [&](const std::string& bytes) { return rows.take(bytes); });
    EXPECT_TRUE(done.ok()) << base::english(done.error());
    EXPECT_TRUE(rows.finish().ok());
    EXPECT_EQ(to->database().value("SELECT length(bytes) FROM blob")->toULongLong(), mostOfBlob);

    const auto refused =
        written(*from, mostOfBlob + 1, [](const std::string&) { return base::Done{}; });
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error(), (base::Error{Code::BackupRowTooLong, {"67108865", "67108864"}}));
}

}  // namespace
}  // namespace store
