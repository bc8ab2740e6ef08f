// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <csignal>
#include <filesystem>
#include <thread>

#include "core/store/backedup.h"
#include "seal/signature.h"

namespace store {

using base::Code;
using support::bytesOfFile;
using support::draftSaying;
using support::instantAt;
using support::putFile;

class Backup : public support::BackedUp {
  protected:
    bool isThere(const std::string& name) const {
        return std::filesystem::exists(m_folder.path(name));
    }
    Code backupRefusal() const {
        const auto copied = backUp(m_folder.path(), m_file);
        return copied ? Code::Internal : copied.error().code;
    }
    std::string foundIn(const SqlLedger& ledger) const {
        const auto entries = ledger.ofSubject(m_patient).value();
        return entries.empty() || !entries[0].isOpen ? "" : entries[0].body.data["word"];
    }
};

TEST_F(Backup, NamesTheLedgerItsHeadAndWhoMayOpenItAndNothingOfThem) {
    const auto head = readBackupHead(m_file);
    ASSERT_TRUE(head.ok());
    EXPECT_EQ(head->ledger, (ledger::Former{m_id, m_head}));
    EXPECT_EQ(head->boxes.size(), 3U);  // Iris, Tam, the sheet
    struct stat info {};
    ASSERT_EQ(::stat(m_file.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0600U);
    const std::string bytes = bytesOfFile(m_file);
    for (const char* word : {"Iris", "Mora", "Oduya", "Quillfeather", "SQLite", "a pack"})
        EXPECT_EQ(bytes.find(word), std::string::npos) << word;
    EXPECT_FALSE(isThere("ward.backup.part"));
}

TEST_F(Backup, ComesBackByEveryPersonAndByTheSheet) {
    ASSERT_TRUE(restore("iris.record", "Iris Mora", m_irises).ok());
    ASSERT_TRUE(restore("tam.record", "Tam Oduya", m_tams).ok());
    const auto bySheet = restore("sheet.record", "", m_sheet);
    ASSERT_TRUE(bySheet.ok()) << base::english(bySheet.error());
    for (const char* name : {"iris.record", "tam.record", "sheet.record"}) {
        const auto ledger = m_folder.open(name);
        ASSERT_NE(ledger, nullptr) << name;
        EXPECT_NE(ledger->id(), m_id);
        EXPECT_EQ(ledger->former(), (std::vector<ledger::Former>{{m_id, m_head}}));
        EXPECT_EQ(ledger->head().size, m_head.size + 1);
        EXPECT_EQ(ledger->headAt(m_head.size).value(), m_head) << "what papers say still holds";
        EXPECT_TRUE(ledger->check()->isIntact());
        EXPECT_EQ(ledger->blob(m_blob).value(), "a pack");
        const auto gate = gateOf(*ledger);
        ASSERT_TRUE(gate->signIn("Tam Oduya", secret(m_tams)).now().ok()) << name;
        EXPECT_EQ(foundIn(*ledger), "Quillfeather");
        EXPECT_EQ(ledger->cards({.words = {"quill"}})->total, 1U);
        EXPECT_TRUE(ledger->append({draftSaying("later", m_patient)}, instantAt(9), {}).ok());
        EXPECT_TRUE(ledger->check()->isIntact());
    }
}

TEST_F(Backup, TheEntryThatGoesOnIsSignedAndSaysFromWhere) {
    ASSERT_TRUE(asIris("new.record").ok());
    const auto ledger = m_folder.open("new.record");
    const auto gate = gateOf(*ledger);
    ASSERT_TRUE(gate->signIn("Iris Mora", secret(m_irises)).now().ok());
    const auto entry = ledger->readFrom(m_head.size, 1)->front();
    EXPECT_EQ(entry.ledger, ledger->id());
    EXPECT_EQ(entry.body.type, "ledger-continued");
    EXPECT_EQ(entry.body.data["from"], m_id.text());
    EXPECT_EQ(entry.body.data["size"], m_head.size);
    EXPECT_EQ(entry.body.data["root"], m_head.root);
    EXPECT_EQ(entry.body.by, gate->person()->said.staff);
    ASSERT_EQ(entry.body.sigs.size(), 1U);
    EXPECT_TRUE(
        seal::verifyBody(entry.body.sigs[0], ledger->id(), entry.body, gate->identity()->known())
            .ok());
}

TEST_F(Backup, IdsThatNoEntryTellsOfAreNotTrusted) {
    ASSERT_TRUE(asIris("new.record").ok());
    const auto signsIn = [&] {
        const auto ledger = m_folder.open("new.record");
        const auto done = gateOf(*ledger)->signIn("Iris Mora", secret(m_irises)).now();
        return done ? Code::Internal : done.error().code;
    };
    EXPECT_EQ(signsIn(), Code::Internal);
    // One more former id, of the first entry alone or of all: every entry fits it.
    const auto forge = [&](std::uint64_t size) {
        const auto ledger = m_folder.open("new.record");
        const auto& id = size == 1 ? m_id : ledger->id();
        std::vector<ledger::Former> former = {{id, ledger->headAt(size).value().value()},
                                              {m_id, m_head}};
        if (size > m_head.size) std::swap(former[0], former[1]);
        ASSERT_TRUE(putLineage(ledger->database(), ledger::Lineage(ledger->id(), former)).ok());
    };
    for (const std::uint64_t size : {std::uint64_t{1}, m_head.size + 1}) {
        forge(size);
        EXPECT_TRUE(m_folder.open("new.record")->check()->isIntact());
        EXPECT_EQ(signsIn(), Code::AccessChanged) << size;
    }
}

TEST_F(Backup, AgainAfterRestoringIsABackupOfTheNewLedger) {
    ASSERT_TRUE(asIris("new.record").ok());
    const std::string second = m_folder.path("second.backup");
    const auto copied = backUp(m_folder.path("new.record"), second);
    ASSERT_TRUE(copied.ok()) << base::english(copied.error());
    ASSERT_TRUE(restoreFrom(second, "third.record", "Tam Oduya", m_tams).ok());
    {
        const auto ledger = m_folder.open("third.record");
        ASSERT_EQ(ledger->former().size(), 2U);
        EXPECT_TRUE(gateOf(*ledger)->signIn("Iris Mora", secret(m_irises)).now().ok());
    }
    // The ledger that was gone on from is not put back over the one that went on.
    EXPECT_EQ(asIris("third.record").error().code, Code::BackupOverNewer);
}

TEST_F(Backup, WhatWasErasedDoesNotComeBack) {
    {
        const auto ledger = m_folder.open();
        const auto gate = gateOf(*ledger);
        ASSERT_TRUE(gate->signIn("Iris Mora", secret(m_irises)).now().ok());
        ASSERT_TRUE(
            ledger->append({draftSaying("erased")}, instantAt(9), {.forgets = m_patient}).ok());
    }
    ASSERT_TRUE(backUp(m_folder.path(), m_file).ok());
    ASSERT_TRUE(asIris("new.record").ok());
    const auto ledger = m_folder.open("new.record");
    ASSERT_TRUE(gateOf(*ledger)->signIn("Iris Mora", secret(m_irises)).now().ok());
    EXPECT_EQ(foundIn(*ledger), "");
    EXPECT_EQ(ledger->ofSubject(m_patient)->size(), 1U);
}

TEST_F(Backup, IsOfOneMomentWhileAnotherCopyWrites) {
    std::atomic<int> written = 0;
    std::atomic<bool> isEnough = false;
    std::thread writer([&] {
        const auto ledger = m_folder.open();
        const auto gate = gateOf(*ledger);
        ASSERT_TRUE(gate->signIn("Tam Oduya", secret(m_tams)).now().ok());
        for (; !isEnough; ++written)
            ASSERT_TRUE(
                ledger->append({draftSaying("busy", m_patient)}, instantAt(written), {}).ok());
    });
    // As many as it takes until there were eight with something written meanwhile.
    std::vector<ledger::Head> heads;
    for (int busy = 0; busy < 8 && !HasFailure();) {
        const int before = written;
        const auto copied = backUp(m_folder.path(), m_file);
        EXPECT_TRUE(copied.ok()) << base::english(copied.error());
        if (copied) heads.push_back(copied->head);
        busy += written > before ? 1 : 0;
    }
    isEnough = true;
    writer.join();
    ASSERT_GE(heads.size(), 8U);
    EXPECT_NE(heads.front(), heads.back());
    const auto ledger = m_folder.open();
    for (const ledger::Head& head : heads) EXPECT_EQ(ledger->headAt(head.size).value(), head);
    EXPECT_TRUE(asIris("new.record").ok());
}

TEST_F(Backup, RefusesWhatHasNoKeysAndTakesNoOtherFilesPlace) {
    ASSERT_NE(m_folder.open("plain.record"), nullptr);
    const auto plain = backUp(m_folder.path("plain.record"), m_folder.path("plain.backup"));
    ASSERT_FALSE(plain.ok());
    EXPECT_EQ(plain.error().code, Code::BackupNoKeys);
    EXPECT_FALSE(isThere("plain.backup"));
    putFile(m_folder.path("letter.txt"), "a letter to keep");
    const auto over = backUp(m_folder.path(), m_folder.path("letter.txt"));
    ASSERT_FALSE(over.ok());
    EXPECT_EQ(over.error().code, Code::BackupNotOurs);
    EXPECT_EQ(bytesOfFile(m_folder.path("letter.txt")), "a letter to keep");
    const auto self = backUp(m_folder.path(), m_folder.path());
    ASSERT_FALSE(self.ok());
    EXPECT_EQ(self.error().code, Code::BackupNotOurs);
    const auto missing = backUp(m_folder.path("nothing.record"), m_file);
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.error().code, Code::StoreMissing);
}

TEST_F(Backup, ARecordThatIsNotSoundDoesNotReplaceTheCopyOfOneThatWas) {
    const std::string before = bytesOfFile(m_file);
    grow();
    {
        const auto database = Database::open(m_folder.path(), Access::ReadWrite);
        ASSERT_TRUE(database.ok());
        ASSERT_TRUE((*database)->runOnce(QStringLiteral("DROP TRIGGER entry_no_update")).ok());
        ASSERT_TRUE((*database)
                        ->runOnce(QStringLiteral("UPDATE entry SET bytes = x'7b7d' WHERE seq = 1"))
                        .ok());
    }
    EXPECT_EQ(backupRefusal(), Code::StoreEdgeWrong);
    EXPECT_EQ(bytesOfFile(m_file), before);
}

TEST_F(Backup, AFullDiskLeavesTheFormerOneWhole) {
    const std::string before = bytesOfFile(m_file);
    grow();
    // Who has it open has made SQLite's shared memory, which is a file too.
    const auto open = m_folder.open();
    rlimit usual{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &usual), 0);
    const auto former = std::signal(SIGXFSZ, SIG_IGN);
    for (const rlim_t most : {std::size_t{0}, std::size_t{1000}, before.size() - 1}) {
        const rlimit little{most, usual.rlim_max};
        ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &little), 0);
        const Code code = backupRefusal();
        ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &usual), 0);
        EXPECT_EQ(code, Code::StoreFull) << most;
        EXPECT_EQ(bytesOfFile(m_file), before);
        EXPECT_FALSE(isThere("ward.backup.part"));
    }
    std::signal(SIGXFSZ, former);
    EXPECT_TRUE(backUp(m_folder.path(), m_file).ok());
}

