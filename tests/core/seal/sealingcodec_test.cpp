// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/sealingcodec.h"

#include "hexbytes.h"
#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/memoryledger.h"
#include "seal/sealedbody.h"
#include "support/ledgerdrafts.h"
#include "support/sealedledger.h"

namespace seal {
namespace {

using base::Code;
using nlohmann::json;
using support::draftSaying;
using support::instantAt;

/// One entry of a patient and one of nobody, as the bytes a disk would hold.
class Sealing : public testing::Test {
  protected:
    base::LedgerId m_home = base::LedgerId::random();
    KeyRows m_rows;
    std::shared_ptr<Keyring> m_ring = support::newKeyring(m_rows, m_home);
    ledger::MemoryKeyShelf m_shelf;
    SealingCodec m_codec{m_ring, m_shelf};
    base::PatientId m_patient = base::PatientId::random();
    ledger::Tail m_tail;
    std::vector<ledger::WrittenEntry> m_written =
        *ledger::extend(m_tail, m_home, {draftSaying("of Ada", m_patient), draftSaying("of all")},
                        instantAt(5), m_codec);

    base::Result<ledger::Entry> readAgain(std::size_t i) {
        return ledger::readEntry(m_written[i].bytes, m_codec);
    }
};

TEST_F(Sealing, EntriesComeBackAsTheyWereWritten) {
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(*readAgain(i), m_written[i].entry);
        EXPECT_EQ(m_written[i].leaf, ledger::leafHash(m_written[i].bytes));
        const std::string& bytes = m_written[i].bytes;
        EXPECT_EQ(*ledger::entryJcs(json::parse(bytes)), bytes);
        EXPECT_EQ(bytes.find(ledger::toBase64Url("of A")), std::string::npos);
        EXPECT_EQ(bytes.find("test-said"), std::string::npos);
    }
}

TEST_F(Sealing, TheEnvelopeNamesAlgKeyAndNonce) {
    const auto ofPatient = *ledger::readEnvelope(m_written[0].bytes);
    EXPECT_EQ(ofPatient.closed.alg, "xchacha20poly1305");
    EXPECT_EQ(ofPatient.closed.key, (*m_shelf.ofSubject(m_patient))->id);
    EXPECT_EQ(ofPatient.closed.nonce.size(), 24U);
    EXPECT_EQ(ofPatient.closed.body.size() % 256, 16U);
    EXPECT_EQ(ofPatient.subject, m_patient);
    EXPECT_EQ(ledger::readEnvelope(m_written[1].bytes)->closed.key, m_ring->current().id.text());
}

TEST_F(Sealing, WithoutAKeyTheEnvelopeIsReadAndTheBodyStaysClosed) {
    const auto closed = ledger::readEntry(m_written[0].bytes);
    ASSERT_TRUE(closed.ok());
    EXPECT_FALSE(closed->isOpen);
    EXPECT_EQ(closed->seq, 0U);
    EXPECT_EQ(closed->subject, m_patient);
    EXPECT_EQ(closed->body, ledger::Body{});
    KeyRows others;
    SealingCodec stranger(support::newKeyring(others, m_home), m_shelf);
    EXPECT_FALSE(ledger::readEntry(m_written[0].bytes, stranger)->isOpen);
    EXPECT_FALSE(ledger::readEntry(m_written[1].bytes, stranger)->isOpen);
}

TEST_F(Sealing, OnePatientsEntriesHaveOneKey) {
    const auto more = *ledger::extend(
        m_tail, m_home, {draftSaying("x", m_patient), draftSaying("y", base::PatientId::random())},
        instantAt(6), m_codec);
    const auto key = [](const ledger::WrittenEntry& one) {
        return ledger::readEnvelope(one.bytes)->closed.key;
    };
    EXPECT_EQ(key(more[0]), key(m_written[0]));
    EXPECT_NE(key(more[1]), key(m_written[0]));
}

TEST_F(Sealing, ManyPatientsOpenInAnyOrderByThisCodecAndByAnotherOfItsKeys) {
    constexpr int patients = 60;  // more than the codec keeps keys of
    std::vector<ledger::Draft> drafts;
    for (int i = 0; i < patients; ++i)
        drafts.push_back(draftSaying(std::to_string(i), base::PatientId::random()));
    for (int i = 0; i < patients; ++i) drafts.push_back(draftSaying("again", drafts[i].subject));
    const auto written = *ledger::extend(m_tail, m_home, drafts, instantAt(6), m_codec);
    const auto reader = m_codec.reader(m_shelf);
    for (const std::size_t step : {1U, 7U, 31U})
        for (std::size_t i = 0; i < written.size(); ++i) {
            const auto& one = written[i * step % written.size()];
            EXPECT_EQ(*ledger::readEntry(one.bytes, m_codec), one.entry);
            EXPECT_EQ(*ledger::readEntry(one.bytes, *reader), one.entry);
        }
}

TEST_F(Sealing, AnErasedPatientStaysClosedAndTakesNothingMore) {
    ASSERT_TRUE(m_shelf.erase(m_patient).ok());
    ASSERT_TRUE(readAgain(0).ok());
    EXPECT_FALSE(readAgain(0)->isOpen);
    EXPECT_TRUE(readAgain(1)->isOpen);
    EXPECT_EQ(ledger::extend(m_tail, m_home, {draftSaying("x", m_patient)}, instantAt(6), m_codec)
                  .error()
                  .code,
              Code::SealKeyMissing);
    EXPECT_EQ(m_tail.edge.size(), 2U);
}

/// Whether the entry, with this member another one, is refused and never reads as something else.
TEST_F(Sealing, NoMemberOfAnEntryCanBeChanged) {
    const json good = json::parse(m_written[0].bytes);
    const json other = json::parse(m_written[1].bytes);
    const std::pair<const char*, json> changes[] = {{"/seq", 7},
                                                    {"/tick", 9},
                                                    {"/wall", "2026-01-01T00:00:00.000Z"},
                                                    {"/boot/ms", 1},
                                                    {"/boot/id", "other"},
                                                    {"/ledger", base::LedgerId::random().text()},
                                                    {"/subject", base::PatientId::random().text()},
                                                    {"/subject", nullptr},
                                                    {"/nonce", other["nonce"]},
                                                    {"/body", other["body"]}};
    for (const auto& [path, value] : changes) {
        json changed = good;
        changed[json::json_pointer(path)] = value;
        const auto read = ledger::readEntry(*ledger::entryJcs(changed), m_codec);
        EXPECT_FALSE(read.ok() && read->isOpen) << path;
    }
}

TEST_F(Sealing, EveryTurnedBitOfABodyIsRefused) {
    const auto good = *ledger::readEnvelope(m_written[0].bytes);
    for (std::size_t bit = 0; bit < 8 * good.closed.body.size(); ++bit) {
        auto changed = good;
        changed.closed.body = withBitTurned(good.closed.body, bit);
        const auto read = ledger::readEntry(*ledger::envelopeBytes(changed), m_codec);
        ASSERT_EQ(read.error(), (base::Error{Code::SealRefused, {"entry"}})) << bit;
    }
}

TEST_F(Sealing, APlainEntryIsNotTaken) {
    const auto plain = *ledger::entryBytes(m_written[1].entry);
    EXPECT_EQ(ledger::readEntry(plain, m_codec).error(),
              (base::Error{Code::LedgerUnknownAlg, {"none"}}));
}

// The row says another patient than the wrapped key is bound to.
TEST_F(Sealing, AKeyRowMovedToAnotherPatientIsRefused) {
    const auto other = base::PatientId::random();
    auto row = **m_shelf.ofSubject(m_patient);
    row.subject = other;
    ledger::MemoryKeyShelf tampered;
    ASSERT_TRUE(tampered.put(row).ok());
    SealingCodec codec(m_ring, tampered);
    ledger::Tail tail;
    EXPECT_EQ(
        ledger::extend(tail, m_home, {draftSaying("x", other)}, instantAt(1), codec).error().code,
        Code::SealRefused);
}

TEST(SealedLedger, TakesNothingFromAPlainCodec) {
    const auto ledger = support::withSealing(std::make_unique<ledger::MemoryLedger>());
    ASSERT_TRUE(ledger->append({draftSaying("a")}, instantAt(1), {}).ok());
    ledger->use(ledger::plainCodec());
    EXPECT_EQ(ledger->append({draftSaying("b")}, instantAt(2), {}).error().code,
              Code::SealKeyMissing);
    EXPECT_FALSE(ledger->readFrom(0, 1)->at(0).isOpen);
    EXPECT_EQ(ledger->head().size, 1U);
}

TEST(SealedLedger, KeepsNoKeyOfARefusedAppend) {
    const auto ledger = support::withSealing(std::make_unique<ledger::MemoryLedger>());
    const auto patient = base::PatientId::random();
    auto bad = draftSaying("b");
    bad.body.data = {{"length", 1.5}};
    EXPECT_FALSE(ledger->append({draftSaying("a", patient), bad}, instantAt(1), {}).ok());
    EXPECT_EQ(*ledger->keyShelf().ofSubject(patient), std::nullopt);
    EXPECT_TRUE(ledger->append({draftSaying("a", patient)}, instantAt(1), {}).ok());
    EXPECT_TRUE(ledger->ofSubject(patient)->at(0).isOpen);
}

// Rows beside the entries: a place is as much a part of what is sealed as the row itself.
TEST_F(Sealing, ARowOpensAtItsPlaceAndNowhereElse) {
    const std::string row = "Quillfeather, Ada";
    const std::string stored = *m_codec.closeRow("card/a", row);
    EXPECT_EQ(m_codec.openRow("card/a", stored).value(), row);
    EXPECT_EQ(m_codec.openRow("card/b", stored).error().code, Code::SealRefused);
    EXPECT_EQ(m_codec.openRow("card/", stored).error().code, Code::SealRefused);
    EXPECT_EQ(stored.find("Quill"), std::string::npos);
    EXPECT_EQ(m_codec.openRow("p", *m_codec.closeRow("p", "")).value(), "");
    EXPECT_NE(*m_codec.closeRow("card/a", row), stored) << "every time under another nonce";
    const std::size_t head = ledger::sealedRowMark.size() + 26 + nonceSize + tagSize;
    EXPECT_EQ(stored.size(), head + bodyStep);
    EXPECT_EQ(m_codec.closeRow("p", std::string(bodyStep, 'x'))->size(), head + 2 * bodyStep);
}

TEST_F(Sealing, ARowWithAnyBitChangedIsRefused) {
    const std::string stored = *m_codec.closeRow("p", "row");
    for (std::size_t i = 0; i < stored.size(); ++i) {
        std::string spoiled = stored;
        spoiled[i] = static_cast<char>(spoiled[i] ^ 1);
        const auto opened = m_codec.openRow("p", spoiled);
        // Another epoch's name is that of a key that is not at hand.
        EXPECT_TRUE(!opened || !*opened) << i;
    }
    for (std::size_t size = 0; size < stored.size(); ++size)
        EXPECT_FALSE(m_codec.openRow("p", stored.substr(0, size)).ok()) << size;
    EXPECT_EQ(m_codec.openRow("p", "row").error().code, Code::SealRefused)
        << "nothing plain is taken";
}

TEST_F(Sealing, ARowStaysClosedWithoutItsEpoch) {
    const std::string stored = *m_codec.closeRow("p", "row");
    EXPECT_EQ(ledger::plainCodec()->openRow("p", stored).value(), std::nullopt);
    KeyRows others;
    SealingCodec stranger(support::newKeyring(others, m_home), m_shelf);
    EXPECT_EQ(stranger.openRow("p", stored).value(), std::nullopt);
    ASSERT_FALSE(m_ring->beginEpoch({m_ring->identity()->known().boxing}).empty());
    EXPECT_EQ(m_codec.openRow("p", stored).value(), "row") << "of a former epoch";
    EXPECT_NE(m_codec.closeRow("p", "row")->substr(0, 40), stored.substr(0, 40));
}

}  // namespace
}  // namespace seal
