// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a record's file shows when its bodies are sealed.
#include <gtest/gtest.h>

#include "ledger/base64url.h"
#include "seal/accessrows.h"
#include "store/sqlledger.h"
#include "store/transaction.h"
#include "support/ledgerdrafts.h"
#include "support/recordfolder.h"
#include "support/sealedledger.h"

namespace store {

using base::Code;
using support::draftSaying;
using support::instantAt;
using support::RecordFolder;

/// A record of two entries, sealed under m_ring, closed again.
class SealedRecord : public testing::Test {
  protected:
    RecordFolder m_folder;
    seal::KeyRows m_rows;
    std::shared_ptr<seal::Keyring> m_ring;
    base::PatientId m_patient = base::PatientId::random();
    std::vector<ledger::Draft> m_drafts = {draftSaying("Quillfeather", m_patient),
                                           draftSaying("of the ward")};
    std::vector<ledger::Entry> m_written;

    void SetUp() override {
        const auto ledger = m_folder.open();
        m_rows.names = seal::Stretch::withNewSalt(seal::Cost::least());
        m_ring = support::newKeyring(m_rows, ledger->id());
        signInTo(*ledger);
        const ledger::Derived keys{.access = seal::accessRows(m_rows)};
        m_written = ledger->append(m_drafts, instantAt(7), keys).value();
    }
    void signInTo(SqlLedger& ledger) const {
        ledger.use(std::make_shared<seal::SealingCodec>(m_ring, ledger.keyShelf()));
    }
};

/// Where the wrapped key of m_patient can still be read.
class ErasedKey : public SealedRecord {
  protected:
    std::unique_ptr<SqlLedger> m_ledger;
    std::string m_key;

