// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <filesystem>

#include "core/store/backedup.h"
#include "ledger/bytes.h"
#include "store/values.h"
#include "support/faultvfs.h"

namespace store {

using base::Code;
using support::bytesOfFile;
using support::putFile;

class Restore : public support::BackedUp {
  protected:
    static Code codeOf(const base::Outcome& outcome) {
        return outcome ? Code::Internal : outcome.error().code;
    }
    Code refusal(const std::string& bytes) {
        putFile(m_folder.path("other.backup"), bytes);
        const Code code =
            codeOf(restoreFrom(m_folder.path("other.backup"), "x.record", "Iris Mora", m_irises));
        EXPECT_TRUE(leftNothing());
        return code;
    }
    bool leftNothing() const {
        for (const char* ending : {"", "-wal", "-shm", ".restoring", ".restoring-wal"})
            if (std::filesystem::exists(m_folder.path("x.record") + ending)) return false;
        return true;
    }
};

TEST_F(Restore, WrongPassphraseNameOrSheetOpensNothing) {
    EXPECT_EQ(codeOf(restore("x.record", "Iris Mora", m_tams)), Code::SealWrongPassphrase);
    EXPECT_EQ(codeOf(restore("x.record", "Ivo Mora", m_irises)), Code::SealWrongPassphrase);
    const auto other = seal::Recovery::generate().letters();
    EXPECT_EQ(codeOf(restore("x.record", "", std::string(other.view()))), Code::SealKeyMissing);
    EXPECT_TRUE(leftNothing());
}

TEST_F(Restore, ABackupCutShortAnywhereIsSaidToBe) {
    const std::string whole = bytesOfFile(m_file);
    for (std::size_t size = 25; size < whole.size(); size += 97)
        ASSERT_EQ(refusal(whole.substr(0, size)), Code::BackupCutShort) << size;
    EXPECT_EQ(refusal(whole.substr(0, whole.size() - 1)), Code::BackupCutShort);
    EXPECT_EQ(refusal(""), Code::BackupNotOurs);
    EXPECT_EQ(refusal("something else\n"), Code::BackupNotOurs);
    EXPECT_EQ(refusal("ninebark backup 2\nwhat comes one day"), Code::BackupNewer);
    EXPECT_EQ(refusal(whole + "x"), Code::BackupChanged);
}

TEST_F(Restore, AChangedByteAnywhereIsNoticed) {
    const std::string whole = bytesOfFile(m_file);
    for (std::size_t at = 0; at < whole.size(); at += at < 64 ? 1 : 61) {
        std::string changed = whole;
        changed[at] = static_cast<char>(changed[at] ^ 1);
        ASSERT_NE(refusal(changed), Code::Internal) << at;
    }
    EXPECT_EQ(codeOf(asIris("x.record")), Code::Internal);
}

TEST_F(Restore, AHeadThatSaysAnotherSizeIsNoticed) {
    // The head is readable, so verify takes it for a known one; opened, it has to hold.
    std::string changed = bytesOfFile(m_file);
    const std::string size = "\"size\":" + std::to_string(m_head.size);
    const std::size_t at = changed.find(size);
    ASSERT_NE(at, std::string::npos);
    changed.replace(at, size.size(), "\"size\":" + std::to_string(m_head.size + 1));
    EXPECT_EQ(refusal(changed), Code::BackupChanged);
}

TEST_F(Restore, OverANewerRecordIsRefused) {
    const ledger::Head newer = grow();
    const auto done = asIris("ward.record");
    ASSERT_EQ(codeOf(done), Code::BackupOverNewer);
    EXPECT_EQ(done.error().args,
              (std::vector<std::string>{std::to_string(newer.size), std::to_string(m_head.size)}));
    EXPECT_EQ(m_folder.open()->head(), newer);
}

/// It may be newer than the backup, and nobody can tell: the way out is beside it.
TEST_F(Restore, OverADamagedRecordIsRefusedWithAWayOut) {
    const std::string whole = bytesOfFile(m_folder.path());
    const auto expectRefused = [&] {
        const std::string damaged = bytesOfFile(m_folder.path());
        const auto done = asIris("ward.record");
        ASSERT_EQ(codeOf(done), Code::BackupOverDamaged);
        EXPECT_EQ(done.error().args, std::vector<std::string>{m_folder.path()});
        EXPECT_NE(base::english(done.error()).find("to another folder"), std::string::npos);
        EXPECT_EQ(bytesOfFile(m_folder.path()), damaged);
    };
    putFile(m_folder.path(), whole.substr(0, whole.size() / 2));
    expectRefused();
    putFile(m_folder.path(), whole);
    support::tamper(m_folder.path(), "DELETE FROM right_edge");
    expectRefused();
    removeDatabase(m_folder.path());
    putFile(m_folder.path(), whole);
    support::tamper(m_folder.path(), "UPDATE entry SET bytes = x'7b7d'");
    expectRefused();
    EXPECT_EQ(codeOf(asIris("x.record")), Code::Internal) << "and there it is";
}

TEST_F(Restore, OverAnotherLedgerIsRefused) {
    const auto id = m_folder.open("x.record")->id();
    EXPECT_EQ(codeOf(asIris("x.record")), Code::BackupOverOther);
    EXPECT_EQ(m_folder.open("x.record")->id(), id);
}

TEST_F(Restore, OverAnOlderStateKeepsThatBesideIt) {
    const std::string older = bytesOfFile(m_folder.path());
    grow();
    ASSERT_TRUE(backUp(m_folder.path(), m_file).ok());
    putFile(m_folder.path("x.record"), older);
    ASSERT_EQ(codeOf(asIris("x.record")), Code::Internal);
    EXPECT_EQ(m_folder.open("x.record")->head().size, m_head.size + 2);
    const std::string kept = keptBesideRestored("x.record", m_head.size);
    EXPECT_EQ(m_folder.open(kept)->head(), m_head);
}

TEST_F(Restore, OverAForkOfTheSameLedgerIsRefused) {
    putFile(m_folder.path("fork.record"), bytesOfFile(m_folder.path()));
    grow();
    ASSERT_TRUE(backUp(m_folder.path(), m_file).ok());
    const ledger::Head fork = grow("fork.record");
    EXPECT_EQ(codeOf(asIris("fork.record")), Code::BackupOverOther);
    EXPECT_EQ(m_folder.open("fork.record")->head(), fork);
}

TEST_F(Restore, BesideACopyThatHasTheFolderOpenIsRefused) {
    const auto open = m_folder.open();
    EXPECT_EQ(codeOf(asIris("ward.record")), Code::StoreLocked);
}

/// Whoever knows the public keys can seal a file that opens.
TEST_F(Restore, ASealedFileThatHoldsNoRecordIsRefused) {
    const auto head = readBackupHead(m_file).value();
    const auto rows = seal::readKeyRows(head.access).value().value();
    const auto table = [](const std::string& name, const std::vector<std::string>& columns) {
        ledger::ByteWriter out;
        out.count(0).text(name).count(columns.size());
        for (const std::string& column : columns) out.text(column);
        const std::string bytes = out.take();
        return lengthText(bytes.size()) + bytes;
    };
    const auto row = [](std::uint64_t kind) {
        ledger::ByteWriter out;
        const std::string bytes =
            out.count(1).count(2).count(kind).text("x").count(2).text("y").take();
        return lengthText(bytes.size()) + bytes;
    };
    const std::string meta = table("meta", {"key", "value"});
    for (const std::string& stream :
         {std::string(), std::string(100, 'x'), std::string("\xff\xff\xff\xff"),
          lengthText(8) + std::string(8, 'x'), meta, row(2), meta + row(2), meta + row(9),
          meta + row(2) + row(2), table("meta", {"key"}), table("sqlite_schema", {"name"}),
          table("meta\" (key) VALUES (1); --", {"key"}), meta + row(2).substr(0, 20)}) {
        auto writer = BackupWriter::begin(m_folder.path("other.backup"));
        ASSERT_TRUE(writer.ok());
        ASSERT_TRUE(writer->writeHead(head, rows).ok());
        ASSERT_TRUE(writer->write(stream).ok());
        ASSERT_TRUE(writer->finish().ok());
        const auto done =
            restoreFrom(m_folder.path("other.backup"), "x.record", "Iris Mora", m_irises);
        EXPECT_FALSE(done.ok());
        EXPECT_TRUE(leftNothing());
    }
}

/// Fails the n-th write or sync and all after it, as a full disk does.
TEST_F(Restore, ADiskThatIsFullAtAnyWriteLeavesNothingHalf) {
    support::useFaultyDisk();
    int asked = 0, fails = -1;
    support::diskJudge() = [&](support::DiskOperation, const std::function<void()>& half) {
        if (fails < 0 || asked++ < fails) return SQLITE_OK;
        if (asked == fails + 1) half();
        return SQLITE_FULL;
    };
    fails = 1 << 20;
    ASSERT_EQ(codeOf(asIris("whole.record")), Code::Internal);
    const int all = asked;
    ASSERT_GT(all, 20);
    for (fails = 0; fails < all; fails += 1 + all / 40) {
        asked = 0;
        const auto done = asIris("x.record");
        ASSERT_FALSE(done.ok()) << fails;
        ASSERT_TRUE(leftNothing()) << fails;
    }
    support::diskJudge() = nullptr;
    EXPECT_EQ(codeOf(asIris("x.record")), Code::Internal);
}

}  // namespace store
