// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the list of learners and its search leave on the disk when the record is sealed, and what
// becomes of it when somebody changes that. Rules of our own, no source.
#include <gtest/gtest.h>

#include <filesystem>

#include "record/card.h"
#include "store/sqlledger.h"
#include "store/values.h"
#include "support/ledgerdrafts.h"
#include "support/planted.h"
#include "support/recordfolder.h"
#include "support/sealedledger.h"

namespace store {

using base::Code;
using support::draftSaying;
using support::instantAt;
using support::readableIn;
using support::RecordFolder;

/// A sealed record that is open, with a few learners.
class SealedCards : public testing::Test {
  protected:
    RecordFolder m_folder;
    seal::KeyRows m_rows;
    std::shared_ptr<seal::Keyring> m_ring;
    std::unique_ptr<SqlLedger> m_ledger;
    std::vector<ledger::CardRow> m_cards;

    void SetUp() override {
        m_ledger = m_folder.open();
        m_ring = support::newKeyring(m_rows, m_ledger->id());
        signIn();
        for (const char* name : {"Quillfeather Amaryllis", "Ostrowidzka Benedetta", "Tannenzapf"})
            add(name);
    }
    void signIn() {
        m_ledger->use(std::make_shared<seal::SealingCodec>(m_ring, m_ledger->keyShelf()));
    }
    ledger::CardRow cardFor(const std::string& name) const {
        ledger::CardRow card = support::cardOf(name, record::searchKeys(name));
        card.json = *ledger::jcs({{"name", name}, {"born", "1943-11-29"}, {"number", "HX-774193"}});
        for (const std::string& key : record::searchKeys("HX-774193"))
            card.searchKeys.push_back(key);
        return card;
    }
    void add(const std::string& name) {
        m_cards.push_back(cardFor(name));
        put(m_cards.back());
    }
    void put(const ledger::CardRow& card) {
        ASSERT_TRUE(
            m_ledger
                ->append({draftSaying(card.sortKey + " lifted at the corner", card.patient)},
                         instantAt(7), {.cards = {card}})
                .ok());
    }
    void forget(const base::PatientId& patient) {
        ASSERT_TRUE(
            m_ledger->append({draftSaying("erased")}, instantAt(8), {.forgets = patient}).ok());
    }
    std::vector<std::pair<std::string, std::string>> segments() const {
        std::vector<std::pair<std::string, std::string>> found;
        const auto rows = m_ledger->database().rows("SELECT name, bytes FROM segment");
        for (const Row& row : *rows) found.emplace_back(textOf(row[0]), bytesOf(row[1]));
        return found;
    }
    void setSegment(const std::string& name, const std::string& bytes) {
        ASSERT_TRUE(m_ledger->database()
                        .run("INSERT OR REPLACE INTO segment (name, bytes) VALUES (?, ?)",
                             {textValue(name), bytesValue(bytes)})
                        .ok());
    }
    /// What the next one who signs in is told when they look for the list and for a word.
    std::vector<std::optional<Code>> told() {
        signIn();
        std::vector<std::optional<Code>> codes;
        for (const ledger::CardQuery& query :
             {ledger::CardQuery{}, ledger::CardQuery{.words = {"quill"}}}) {
            const auto found = m_ledger->cards(query);
            codes.push_back(found ? std::nullopt : std::optional<Code>(found.error().code));
        }
        return codes;
    }
    bool isRefused() {
        for (const auto& code : told())
            if (code == Code::SealRefused) return true;
        return false;
    }
    void mend() {
        ASSERT_TRUE(m_ledger->rebuild({.cards = m_cards}).ok());
        EXPECT_EQ(told(), (std::vector<std::optional<Code>>(2)));
        EXPECT_TRUE(m_ledger->areDerived({.cards = m_cards}).value());
        EXPECT_EQ(m_ledger->cards({})->total, m_cards.size());
    }
    /// All bytes of all files that lie where the record does.
    std::string everything() const {
        std::string bytes;
        const auto parent = std::filesystem::path(m_folder.path()).parent_path();
        for (const auto& file : std::filesystem::recursive_directory_iterator(parent))
            if (file.is_regular_file()) bytes += support::bytesOfFile(file.path().string());
        return bytes;
    }
};

namespace {

const std::vector<std::string> planted = {"Quillfeather", "Amaryllis",  "quillfeather",
                                          "Ostrowidzka",  "Tannenzapf", "1943-11-29",
                                          "HX-774193",    "774193",     "lifted at"};

}  // namespace

TEST_F(SealedCards, AreFoundByWhoHasTheKey) {
    EXPECT_EQ(m_ledger->cards({.words = {"quill"}})->rows.at(0), m_cards[0]);
    EXPECT_EQ(m_ledger->cards({.words = {"774193"}})->total, 3U);
    m_ledger.reset();
    m_ledger = m_folder.open();
    EXPECT_EQ(m_ledger->cards({}).error().code, Code::SealKeyMissing);
    EXPECT_EQ(m_ledger->rebuild({.cards = m_cards}).error().code, Code::SealKeyMissing)
        << "nothing plain is written behind what is sealed";
    EXPECT_EQ(m_ledger->areDerived({.cards = m_cards}).error().code, Code::SealKeyMissing);
    EXPECT_NE(m_ledger->derivedRows()->find("cards\tclosed\n"), std::string::npos);
    signIn();
    EXPECT_EQ(m_ledger->cards({.words = {"tannen"}})->rows.at(0), m_cards[2]);
    m_ledger->use(ledger::plainCodec());
    EXPECT_EQ(m_ledger->cards({.words = {"tannen"}}).error().code, Code::SealKeyMissing)
        << "who signs out leaves nothing to be found";
    seal::KeyRows others;
    m_ledger->use(std::make_shared<seal::SealingCodec>(support::newKeyring(others, m_ledger->id()),
                                                       m_ledger->keyShelf()));
    EXPECT_EQ(m_ledger->cards({}).error().code, Code::SealKeyMissing);
}

TEST_F(SealedCards, NothingOfThemIsReadableOnTheDisk) {
    for (int i = 0; i < 40; ++i) put(cardFor("Quillfeather Amaryllis " + std::to_string(i)));
    ASSERT_TRUE(m_ledger->rebuild({.cards = m_cards}).ok());
    forget(m_cards[1].patient);
    put(m_cards[0]);
    EXPECT_EQ(readableIn(everything(), planted), std::vector<std::string>()) << "while it is open";
    EXPECT_GT(everything().size(), 40'000U);
    m_ledger.reset();
    EXPECT_EQ(readableIn(everything(), planted), std::vector<std::string>())
        << "when it was closed";
}

// The same search has to find something where there is something.
TEST_F(SealedCards, WhatIsPlantedIsFoundInARecordThatIsNotSealed) {
    const RecordFolder folder;
    const auto plain = folder.open();
    ASSERT_TRUE(
        plain->append({draftSaying("Quillfeather")}, instantAt(7), {.cards = {m_cards[0]}}).ok());
    const auto found = readableIn(
        support::bytesOfFile(folder.path()) + support::bytesOfFile(folder.path() + "-wal"),
        planted);
    EXPECT_GE(found.size(), 8U)
        << "name and number in cards, words in segments, base 64 in entries";
    for (const auto& [way, written] : support::waysToWrite("Quillfeather"))
        EXPECT_FALSE(readableIn("..." + written + "...", planted).empty()) << way;
}

TEST_F(SealedCards, ASegmentWithABitChangedIsRefusedAndMended) {
    for (const auto& [name, bytes] : segments()) {
        for (std::size_t at = 3; at < bytes.size(); at += 97) {
            std::string spoiled = bytes;
            spoiled[at] = static_cast<char>(spoiled[at] ^ 4);
            setSegment(name, spoiled);
            for (const auto& code : told())
                EXPECT_TRUE(!code || *code == Code::SealRefused || *code == Code::SealKeyMissing);
            EXPECT_NE(told(), (std::vector<std::optional<Code>>(2))) << name << " at " << at;
        }
        setSegment(name, bytes.substr(0, bytes.size() - 1));
        EXPECT_TRUE(isRefused());
        setSegment(name, bytes);
    }
    EXPECT_FALSE(isRefused());
    setSegment(segments()[0].first, "");
    EXPECT_TRUE(isRefused());
    EXPECT_FALSE(m_ledger->areDerived({.cards = m_cards}).value());
    mend();
}

TEST_F(SealedCards, SegmentsThatChangedPlacesAreRefusedAndMended) {
    const auto rows = segments();
    ASSERT_GE(rows.size(), 3U) << "one that names the others, the front, a segment";
    for (std::size_t one = 0; one < rows.size(); ++one)
        for (std::size_t other = 0; other < one; ++other) {
            setSegment(rows[one].first, rows[other].second);
            setSegment(rows[other].first, rows[one].second);
            EXPECT_TRUE(isRefused());
            setSegment(rows[one].first, rows[one].second);
            setSegment(rows[other].first, rows[other].second);
        }
    EXPECT_FALSE(isRefused());
    ASSERT_TRUE(m_ledger->database().run("DELETE FROM segment WHERE name = 'cards'").ok());
    EXPECT_EQ(told()[0], Code::StoreEdgeWrong) << "there were cards, the fold's version says so";
    mend();
}

TEST_F(SealedCards, AnOldListThatIsPutBackIsRefusedAndMended) {
    const auto before = segments();
    add("Zwetschgenkern");
    const auto after = segments();
    const auto putBack = [&](const std::string& name, const std::string& bytes) {
        setSegment(name, bytes);
        const bool isNoticed = isRefused();
        ASSERT_TRUE(m_ledger->database().run("DELETE FROM segment").ok());
        for (const auto& [kept, row] : after) setSegment(kept, row);
        EXPECT_EQ(isNoticed, name == "cards") << "others are not named any more and harmless";
        EXPECT_FALSE(isRefused());
    };
    for (const auto& [name, bytes] : before) putBack(name, bytes);
    ASSERT_TRUE(m_ledger->database().run("DELETE FROM segment").ok());
    for (const auto& [name, bytes] : before) setSegment(name, bytes);
    EXPECT_TRUE(isRefused()) << "the whole list as it once was";
    EXPECT_FALSE(m_ledger->areDerived({.cards = m_cards}).value());
    mend();
}

TEST_F(SealedCards, ACardAtAnothersPlaceIsRefusedAndAnOldOneNoticed) {
    const auto rows = m_ledger->database().rows("SELECT learner, bytes FROM card");
    const auto set = [&](const Row& row, const QVariant& bytes) {
        ASSERT_TRUE(m_ledger->database()
                        .run("UPDATE card SET bytes = ? WHERE learner = ?", {bytes, row[0]})
                        .ok());
    };
    set(rows->at(0), rows->at(1)[1]);
    EXPECT_TRUE(isRefused());
    set(rows->at(0), rows->at(0)[1]);
    EXPECT_FALSE(isRefused());
    const auto patient = textValue(base::PatientId::random().text());
    ASSERT_TRUE(m_ledger->database().run("UPDATE card SET patient = ?", {patient}).ok());
    EXPECT_TRUE(isRefused()) << "nobody's card leads to another record";
    mend();
    const auto old = m_ledger->database().rows("SELECT learner, bytes FROM card");
    for (ledger::CardRow& card : m_cards) {
        card.json = "{}";
        put(card);
    }
    EXPECT_TRUE(m_ledger->areDerived({.cards = m_cards}).value());
    for (const Row& row : *old) set(row, row[1]);
    EXPECT_FALSE(m_ledger->areDerived({.cards = m_cards}).value());
    mend();
}

TEST_F(SealedCards, AForgottenPatientLeavesNoRowBehind) {
    const auto old = segments();
    const auto key = m_ledger->keyShelf().ofSubject(m_cards[0].patient);
    const std::string keyPart = (*key)->text.substr((*key)->text.find("\"sealed\":") + 10, 40);
    const auto rows = m_ledger->database().rows("SELECT bytes FROM card WHERE learner = ?",
                                                {textValue(m_cards[0].learner.text())});
    const std::string cardPart = bytesOf(rows->front()[0]).substr(80, 60);
    EXPECT_NE(everything().find(cardPart), std::string::npos);
    forget(m_cards[0].patient);
    const std::string disk = everything();
    EXPECT_EQ(disk.find(cardPart), std::string::npos);
    EXPECT_EQ(disk.find(keyPart), std::string::npos);
    for (const auto& [name, bytes] : old)
        EXPECT_EQ(disk.find(bytes.substr(80, 60)), std::string::npos) << name;
    m_cards.erase(m_cards.begin());
    EXPECT_FALSE(isRefused());
    EXPECT_EQ(m_ledger->cards({.words = {"quill"}})->total, 0U);
    EXPECT_TRUE(m_ledger->areDerived({.cards = m_cards}).value());
}

// Cards are closed under the epoch of their day; a new one reads the old, and the old no new one.
TEST_F(SealedCards, OfAFormerEpochAreStillRead) {
    ASSERT_FALSE(m_ring->beginEpoch({m_ring->identity()->known().boxing}).empty());
    signIn();
    EXPECT_EQ(m_ledger->cards({.words = {"quill"}})->total, 1U);
    add("Zwetschgenkern");
    EXPECT_FALSE(isRefused());
    EXPECT_EQ(m_ledger->cards({})->total, 4U);
    EXPECT_TRUE(m_ledger->areDerived({.cards = m_cards}).value());
}

TEST_F(SealedCards, AFailedAppendLeavesListAndSearchAsTheyWere) {
    const std::string before = m_ledger->derivedRows().value();
    auto bad = draftSaying("b");
    bad.body.data = {{"length", 1.5}};
    const auto card = cardFor("Zwetschgenkern");
    EXPECT_FALSE(m_ledger->append({bad}, instantAt(8), {.cards = {card}}).ok());
    ASSERT_TRUE(m_ledger->database()
                    .runOnce(QStringLiteral("CREATE TRIGGER no_fold BEFORE INSERT ON fold "
                                            "BEGIN SELECT RAISE(ABORT, 'no'); END"))
                    .ok());
    EXPECT_FALSE(m_ledger->append({draftSaying("x")}, instantAt(8), {.cards = {card}}).ok());
    EXPECT_EQ(m_ledger->cards({})->total, 3U);
    EXPECT_EQ(m_ledger->cards({.words = {"zwet"}})->total, 0U);
    EXPECT_EQ(m_ledger->derivedRows().value(), before);
    ASSERT_TRUE(m_ledger->database().runOnce(QStringLiteral("DROP TRIGGER no_fold")).ok());
    add("Zwetschgenkern");
    EXPECT_EQ(m_ledger->cards({.words = {"zwet"}})->total, 1U);
}

// A second copy that only reads sees the list as it is now, not as it was when it looked first.
TEST_F(SealedCards, AreReadBesideACopyThatWrites) {
    const auto reader = SqlLedger::openToRead(m_folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(reader.ok());
    (*reader)->use(std::make_shared<seal::SealingCodec>(m_ring, (*reader)->keyShelf()));
    EXPECT_EQ((*reader)->cards({.words = {"quill"}})->total, 1U);
    for (int i = 0; i < 30; ++i) {
        add("Quillfeather " + std::to_string(i));
        EXPECT_EQ((*reader)->cards({.words = {"quill"}})->total, 2U + unsigned(i));
        EXPECT_EQ((*reader)->cards({})->total, m_cards.size());
    }
    EXPECT_TRUE((*reader)->areDerived({.cards = m_cards}).value());
}

}  // namespace store