    void SetUp() override {
        SealedRecord::SetUp();
        m_ledger = m_folder.open();
        signInTo(*m_ledger);
        const std::string row = (*m_ledger->keyShelf().ofSubject(m_patient))->text;
        m_key = row.substr(row.find("\"sealed\":") + 10, 40);
    }
    bool isIn(const std::string& ending) const {
        return support::bytesOfFile(m_folder.path() + ending).find(m_key) != std::string::npos;
    }
    bool isAnywhere() const { return isIn("") || isIn("-wal") || isIn("-shm") || isIn("-journal"); }
    base::Outcome erase() {
        const auto written =
            m_ledger->append({draftSaying("erased")}, instantAt(8), {.forgets = m_patient});
        return written ? base::Outcome(base::Done{}) : base::Outcome(written.error());
    }
};

namespace {

TEST_F(SealedRecord, IsReadAgainWithItsKeys) {
    const auto ledger = m_folder.open();
    signInTo(*ledger);
    EXPECT_EQ(ledger->readFrom(0, 9).value(), m_written);
    EXPECT_EQ(ledger->find(m_drafts[0].body.id).value(), m_written[0]);
    const auto report = ledger->check();
    EXPECT_TRUE(report->isIntact());
    EXPECT_EQ(report->closed, 0U);
}

TEST_F(SealedRecord, OpensAndIsCheckedWithoutAKey) {
    const auto ledger = m_folder.open();
    ASSERT_NE(ledger, nullptr);
    const auto entries = ledger->ofSubject(m_patient).value();
    ASSERT_EQ(entries.size(), 1U);
    EXPECT_FALSE(entries[0].isOpen);
    const auto report = ledger->check();
    EXPECT_TRUE(report->isIntact());
    EXPECT_EQ(report->closed, 2U);
    EXPECT_EQ(report->head, ledger->head());
    EXPECT_EQ(ledger->append({draftSaying("x")}, instantAt(8), {}).error().code,
              Code::SealKeyMissing)
        << "nothing plain is written behind what is sealed";
}

TEST_F(SealedRecord, RebuildWithoutAKeyLosesNoCommand) {
    std::string before;
    {
        const auto ledger = m_folder.open();
        before = ledger->derivedRows().value();
        ASSERT_TRUE(ledger->database().runOnce(QStringLiteral("DELETE FROM right_edge")).ok());
    }
    const auto opened = SqlLedger::openToRebuild(m_folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(opened.ok());
    EXPECT_EQ((*opened)->derivedRows().value(), before);
    signInTo(**opened);
    EXPECT_EQ((*opened)->append(m_drafts, instantAt(9), {}).value(), m_written) << "a repeat";
}

TEST_F(SealedRecord, ItsFileHasNoWordOfABody) {
    const std::string bytes =
        support::bytesOfFile(m_folder.path()) + support::bytesOfFile(m_folder.path() + "-wal");
    EXPECT_EQ(bytes.find("Quillfeather"), std::string::npos);
    EXPECT_EQ(bytes.find("test-said"), std::string::npos);
    for (std::size_t shift = 0; shift < 3; ++shift) {
        const std::string word = std::string("Quillfeather").substr(shift, 9);
        EXPECT_EQ(bytes.find(ledger::toBase64Url(word)), std::string::npos);
    }
}

TEST_F(SealedRecord, AnErasedPatientIsClosedForGood) {
    {
        const auto ledger = m_folder.open();
        ASSERT_TRUE(ledger->keyShelf().erase(m_patient).ok());
    }
    const auto ledger = m_folder.open();
    signInTo(*ledger);
    EXPECT_FALSE(ledger->readFrom(0, 9)->at(0).isOpen);
    EXPECT_TRUE(ledger->readFrom(0, 9)->at(1).isOpen);
    const auto report = ledger->check();
    EXPECT_EQ(report->erased, 1U);
    EXPECT_EQ(report->findings, std::vector{proof::at(proof::Kind::KeyGone, 0)})
        << "nothing says that two people did so";
}

TEST_F(SealedRecord, AKeyIsStoredWithItsEntryOrNotAtAll) {
    const auto ledger = m_folder.open();
    signInTo(*ledger);
    const auto other = base::PatientId::random();
    auto bad = draftSaying("b");
    bad.body.data = {{"length", 1.5}};
    EXPECT_FALSE(ledger->append({draftSaying("a", other), bad}, instantAt(8), {}).ok());
    EXPECT_EQ(*ledger->keyShelf().ofSubject(other), std::nullopt);
}

TEST_F(ErasedKey, GoesWithTheEntryThatSaysSo) {
    ASSERT_TRUE(isAnywhere());
    ASSERT_TRUE(erase().ok());
    EXPECT_FALSE(m_ledger->remains().journal);
    EXPECT_FALSE(isAnywhere());
    EXPECT_EQ(m_ledger->readFrom(0, 9)->size(), 3U);
    EXPECT_FALSE(m_ledger->readFrom(0, 9)->at(0).isOpen);
}

TEST_F(ErasedKey, StaysWhenTheEntryIsNotWritten) {
    const auto draft = draftSaying("erased");
    EXPECT_FALSE(m_ledger->append({draft, draft}, instantAt(8), {.forgets = m_patient}).ok());
    EXPECT_TRUE(m_ledger->readFrom(0, 9)->at(0).isOpen);
    EXPECT_TRUE(isAnywhere());
}

TEST_F(ErasedKey, IsTakenOutOfTheJournalWhenNobodyReadsThereAnyMore) {
    {
        const auto reader = SqlLedger::openToRead(m_folder.path(), OpenMode::Demonstration);
        ASSERT_TRUE(reader.ok());
        const auto held = Snapshot::begin((*reader)->database());
        ASSERT_TRUE(held.ok());
        ASSERT_TRUE((*reader)->database().rows("SELECT count(*) FROM entry").ok());
        ASSERT_TRUE(erase().ok()) << "whoever reads keeps nobody from it";
        EXPECT_TRUE(isAnywhere()) << "the reader may still want the page of before";
        EXPECT_TRUE(m_ledger->remains().journal) << "which can be asked";
    }
    ASSERT_TRUE(m_ledger->append({draftSaying("later")}, instantAt(9), {}).ok());
    EXPECT_FALSE(m_ledger->remains().journal);
    EXPECT_FALSE(isAnywhere()) << "tried again with the next entry";
}

TEST_F(ErasedKey, IsTakenOutOfTheJournalWhenTheRecordIsOpenedAgain) {
    const std::string copy = m_folder.path("killed.record");
    {
        const auto reader = SqlLedger::openToRead(m_folder.path(), OpenMode::Demonstration);
        const auto held = Snapshot::begin((*reader)->database());
        ASSERT_TRUE((*reader)->database().rows("SELECT count(*) FROM entry").ok());
        ASSERT_TRUE(erase().ok());
        for (const char* ending : {"", "-wal"})  // as it is when the program is killed now
            support::putFile(copy + ending, support::bytesOfFile(m_folder.path() + ending));
    }
    const auto isInCopy = [&] {
        return (support::bytesOfFile(copy) + support::bytesOfFile(copy + "-wal")).find(m_key) !=
               std::string::npos;
    };
    ASSERT_TRUE(isInCopy());
    const auto opened = m_folder.open("killed.record");
    ASSERT_NE(opened, nullptr);
    EXPECT_FALSE(isInCopy());
}

}  // namespace
}  // namespace store