TEST_F(Backup, KilledAtAnyPieceLeavesTheFormerOneWhole) {
    const std::string before = bytesOfFile(m_file);
    for (int pieces = 0; pieces < 4; ++pieces) {
        const pid_t child = ::fork();
        if (child == 0) {
            auto writer = BackupWriter::begin(m_file);
            const auto head = readBackupHead(m_file);
            if (!writer || !head) ::_exit(1);
            const auto rows = seal::readKeyRows(head->access);
            if (!writer->writeHead(*head, **rows)) ::_exit(2);
            for (int i = 0; i < pieces; ++i)
                if (!writer->write(std::string(70'000, 'x'))) ::_exit(3);
            std::raise(SIGKILL);
        }
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << status;
        EXPECT_TRUE(isThere("ward.backup.part"));
        EXPECT_EQ(bytesOfFile(m_file), before);
    }
    // What was left of them is in nobody's way.
    ASSERT_TRUE(backUp(m_folder.path(), m_file).ok());
    EXPECT_FALSE(isThere("ward.backup.part"));
    EXPECT_TRUE(asIris("new.record").ok());
}

TEST_F(Backup, TwoAtOnceDoNotMixTheirPieces) {
    auto first = BackupWriter::begin(m_file);
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(backupRefusal(), Code::StoreBusy);
}

}  // namespace store
