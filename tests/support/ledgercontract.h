// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <functional>
#include <memory>

#include "ledger/ledger.h"
#include "ledger/merkle.h"
#include "support/ledgerdrafts.h"
#include "support/sealedledger.h"

/// What every Ledger keeps to, whatever it is stored in. Included by one test file for each kind,
/// which instantiates the suite with a way to make an empty one.
namespace support {

using LedgerMaker = std::function<std::unique_ptr<ledger::Ledger>()>;

class LedgerContract : public testing::TestWithParam<LedgerMaker> {
  protected:
    std::unique_ptr<ledger::Ledger> m_ledger = GetParam()();

    std::vector<ledger::Entry> write(const std::vector<ledger::Draft>& drafts,
                                     const ledger::Derived& derived = {}) {
        const auto written = m_ledger->append(drafts, instantAt(1'000'000), derived);
        EXPECT_TRUE(written.ok()) << base::english(written.error());
        return written.ok() ? *written : std::vector<ledger::Entry>();
    }
    /// Those of a sealed ledger are instantiated under a name that says so.
    static bool isSealed() {
        const auto* suite = testing::UnitTest::GetInstance()->current_test_suite();
        return std::string(suite->name()).starts_with("Sealed");
    }
    std::vector<std::string> sortKeys(const ledger::CardQuery& query) const {
        std::vector<std::string> keys;
        const auto page = m_ledger->cards(query);
        for (const auto& row : page->rows) keys.push_back(row.sortKey);
        return keys;
    }
};

TEST_P(LedgerContract, StartsEmpty) {
    EXPECT_EQ(m_ledger->head(), (ledger::Head{0, ledger::toHex(ledger::emptyRoot())}));
    EXPECT_EQ(*m_ledger->foldVersion(), 0);
    EXPECT_EQ(*m_ledger->openVisit(), std::nullopt);
    EXPECT_TRUE(m_ledger->readFrom(0, 10)->empty());
    EXPECT_EQ(m_ledger->cards({})->total, 0U);
    EXPECT_EQ(*m_ledger->find(base::CommandId::random()), std::nullopt);
    EXPECT_EQ(*m_ledger->blob(std::string(64, '0')), std::nullopt);
}

TEST_P(LedgerContract, GivesEachEntryItsPlaceAndKeepsThem) {
    const auto first = write({draftSaying("a")});
    const auto more = write({draftSaying("b"), draftSaying("c")});
    ASSERT_EQ(more.size(), 2U);
    EXPECT_EQ(first[0].seq, 0U);
    EXPECT_EQ(more[1].seq, 2U);
    EXPECT_LT(first[0].tick, more[0].tick);
    EXPECT_LT(more[0].tick, more[1].tick);
    EXPECT_EQ(more[0].ledger, m_ledger->id());
    EXPECT_EQ(more[0].wallMs, 1'000'000);
    EXPECT_EQ(more[0].bootId, "boot");
    EXPECT_EQ(m_ledger->readFrom(1, 10).value(), more);
    EXPECT_EQ(m_ledger->readFrom(0, 1).value(), first);
    EXPECT_EQ(m_ledger->find(more[1].body.id).value(), more[1]);
}

TEST_P(LedgerContract, ARepeatedCommandIsHarmless) {
    const auto draft = draftSaying("once");
    const auto first = write({draft});
    const auto before = m_ledger->head();
    auto other = draft;
    other.body.data = {{"word", "something else"}};
    EXPECT_EQ(write({other}), first) << "the entry as it was written first";
    EXPECT_EQ(m_ledger->head(), before);
}

TEST_P(LedgerContract, HalfOfSeveralDraftsRepeatedWritesNothing) {
    const auto known = draftSaying("known");
    const auto first = write({known});
    const auto before = m_ledger->head();
    const auto fresh = draftSaying("new");
    const ledger::Derived derived{.cards = {cardOf("x", {"x"})}};
    EXPECT_EQ(write({fresh, known}, derived), first);
    EXPECT_EQ(m_ledger->head(), before);
    EXPECT_EQ(*m_ledger->find(fresh.body.id), std::nullopt);
    EXPECT_EQ(m_ledger->cards({})->total, 0U);
}

TEST_P(LedgerContract, RefusesTheSameIdTwiceInOneCall) {
    const auto draft = draftSaying("twice");
    const auto refused = m_ledger->append({draft, draft}, instantAt(1), {});
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::Code::LedgerDoubledId);
    EXPECT_EQ(m_ledger->head().size, 0U);
}

