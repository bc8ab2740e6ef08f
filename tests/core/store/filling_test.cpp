// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A new record is filled before it has its name: it is there with all it begins with, or not.
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>

#include "support/ledgerdrafts.h"
#include "support/recordfolder.h"

namespace store {
namespace {

using base::Code;
using support::draftSaying;
using support::instantAt;
using support::RecordFolder;

/// Appends so many entries, each with a card, and ends with `last`.
FillNew fillWith(int entries, const std::function<base::Outcome()>& last) {
    return [=](ledger::Ledger& ledger) -> base::Outcome {
        for (int i = 0; i < entries; ++i) {
            const auto card = support::cardOf(std::to_string(i), {"word"});
            const auto done =
                ledger.append({draftSaying("first")}, instantAt(i), {.cards = {card}});
            if (!done) return done.error();
        }
        return last();
    };
}

base::Outcome nothingMore() { return base::Done{}; }

TEST(Filling, HappensOnceAndIsThereAfterwards) {
    const RecordFolder folder;
    {
        const auto made =
            SqlLedger::open(folder.path(), OpenMode::Demonstration, fillWith(3, nothingMore));
        ASSERT_TRUE(made.ok()) << base::english(made.error());
        EXPECT_EQ((*made)->head().size, 3U);
        EXPECT_EQ((*made)->cards({})->total, 3U);
        EXPECT_FALSE((*made)->isReadOnly());
        EXPECT_TRUE((*made)->check()->isIntact());
    }
    const auto again = SqlLedger::open(folder.path(), OpenMode::Demonstration, [](auto&) {
        ADD_FAILURE() << "a record that was there is filled";
        return base::Outcome(base::Done{});
    });
    ASSERT_TRUE(again.ok());
    EXPECT_EQ((*again)->head().size, 3U);
}

TEST(Filling, OneThatIsRefusedLeavesNoRecord) {
    const RecordFolder folder;
    const auto refused =
        SqlLedger::open(folder.path(), OpenMode::Demonstration,
                        fillWith(3, [] { return base::Outcome(base::Error{Code::StoreFull}); }));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::StoreFull);
    EXPECT_FALSE(std::filesystem::exists(folder.path()));
    const auto again =
        SqlLedger::open(folder.path(), OpenMode::Demonstration, fillWith(2, nothingMore));
    ASSERT_TRUE(again.ok()) << base::english(again.error());
    EXPECT_EQ((*again)->head().size, 2U);
}

// Somebody reads the new file (a backup, a search for viruses), so that its journal can't be taken
// in: renamed without it, the record would lack what it begins with.
TEST(Filling, OneWhoseJournalIsHeldGetsNoName) {
    const RecordFolder folder;
    std::unique_ptr<Database> reader;
    const auto hold = [&] {
        auto opened = Database::open(folder.path() + ".new", Access::ReadOnly);
        EXPECT_TRUE(opened.ok());
        if (!opened) return nothingMore();
        reader = std::move(*opened);
        EXPECT_TRUE(reader->runOnce(QStringLiteral("BEGIN")).ok());
        EXPECT_TRUE(reader->rows("SELECT count(*) FROM entry").ok());
        return nothingMore();
    };
    const auto refused = SqlLedger::open(folder.path(), OpenMode::Demonstration, fillWith(3, hold));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::StoreDisk);
    EXPECT_FALSE(std::filesystem::exists(folder.path()));
    reader.reset();
    const auto again =
        SqlLedger::open(folder.path(), OpenMode::Demonstration, fillWith(3, nothingMore));
    ASSERT_TRUE(again.ok()) << base::english(again.error());
    EXPECT_EQ((*again)->head().size, 3U);
}

// After each number of entries in turn: SIGKILL can't be caught, nothing of ours runs after it.
TEST(Filling, OneThatIsKilledLeavesNoRecordAndTheNextStartFillsItWhole) {
    const RecordFolder folder;
    for (int entries = 0; entries < 4; ++entries) {
        const pid_t child = ::fork();
        if (child == 0) {
            const auto die = [] {
                ::kill(::getpid(), SIGKILL);
                return nothingMore();
            };
            (void)SqlLedger::open(folder.path(), OpenMode::Demonstration, fillWith(entries, die));
            ::_exit(1);
        }
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "it was not killed while it filled";
        EXPECT_FALSE(std::filesystem::exists(folder.path())) << entries;
        EXPECT_TRUE(std::filesystem::exists(folder.path() + ".new")) << entries;
    }
    const auto opened =
        SqlLedger::open(folder.path(), OpenMode::Demonstration, fillWith(5, nothingMore));
    ASSERT_TRUE(opened.ok()) << base::english(opened.error());
    EXPECT_EQ((*opened)->head().size, 5U);
    EXPECT_EQ((*opened)->cards({})->total, 5U);
    EXPECT_TRUE((*opened)->check()->isIntact());
    EXPECT_FALSE(std::filesystem::exists(folder.path() + ".new"));
}

}  // namespace
}  // namespace store
