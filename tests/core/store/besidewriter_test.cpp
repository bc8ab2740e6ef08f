// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A record that is read while another connection writes to it.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cstring>

#include "support/ledgerdrafts.h"
#include "support/recordfolder.h"

namespace store {

using support::draftSaying;
using support::instantAt;

/// Does something once, right before any connection begins a statement with these words. SQLite
/// calls it before the statement takes its lock ("sqlite3_trace_v2", SQLITE_TRACE_STMT).
class BeforeStatement : public testing::Test {
  protected:
    void SetUp() override {
        sqlite3_auto_extension(reinterpret_cast<void (*)()>(&BeforeStatement::watch));
    }
    void TearDown() override { sqlite3_reset_auto_extension(); }

    void before(const char* words, std::function<void()> act) {
        s_words = words;
        s_act = std::move(act);
    }
    static bool isDone() { return !s_act; }

  private:
    static int watch(sqlite3* connection, char**, const sqlite3_api_routines*) {
        return sqlite3_trace_v2(connection, SQLITE_TRACE_STMT, &BeforeStatement::look, nullptr);
    }
    static int look(unsigned, void*, void* statement, void*) {
        const char* const sql = sqlite3_sql(static_cast<sqlite3_stmt*>(statement));
        const bool isIt = s_act && std::strncmp(sql, s_words, std::strlen(s_words)) == 0;
        if (isIt) std::exchange(s_act, nullptr)();
        return 0;
    }
    static inline const char* s_words = "";
    static inline std::function<void()> s_act;
};

namespace {

TEST_F(BeforeStatement, OpeningToReadSeesTheEndAndItsEntryAtOneMoment) {
    const support::RecordFolder folder;
    const auto writer = folder.open();
    ASSERT_TRUE(writer->append({draftSaying("a")}, instantAt(1), {}).ok());
    before("SELECT seq, bytes FROM entry ORDER BY seq DESC",
           [&] { EXPECT_TRUE(writer->append({draftSaying("b")}, instantAt(2), {}).ok()); });
    const auto reader = SqlLedger::openToRead(folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(isDone()) << "something was written in between";
    ASSERT_TRUE(reader.ok()) << base::english(reader.error());
    EXPECT_EQ((*reader)->head().size, 1U);
    EXPECT_TRUE((*reader)->check()->isIntact());
}

TEST_F(BeforeStatement, AMomentHasTheHeadOfThenAndNothingLater) {
    const support::RecordFolder folder;
    const auto writer = folder.open();
    ASSERT_TRUE(writer->append({draftSaying("a")}, instantAt(1), {}).ok());
    const auto reader = *SqlLedger::openToRead(folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(writer->append({draftSaying("b")}, instantAt(2), {}).ok());
    {
        const auto moment = reader->moment();
        ASSERT_TRUE(moment.ok());
        EXPECT_EQ(reader->head(), writer->head());
        ASSERT_TRUE(writer->append({draftSaying("c")}, instantAt(3), {}).ok());
        EXPECT_EQ(reader->check()->head, reader->head());
        EXPECT_EQ(reader->readFrom(0, 9)->size(), 2U);
    }
    EXPECT_EQ(reader->readFrom(0, 9)->size(), 3U);
}

/// Whether some other open file description, of this process too, holds a lock on the file.
/// fcntl(2), "Open file description locks": they conflict with traditional record locks.
bool isLocked(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDWR);
    struct flock asked {};
    asked.l_type = F_WRLCK;
    asked.l_whence = SEEK_SET;
    EXPECT_EQ(::fcntl(file, F_OFD_GETLK, &asked), 0);
    const bool is = asked.l_type != F_UNLCK;
    // Closing it would drop the very lock that was looked for.
    return is;
}

TEST(BesideAWriter, ItsLockOutlivesWhoReadsBesideIt) {
    const support::RecordFolder folder;
    const auto writer = folder.open();
    ASSERT_TRUE(writer->append({draftSaying("a")}, instantAt(1), {}).ok());
    ASSERT_TRUE(isLocked(folder.path())) << "a connection to a write-ahead log keeps its lock";
    for (int i = 0; i < 2; ++i) {
        const auto reader =
            SqlLedger::openToRead(folder.path(), OpenMode::Demonstration, Access::Beside);
        ASSERT_TRUE(reader.ok()) << base::english(reader.error());
        EXPECT_TRUE((*reader)->isReadOnly());
        EXPECT_EQ((*reader)->head(), writer->head());
    }
    EXPECT_TRUE(isLocked(folder.path()));
}

}  // namespace
}  // namespace store