TEST_P(LedgerContract, WhatIsRefusedChangesNothing) {
    write({draftSaying("a")});
    const auto before = m_ledger->head();
    auto bad = draftSaying("b");
    bad.body.data = {{"length", 1.5}};
    const ledger::Derived derived{.cards = {cardOf("x", {"x"})}};
    const auto refused = m_ledger->append({draftSaying("fine"), bad}, instantAt(1), derived);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::Code::LedgerBadNumber);
    EXPECT_EQ(m_ledger->head(), before);
    EXPECT_EQ(m_ledger->cards({})->total, 0U);
    EXPECT_EQ(write({draftSaying("c")})[0].seq, 1U);
}

TEST_P(LedgerContract, AClockSetBackIsWrittenAndNotSortedBy) {
    ASSERT_TRUE(m_ledger->append({draftSaying("late")}, instantAt(9'000'000), {}).ok());
    ASSERT_TRUE(m_ledger->append({draftSaying("early")}, instantAt(1'000), {}).ok());
    const auto all = m_ledger->readFrom(0, 10).value();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].wallMs, 9'000'000);
    EXPECT_EQ(all[1].wallMs, 1'000);
    EXPECT_GT(all[1].tick, all[0].tick);
}

TEST_P(LedgerContract, TellsWhoseEntriesTheyAre) {
    const auto one = base::PatientId::random();
    const auto two = base::PatientId::random();
    write({draftSaying("a", one), draftSaying("b"), draftSaying("c", two), draftSaying("d", one)});
    ASSERT_EQ(m_ledger->ofSubject(one)->size(), 2U);
    EXPECT_EQ(m_ledger->ofSubject(one)->at(1).body.data["word"], "d");
    EXPECT_EQ(m_ledger->ofSubject(two)->size(), 1U);
    ASSERT_EQ(m_ledger->withoutSubject()->size(), 1U);
    EXPECT_EQ(m_ledger->withoutSubject()->at(0).body.data["word"], "b");
    EXPECT_TRUE(m_ledger->ofSubject(base::PatientId::random())->empty());
}

TEST_P(LedgerContract, KeepsBlobsUnderTheirDigest) {
    const std::string bytes("a\0b\xff", 4);
    const auto digest = m_ledger->putBlob(bytes);
    ASSERT_TRUE(digest.ok());
    EXPECT_EQ(*digest, ledger::toHex(ledger::sha256(bytes)));
    EXPECT_EQ(*m_ledger->putBlob(bytes), *digest) << "twice is once";
    EXPECT_EQ(m_ledger->blob(*digest).value(), bytes);
    EXPECT_EQ(m_ledger->blob(m_ledger->putBlob("").value()).value(), "");
}

TEST_P(LedgerContract, KeepsAPatientsBlobsByTheirKey) {
    const auto whose = base::PatientId::random();
    const auto digest = m_ledger->putBlob("drawn", whose);
    ASSERT_TRUE(digest.ok());
    EXPECT_EQ(m_ledger->blob(*digest).value(), "drawn");
    // The same drawing of another is their own: no digest tells that they are the same.
    const auto others = m_ledger->putBlob("drawn", base::PatientId::random());
    EXPECT_EQ(m_ledger->blob(*others).value(), "drawn");
    const bool isHidden = *digest != ledger::toHex(ledger::sha256("drawn"));
    EXPECT_EQ(isHidden, isSealed());
    EXPECT_EQ(*others != *digest, isSealed());
}

TEST_P(LedgerContract, KeepsNoBlobOpenBesideSealedEntries) {
    seal::KeyRows rows;
    const auto sealing = std::make_shared<seal::SealingCodec>(newKeyring(rows, m_ledger->id()),
                                                              m_ledger->keyShelf());
    m_ledger->use(sealing);
    const auto whose = base::PatientId::random();
    write({draftSaying("sealed", whose)});
    m_ledger->use(ledger::plainCodec());
    const auto refused = m_ledger->putBlob("drawn", whose);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::Code::SealKeyMissing);
    m_ledger->use(sealing);
    const auto open = m_ledger->blob(ledger::toHex(ledger::sha256("drawn")));
    EXPECT_EQ(open.value(), std::nullopt) << "nothing of it was stored";
    EXPECT_EQ(m_ledger->blob(m_ledger->putBlob("drawn", whose).value()).value(), "drawn");
}

TEST_P(LedgerContract, FindsCardsByTheBeginningsOfWords) {
    const ledger::Derived derived{.cards = {cardOf("c", {"maria", "lopez"}),
                                            cardOf("a", {"mario", "50%_x"}),
                                            cardOf("b", {"anna", "m*r"})}};
    write({draftSaying("x")}, derived);
    using Keys = std::vector<std::string>;
    EXPECT_EQ(sortKeys({}), (Keys{"a", "b", "c"}));
    EXPECT_EQ(sortKeys({.words = {"mari"}}), (Keys{"a", "c"}));
    EXPECT_EQ(sortKeys({.words = {"mari", "lop"}}), (Keys{"c"}));
    EXPECT_EQ(sortKeys({.words = {"ari"}}), (Keys{}));
    EXPECT_EQ(sortKeys({.words = {"50%"}}), (Keys{"a"})) << "no letter is a wildcard";
    EXPECT_EQ(sortKeys({.words = {"%"}}), (Keys{}));
    EXPECT_EQ(sortKeys({.words = {"m*"}}), (Keys{"b"}));
    EXPECT_EQ(sortKeys({.words = {""}}), (Keys{"a", "b", "c"}));
    EXPECT_EQ(sortKeys({.offset = 1, .limit = 1}), (Keys{"b"}));
    EXPECT_EQ(m_ledger->cards({.offset = 1, .limit = 1})->total, 3U);
    EXPECT_EQ(sortKeys({.offset = 9}), (Keys{}));
}

TEST_P(LedgerContract, PutsACardInThePlaceOfTheFormer) {
    auto card = cardOf("a", {"anna"});
    write({draftSaying("x")}, {.cards = {card}});
    card.sortKey = "z";
    card.searchKeys = {"zoe"};
    write({draftSaying("y")}, {.cards = {card, cardOf("b", {"bea"})}});
    EXPECT_EQ(sortKeys({}), (std::vector<std::string>{"b", "z"}));
    EXPECT_TRUE(sortKeys({.words = {"anna"}}).empty());
    EXPECT_EQ(m_ledger->cards({.words = {"zoe"}})->rows.at(0).learner, card.learner);
    EXPECT_EQ(m_ledger->cards({.words = {"zoe"}})->rows.at(0).json, card.json);
}

TEST_P(LedgerContract, RemembersTheOpenVisitUntilItIsSaidToBeClosed) {
    const ledger::OpenVisitRow visit{base::VisitId::random(), base::PatientId::random()};
    write({draftSaying("x")}, {.foldVersion = 3, .setsOpenVisit = true, .openVisit = visit});
    EXPECT_EQ(*m_ledger->openVisit(), visit);
    EXPECT_EQ(*m_ledger->foldVersion(), 3);
    write({draftSaying("y")}, {.foldVersion = 3});
    EXPECT_EQ(*m_ledger->openVisit(), visit) << "nothing was said about it";
    write({draftSaying("z")}, {.foldVersion = 3, .setsOpenVisit = true});
    EXPECT_EQ(*m_ledger->openVisit(), std::nullopt);
}

TEST_P(LedgerContract, RebuildPutsAllDerivedRowsAnew) {
    const ledger::OpenVisitRow visit{base::VisitId::random(), base::PatientId::random()};
    write({draftSaying("x")},
          {.cards = {cardOf("old", {"old"})}, .setsOpenVisit = true, .openVisit = visit});
    const auto before = m_ledger->head();
    ASSERT_TRUE(m_ledger->rebuild({.foldVersion = 7, .cards = {cardOf("new", {"new"})}}).ok());
    EXPECT_EQ(sortKeys({}), (std::vector<std::string>{"new"}));
    EXPECT_TRUE(sortKeys({.words = {"old"}}).empty());
    EXPECT_EQ(*m_ledger->openVisit(), std::nullopt);
    EXPECT_EQ(*m_ledger->foldVersion(), 7);
    EXPECT_EQ(m_ledger->head(), before);
}

TEST_P(LedgerContract, KeepsTheRowsOfThoseWhoSignInWithTheEntryThatSaysSo) {
    using Rows = std::vector<ledger::AccessRow>;
    EXPECT_EQ(*m_ledger->access(), Rows{});
    const ledger::AccessRow one{"person", "b", "{\"n\":1}"}, two{"person", "a", "2"};
    write({draftSaying("x")}, {.access = {one, two, {"grant", "z", "3"}}});
    EXPECT_EQ(*m_ledger->access(), (Rows{{"grant", "z", "3"}, two, one}));
    const auto said = draftSaying("y");
    const ledger::Derived change{.access = {{"person", "b", "new"}, {"person", "a", ""}}};
    write({said}, change);
    EXPECT_EQ(*m_ledger->access(), (Rows{{"grant", "z", "3"}, {"person", "b", "new"}}));
    write({said}, {.access = {{"grant", "z", ""}}});
    EXPECT_EQ(m_ledger->access()->size(), 2U) << "a repeat writes nothing";
    auto bad = draftSaying("z");
    bad.body.data = {{"length", 1.5}};
    EXPECT_FALSE(m_ledger->append({bad}, instantAt(1), {.access = {{"grant", "z", ""}}}).ok());
    EXPECT_EQ(m_ledger->access()->size(), 2U);
    ASSERT_TRUE(m_ledger->rebuild({}).ok());
    EXPECT_EQ(m_ledger->access()->size(), 2U) << "nothing else has what they hold";
}

TEST_P(LedgerContract, ForgetsOnePatientAndLeavesTheOthers) {
    auto gone = cardOf("a", {"anna"}), other = cardOf("b", {"anna"}), second = cardOf("c", {"cy"});
    second.patient = gone.patient;
    const ledger::OpenVisitRow visit{base::VisitId::random(), gone.patient};
    write({draftSaying("x", gone.patient), draftSaying("y", other.patient)},
          {.cards = {gone, other, second}, .setsOpenVisit = true, .openVisit = visit});
    const auto before = m_ledger->readFrom(0, 2).value();
    write({draftSaying("erased")}, {.forgets = gone.patient});
    EXPECT_EQ(sortKeys({}), (std::vector<std::string>{"b"}));
    EXPECT_EQ(m_ledger->cards({.words = {"ann"}})->total, 1U);
    EXPECT_EQ(m_ledger->cards({.words = {"cy"}})->total, 0U);
    EXPECT_EQ(*m_ledger->openVisit(), std::nullopt);
    EXPECT_EQ(m_ledger->head().size, 3U);
    EXPECT_EQ(m_ledger->readFrom(1, 1)->at(0), before[1]) << "the entries stay";
    EXPECT_EQ(m_ledger->ofSubject(gone.patient)->size(), 1U);
    EXPECT_EQ(m_ledger->ofSubject(other.patient)->at(0).body.data["word"], "y");
    write({draftSaying("z", other.patient)}, {.cards = {other}});
    EXPECT_EQ(sortKeys({}), (std::vector<std::string>{"b"}));
    write({draftSaying("nobody")}, {.forgets = base::PatientId::random()});
    EXPECT_EQ(sortKeys({}), (std::vector<std::string>{"b"})) << "of nobody it is nothing";
}

/// For ledgers whose bodies are left as they are: the bytes of an entry can be made again.
class PlainLedgerContract : public LedgerContract {};

TEST_P(PlainLedgerContract, HeadIsTheRootOverAllEntries) {
    std::vector<ledger::Digest> leaves;
    for (int i = 0; i < 9; ++i) {
        const auto written = write({draftSaying(std::to_string(i))});
        leaves.push_back(ledger::leafHash(*ledger::entryBytes(written[0])));
        EXPECT_EQ(m_ledger->head(),
                  (ledger::Head{leaves.size(), ledger::toHex(ledger::rootOf(leaves))}));
    }
}

}  // namespace support
