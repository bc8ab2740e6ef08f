// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>

#include "support/faultvfs.h"
#include "support/ledgerdrafts.h"
#include "support/recordfolder.h"

namespace store {
namespace {

using base::Code;
using support::cardOf;
using support::DiskOperation;
using support::draftSaying;
using support::instantAt;
using support::RecordFolder;

/// Refuses everything from the n-th write or sync on, for as long as it lives.
class DiskThatFails {
  public:
    DiskThatFails(int from, int code) {
        support::diskJudge() = [this, from, code](DiskOperation, const auto& half) {
            if (++m_seen < from) return SQLITE_OK;
            if (m_seen == from) half();
            return code;
        };
    }
    ~DiskThatFails() { support::diskJudge() = nullptr; }
    int seen() const { return m_seen; }

  private:
    int m_seen = 0;
};

/// One append on a disk that refuses from operation `from` on, then all that must still hold.
/// Returns whether the disk refused anything.
bool appendOnFailingDisk(int from, int sqliteCode, Code expected) {
    const RecordFolder folder;
    const auto card = cardOf("ann", {"ann"});
    const auto draft = draftSaying("in the middle");
    bool refused = false;
    {
        const auto ledger = folder.open();
        EXPECT_TRUE(ledger->append({draftSaying("before")}, instantAt(1), {}).ok());
        const auto head = ledger->head();
        {
            const DiskThatFails disk(from, sqliteCode);
            const auto written =
                ledger->append({draft, draftSaying("b")}, instantAt(2), {.cards = {card}});
            refused = disk.seen() >= from;
            EXPECT_EQ(written.ok(), !refused) << from;
            if (!written) {
                EXPECT_EQ(written.error().code, expected) << from;
            }
        }
        if (refused) {
            EXPECT_EQ(ledger->head(), head);
            EXPECT_EQ(ledger->find(draft.body.id).value(), std::nullopt);
            EXPECT_EQ(ledger->cards({})->total, 0U);
            EXPECT_TRUE(ledger->append({draft}, instantAt(3), {}).ok()) << "room again";
        }
    }
    const auto again = folder.open();
    if (!again) return false;
    EXPECT_TRUE(again->check()->isIntact()) << from;
    EXPECT_EQ(again->head().size, refused ? 2U : 3U);
    EXPECT_TRUE(again->find(draft.body.id).value().has_value());
    return refused;
}

TEST(FullDisk, AtEveryWriteOfAnAppendChangesNothing) {
    support::useFaultyDisk();
    int rounds = 0;
    while (rounds < 200 && appendOnFailingDisk(rounds + 1, SQLITE_FULL, Code::StoreFull)) ++rounds;
    EXPECT_GE(rounds, 3) << "the layer was never asked";
    EXPECT_LT(rounds, 200);
}

TEST(FullDisk, ADiskThatBreaksAtEveryWriteChangesNothing) {
    support::useFaultyDisk();
    int rounds = 0;
    while (rounds < 200 && appendOnFailingDisk(rounds + 1, SQLITE_IOERR_FSYNC, Code::StoreDisk))
        ++rounds;
    EXPECT_GE(rounds, 3);
    EXPECT_LT(rounds, 200);
}

TEST(FullDisk, ARecordThatCanNotBeMadeIsNotThereAtAll) {
    support::useFaultyDisk();
    int refusals = 0;
    for (int from = 1; from < 400; ++from) {
        const RecordFolder folder;
        const DiskThatFails disk(from, SQLITE_FULL);
        const auto opened = SqlLedger::open(folder.path(), OpenMode::Demonstration);
        if (opened) break;
        ++refusals;
        EXPECT_EQ(opened.error().code, Code::StoreFull) << from;
        support::diskJudge() = nullptr;
        EXPECT_NE(folder.open(), nullptr) << from;
    }
    EXPECT_GE(refusals, 5);
}

TEST(FullDisk, TheLargestSizeOfTheFileIsToldAsAFullDisk) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    Database& database = ledger->database();
    const int pages = database.value("PRAGMA page_count")->toInt();
    ASSERT_TRUE(database.rows("PRAGMA max_page_count = " + std::to_string(pages + 2)).ok());
    const auto refused = ledger->append({draftSaying(std::string(100'000, 'x'))}, instantAt(1), {});
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::StoreFull);
    EXPECT_TRUE(ledger->append({draftSaying("short")}, instantAt(1), {}).ok());
    EXPECT_TRUE(ledger->check()->isIntact());
}

// A limit of the system itself, without the layer: write() fails with EFBIG.
TEST(FullDisk, TheSystemsLimitOnFilesIsSurvived) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    rlimit before{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto oldHandler = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit tight{200'000, before.rlim_max};
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &tight), 0);
    const auto refused = ledger->append({draftSaying(std::string(400'000, 'x'))}, instantAt(1), {});
    ::setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, oldHandler);
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(refused.error().code == Code::StoreDisk || refused.error().code == Code::StoreFull);
    EXPECT_EQ(ledger->head().size, 0U);
    EXPECT_TRUE(ledger->append({draftSaying("after")}, instantAt(2), {}).ok());
    EXPECT_TRUE(ledger->check()->isIntact());
}

}  // namespace
}  // namespace store
