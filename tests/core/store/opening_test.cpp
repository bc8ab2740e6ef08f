// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QDir>
#include <filesystem>

#include "store/recordfile.h"
#include "support/ledgerdrafts.h"
#include "support/paths.h"
#include "support/recordfolder.h"

namespace store {
namespace {

using base::Code;
using support::draftSaying;
using support::instantAt;
using support::RecordFolder;

/// A closed record of five entries.
void makeSmallRecord(const RecordFolder& folder) {
    const auto ledger = folder.open();
    for (int i = 0; i < 5; ++i)
        ASSERT_TRUE(ledger->append({draftSaying(std::to_string(i))}, instantAt(i), {}).ok());
}

TEST(Opening, MakesARecordThatOnlyItsOwnerMayRead) {
    const RecordFolder folder;
    const std::string path = folder.path("deeper/still/ward.record");
    const auto opened = SqlLedger::open(path, OpenMode::Demonstration);
    ASSERT_TRUE(opened.ok());
    ASSERT_TRUE((*opened)->append({draftSaying("a")}, instantAt(1), {}).ok());
    for (const auto& file : std::filesystem::directory_iterator(folder.path("deeper/still"))) {
        struct stat info {};
        ASSERT_EQ(::stat(file.path().c_str(), &info), 0);
        EXPECT_EQ(info.st_mode & 0777U, 0600U) << file.path();
    }
}

TEST(Opening, TakesFromOthersWhatTheyWereGiven) {
    const RecordFolder folder;
    makeSmallRecord(folder);
    ASSERT_EQ(::chmod(folder.path().c_str(), 0664), 0);
    ASSERT_NE(folder.open(), nullptr);
    struct stat info {};
    ASSERT_EQ(::stat(folder.path().c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0600U);
}

// SQLite copies its journal into the file from the first page on; killed there, the file says that
// it has more pages than it has, and the journal has them ("WAL-mode File Format", recovery).
TEST(Opening, AFileThatIsBehindItsJournalIsWhole) {
    const RecordFolder folder;
    {
        const auto ledger = folder.open();
        ASSERT_TRUE(ledger->database().rows("PRAGMA wal_checkpoint(TRUNCATE)").ok());
        const int pages = ledger->database().value("PRAGMA page_count")->toInt();
        for (int i = 0; i < 40; ++i)
            ASSERT_TRUE(
                ledger->append({draftSaying(std::string(500, 'x'))}, instantAt(i), {}).ok());
        const int later = ledger->database().value("PRAGMA page_count")->toInt();
        ASSERT_GT(later, pages);
        std::string file = support::bytesOfFile(folder.path());
        file[30] = static_cast<char>(later / 256);  // pages: four bytes from 28 on
        file[31] = static_cast<char>(later % 256);
        support::putFile(folder.path("copy.record"), file);
        support::putFile(folder.path("copy.record-wal"),
                         support::bytesOfFile(folder.path() + "-wal"));
    }
    const auto copy = folder.open("copy.record");
    ASSERT_NE(copy, nullptr);
    EXPECT_EQ(copy->head().size, 40U);
    EXPECT_TRUE(copy->check()->isIntact());
}

TEST(Opening, SetsUpTheFileAsTheRecordNeedsIt) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    Database& database = ledger->database();
    EXPECT_EQ(database.value("PRAGMA journal_mode")->toString(), QStringLiteral("wal"));
    EXPECT_EQ(database.value("PRAGMA synchronous")->toInt(), 2);  // FULL
    EXPECT_EQ(database.value("PRAGMA foreign_keys")->toInt(), 1);
    EXPECT_EQ(database.value("PRAGMA application_id")->toInt(), applicationId);
}

TEST(Opening, FindsWhatWasWrittenBefore) {
    const RecordFolder folder;
    ledger::Head head;
    const auto draft = draftSaying("kept");
    {
        const auto ledger = folder.open();
        ASSERT_TRUE(ledger->append({draft}, instantAt(1), {}).ok());
        head = ledger->head();
    }
    const auto again = folder.open();
    EXPECT_EQ(again->head(), head);
    EXPECT_EQ(again->find(draft.body.id).value()->body.data["word"], "kept");
    EXPECT_EQ(again->append({draftSaying("next")}, instantAt(2), {})->at(0).seq, 1U);
    EXPECT_TRUE(again->check()->isIntact());
}

TEST(Opening, TellsTheSecondOfTwoOpensInOneProcess) {
    const RecordFolder folder;
    {
        const auto first = folder.open();
        EXPECT_EQ(folder.refusal(), Code::StoreLocked);
        const auto reader = SqlLedger::openToRead(folder.path(), OpenMode::Demonstration);
        ASSERT_TRUE(reader.ok());
        EXPECT_TRUE((*reader)->isReadOnly());
    }
    EXPECT_NE(folder.open(), nullptr);
}

TEST(Opening, TellsASecondCopyOfTheProgram) {
    const RecordFolder folder;
    int ready[2];
    int leave[2];
    ASSERT_EQ(::pipe(ready), 0);
    ASSERT_EQ(::pipe(leave), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(leave[1]);
        const auto held = SqlLedger::open(folder.path(), OpenMode::Demonstration);
        const char answer = held.ok() ? '1' : '0';
        char nothing = 0;
        if (::write(ready[1], &answer, 1) != 1) ::_exit(2);
        const auto ended = ::read(leave[0], &nothing, 1);
        ::_exit(ended == 0 ? 0 : 3);
    }
    char answer = 0;
    ASSERT_EQ(::read(ready[0], &answer, 1), 1);
    ASSERT_EQ(answer, '1');
    EXPECT_EQ(folder.refusal(), Code::StoreLocked);
    for (const int end : {leave[0], leave[1], ready[0], ready[1]}) ::close(end);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
    EXPECT_NE(folder.open(), nullptr) << "the lock went with the process";
}

TEST(Opening, RefusesADirectoryInItsPlace) {
    const RecordFolder folder;
    std::filesystem::create_directory(folder.path());
    EXPECT_EQ(folder.refusal(), Code::StoreNotAFile);
}

TEST(Opening, RefusesWhatIsNotOursAndLeavesItAlone) {
    const RecordFolder folder;
    support::putFile(folder.path(), std::string(5000, 'x'));
    EXPECT_EQ(folder.refusal(), Code::StoreNotOurs);
    support::putFile(folder.path(), "a note");
    EXPECT_EQ(folder.refusal(), Code::StoreNotOurs);
    EXPECT_EQ(support::bytesOfFile(folder.path()), "a note");
    {
        const auto other = Database::open(folder.path("other"), Access::ReadWrite);
        ASSERT_TRUE((*other)->runOnce(QStringLiteral("CREATE TABLE t (x)")).ok());
    }
    const std::string before = support::bytesOfFile(folder.path("other"));
    EXPECT_EQ(folder.refusal("other"), Code::StoreNotOurs);
    EXPECT_EQ(support::bytesOfFile(folder.path("other")), before);
}

TEST(Opening, RefusesAFileThatWasCutShort) {
    const RecordFolder folder;
    makeSmallRecord(folder);
    const std::string whole = support::bytesOfFile(folder.path());
    for (const std::size_t size :
         {std::size_t{0}, std::size_t{7}, std::size_t{60}, std::size_t{100}, std::size_t{4096},
          whole.size() / 2, whole.size() - 1}) {
        support::putFile(folder.path(), whole.substr(0, size));
        EXPECT_EQ(folder.refusal(), Code::StoreCutShort) << size;
        EXPECT_EQ(support::bytesOfFile(folder.path()).size(), size) << "was left alone";
    }
}

TEST(Opening, DoesNotBeginAnewWhereOnlyAJournalIsLeft) {
    const RecordFolder folder;
    support::putFile(folder.path() + "-wal", "something");
    EXPECT_EQ(folder.refusal(), Code::StoreCutShort);
}

TEST(Opening, BeginsAgainAfterARecordThatWasNeverFinished) {
    const RecordFolder folder;
    support::putFile(folder.path() + ".new", "half");
    EXPECT_NE(folder.open(), nullptr);
    EXPECT_FALSE(std::filesystem::exists(folder.path() + ".new"));
}

TEST(Opening, RefusesANewerRecordByItsVersion) {
    const RecordFolder folder;
    makeSmallRecord(folder);
    ASSERT_TRUE(Database::open(folder.path(), Access::ReadWrite)
                    .value()
                    ->runOnce(QStringLiteral("PRAGMA user_version = 99"))
                    .ok());
    const std::string before = support::bytesOfFile(folder.path());
    const auto refused = SqlLedger::open(folder.path(), OpenMode::Demonstration);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error(), (base::Error{Code::StoreNewer, {"99", "6"}}));
    EXPECT_EQ(support::bytesOfFile(folder.path()), before);
}

TEST(Opening, KeepsInventedPeopleAndPatientsApart) {
    const RecordFolder folder;
    makeSmallRecord(folder);
    const auto refused = SqlLedger::open(folder.path(), OpenMode::Real);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::StoreOtherKind);
}

