// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a record's file shows when its bodies are sealed.
#include <gtest/gtest.h>

#include "ledger/base64url.h"
#include "store/sqlledger.h"
#include "support/ledgerdrafts.h"
#include "support/recordfolder.h"
#include "support/sealedledger.h"

namespace store {
namespace {

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
        m_ring = support::newKeyring(m_rows, ledger->id());
        signInTo(*ledger);
        m_written = ledger->append(m_drafts, instantAt(7), {}).value();
    }
    void signInTo(SqlLedger& ledger) const {
        ledger.use(std::make_shared<seal::SealingCodec>(m_ring, ledger.keyShelf()));
    }
};

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
    EXPECT_TRUE(report->isIntact());
    EXPECT_EQ(report->closed, 1U);
}

TEST_F(SealedRecord, ADestroyedKeyLeavesNoTraceInFileOrJournal) {
    const auto ledger = m_folder.open();
    const std::string key = (*ledger->keyShelf().ofSubject(m_patient))->text;
    const std::string part = key.substr(key.find("\"sealed\":") + 10, 40);
    const auto onDisk = [&] {
        return (support::bytesOfFile(m_folder.path()) +
                support::bytesOfFile(m_folder.path() + "-wal"))
                   .find(part) != std::string::npos;
    };
    EXPECT_TRUE(onDisk());
    ASSERT_TRUE(ledger->keyShelf().erase(m_patient).ok());
    EXPECT_FALSE(onDisk()) << "while it is still open";
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

}  // namespace
}  // namespace store