TEST(Opening, ReadingNeedsARecord) {
    const RecordFolder folder;
    const auto refused = SqlLedger::openToRead(folder.path(), OpenMode::Demonstration);
    EXPECT_EQ(refused.error().code, Code::StoreMissing);
    EXPECT_FALSE(std::filesystem::exists(folder.path()));
}

/// What a user does who may read the file and nothing else; 0 when all went as it should.
int useWithoutRightToWrite(const std::string& path) {
    if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0)) return 1;
    const auto opened = SqlLedger::open(path, OpenMode::Demonstration);
    if (!opened) return 2;
    SqlLedger& ledger = **opened;
    if (!ledger.isReadOnly() || ledger.readFrom(0, 10)->size() != 5) return 3;
    const auto refused = ledger.append({draftSaying("x")}, instantAt(1), {});
    if (refused.ok() || refused.error().code != Code::StoreReadOnly) return 4;
    const auto blob = ledger.putBlob("x");
    if (blob.ok() || blob.error().code != Code::StoreReadOnly) return 5;
    const auto rebuilt = ledger.rebuild({});
    if (rebuilt.ok() || rebuilt.error().code != Code::StoreReadOnly) return 6;
    if (!ledger.check()->isIntact() || ledger.head().size != 5) return 7;
    return SqlLedger::openToRebuild(path, OpenMode::Demonstration).ok() ? 8 : 0;
}

TEST(Opening, ReadsWhatItMayNotWrite) {
    // Not below the test's own home, which an unprivileged user can't enter.
    std::string folder = "/tmp/ninebark-read-only-XXXXXX";
    ASSERT_NE(::mkdtemp(folder.data()), nullptr);
    const std::string path = folder + "/ward.record";
    {
        const auto ledger = SqlLedger::open(path, OpenMode::Demonstration);
        for (int i = 0; i < 5; ++i)
            ASSERT_TRUE((*ledger)->append({draftSaying("a")}, instantAt(i), {}).ok());
    }
    ::chmod(path.c_str(), 0444);
    ::chmod(folder.c_str(), 0555);
    const pid_t child = ::fork();
    if (child == 0) ::_exit(useWithoutRightToWrite(path));
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 0);
    ::chmod(folder.c_str(), 0755);
    std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace store
