// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The list of learners and its search, in segments: held against a plain model. Rules of our own,
// no source.
#include "ledger/cardindex.h"

#include <cmath>

#include "ledger/memoryledger.h"
#include "record/card.h"
#include "support/cardmodel.h"
#include "support/sealedledger.h"

namespace ledger {
namespace {

using support::CardMaker;
using support::CardModel;
using support::draftSaying;
using support::instantAt;

enum class Kind { Plain, Sealed };

std::shared_ptr<Codec> codecFor(MemoryLedger& ledger, Kind kind) {
    seal::KeyRows rows;
    if (kind == Kind::Plain) return plainCodec();
    return std::make_shared<seal::SealingCodec>(support::newKeyring(rows, ledger.id()),
                                                ledger.keyShelf());
}

/// One step of a random life: mostly cards, now and then all else that happens to them.
void step(MemoryLedger& ledger, CardModel& model, CardMaker& make, std::shared_ptr<Codec> codec) {
    const std::vector<CardRow> before = model.all();
    const std::uint32_t what = make.below(20);
    if (what == 0 && !before.empty()) {
        const auto patient = before[make.below(std::uint32_t(before.size()))].patient;
        ASSERT_TRUE(
            ledger.append({draftSaying("erased")}, instantAt(1), {.forgets = patient}).ok());
        return model.forget(patient);
    }
    if (what == 1) return ledger.use(codec);  // all that was read is forgotten
    if (what == 2) {
        ASSERT_TRUE(ledger.rebuild({.cards = before}).ok());
        return;
    }
    std::vector<CardRow> cards;
    for (std::uint32_t count = make.below(3) == 0 ? make.below(40) : 1; cards.size() < count;)
        cards.push_back(before.empty() || make.below(3) != 0
                            ? make.card()
                            : make.renamed(before[make.below(std::uint32_t(before.size()))]));
    ASSERT_TRUE(ledger.append({draftSaying("x")}, instantAt(1), {.cards = cards}).ok());
    model.put(cards);
}

void expectSame(const base::Result<CardPage>& found, const CardPage& expected) {
    ASSERT_TRUE(found.ok()) << base::english(found.error());
    EXPECT_EQ(found->total, expected.total);
    ASSERT_EQ(found->rows.size(), expected.rows.size());
    EXPECT_TRUE(found->rows == expected.rows);
}

class AnyLife : public testing::TestWithParam<std::tuple<Kind, std::uint32_t>> {};

// The seeds are fixed; each round is the same on every machine, but for the random ids.
TEST_P(AnyLife, OfCardsAnswersAsThePlainModelDoes) {
    const auto [kind, seed] = GetParam();
    MemoryLedger ledger;
    const auto codec = codecFor(ledger, kind);
    ledger.use(codec);
    CardModel model;
    CardMaker make(seed);
    for (int round = 0; round < 150; ++round) {
        ASSERT_NO_FATAL_FAILURE(step(ledger, model, make, codec));
        const CardQuery query = make.query(model.all().size());
        ASSERT_NO_FATAL_FAILURE(expectSame(ledger.cards(query), model.find(query))) << round;
        ASSERT_NO_FATAL_FAILURE(expectSame(ledger.cards({}), model.find({}))) << round;
        ASSERT_FALSE(testing::Test::HasFailure()) << round;
    }
    const auto text = ledger.cardText();
    ASSERT_TRUE(text.ok());
    EXPECT_EQ(*text, CardBook::textOf(model.all()));
}

INSTANTIATE_TEST_SUITE_P(CardIndex, AnyLife,
                         testing::Combine(testing::Values(Kind::Plain, Kind::Sealed),
                                          testing::Range(1U, 7U)));

class Index : public testing::Test {
  protected:
    MemoryCardShelf m_shelf;
    CardIndex m_index{m_shelf};
    RightEdge m_edge;

    void putOne(const std::string& sortKey, std::vector<std::string> keys) {
        const RightEdge before = m_edge;
        m_edge.append(leafHash(sortKey));
        const CardIndex::Change change{
            .isNew = true, .keys = {base::LearnerId::random().text(), sortKey, std::move(keys)}};
        ASSERT_TRUE(m_index.put({change}, before, m_edge).ok());
    }
    std::uint64_t totalOf(std::vector<std::string> words) {
        return m_index.find({.words = std::move(words)}, m_edge)->total;
    }
};

TEST_F(Index, FewSegmentsLieBesideEachOther) {
    for (int i = 1; i <= 1500; ++i) {
        putOne(std::to_string(i * 7919 % 10007), {"w" + std::to_string(i)});
        EXPECT_LE(double(m_index.segments()), 2 + std::log(i) / std::log(4)) << i;
    }
    EXPECT_EQ(m_shelf.stored().size(), m_index.segments() + 2) << "nothing is left lying about";
    EXPECT_EQ(totalOf({"w1234"}), 1U);
    EXPECT_EQ(totalOf({"w"}), 1500U);
    EXPECT_EQ(totalOf({}), 1500U);
}

// Before the first window nothing is read that grows with the number of people.
TEST_F(Index, TheFirstPageNeedsNoSegment) {
    for (int i = 0; i < 300; ++i) putOne(std::to_string(1000 + i), {});
    m_index.close();
    const auto whole = m_shelf.stored();
    std::size_t read = 0;
    for (auto& [name, row] : m_shelf.stored())
        if (row.starts_with("cardseg1")) row = "", ++read;
    ASSERT_GE(read, 1U);
    const auto page = m_index.find({.limit = 50}, m_edge);
    ASSERT_TRUE(page.ok());
    EXPECT_EQ(page->total, 300U);
    EXPECT_EQ(page->learners.size(), 50U);
    EXPECT_EQ(m_index.find({.words = {"a"}}, m_edge).error().code, base::Code::StoreEdgeWrong);
    m_shelf.stored() = whole;
    EXPECT_EQ(m_index.find({.words = {"a"}}, m_edge)->total, 0U);
}

TEST_F(Index, BelongsToOneHeadOfItsLedger) {
    putOne("a", {"a"});
    const auto earlier = m_shelf.stored();
    const RightEdge then = m_edge;
    putOne("b", {"b"});
    m_index.close();
    EXPECT_EQ(m_index.find({}, then).error().code, base::Code::StoreEdgeWrong);
    EXPECT_EQ(m_index.find({}, m_edge)->total, 2U);
    m_index.close();
    m_shelf.stored() = earlier;
    EXPECT_EQ(m_index.find({}, m_edge).error().code, base::Code::StoreEdgeWrong);
}

// As the names go in, by record::searchKeys, and as they are typed, by record::searchWords.
TEST_F(Index, FindsNamesHoweverTheyAreTyped) {
    for (const char* name : {"Jürgen Müller", "Zoë O'Brien-Łukasz", "Ñandú Çelik", "Анна Иванова"})
        putOne(name, record::searchKeys(name));
    for (const auto& [typed, expected] :
         std::initializer_list<std::pair<const char*, unsigned>>{{"mull", 1},
                                                                 {"MÜLL", 1},
                                                                 {"muell j", 1},
                                                                 {"jur mul", 1},
                                                                 {"mul zoe", 0},
                                                                 {"zoe", 1},
                                                                 {"lukasz obri", 1},
                                                                 {"nandu", 1},
                                                                 {"ñan çel", 1},
                                                                 {"Иван", 1},
                                                                 {"ivan", 1},
                                                                 {"üller", 0},
                                                                 {"", 4}})
        EXPECT_EQ(totalOf(record::searchWords(typed)), expected) << typed;
}

// 100 ranks end in the middle of a machine word.
TEST(Segments, GiveBackWhatTheyWereMadeOf) {
    CardMaker make(3);
    std::vector<CardKeys> cards;
    for (int i = 0; i < 100; ++i) {
        const CardRow card = make.card();
        cards.push_back({card.learner.text(), card.sortKey, card.searchKeys});
    }
    const auto segment = Segment::read(Segment::write(cards));
    ASSERT_TRUE(segment.ok());
    ASSERT_EQ((*segment)->cards(), 100U);
    EXPECT_EQ(RankSet::ofAll(100).size(), 100U);
    for (const CardKeys& card : cards) {
        const auto rank = (*segment)->rankOf(card.learner);
        ASSERT_TRUE(rank.has_value());
        EXPECT_EQ((*segment)->sortKey(*rank), card.sortKey);
        for (const std::string& key : card.searchKeys)
            EXPECT_TRUE((*segment)->beginning(key).has(*rank));
    }
    EXPECT_EQ((*segment)->rankOf(base::LearnerId::random().text()), std::nullopt);
    const RankSet none(100);
    EXPECT_EQ(Segment::merge({{segment->get(), &none}}), Segment::write(cards));
}

// Read where it lies, a segment must not lead outside of its bytes, whatever these are.
TEST(Segments, ThatAreDamagedAreRefusedOrReadWithinTheirBytes) {
    CardMaker make(4);
    std::vector<CardKeys> cards;
    for (int i = 0; i < 12; ++i) {
        const CardRow card = make.card();
        cards.push_back({card.learner.text(), card.sortKey, card.searchKeys});
    }
    const std::string whole = Segment::write(cards);
    for (std::size_t size = 0; size < whole.size(); ++size)
        EXPECT_FALSE(Segment::read(whole.substr(0, size)).ok()) << size;
    EXPECT_FALSE(Segment::read(whole + 'x').ok());
    std::size_t refused = 0;
    for (std::size_t at = 0; at < whole.size(); ++at)
        for (const int bit : {0, 7}) {
            std::string spoiled = whole;
            spoiled[at] = static_cast<char>(spoiled[at] ^ (1 << bit));
            const auto segment = Segment::read(spoiled);
            refused += segment ? 0 : 1;
            if (!segment) continue;
            for (std::uint32_t rank = 0; rank < (*segment)->cards(); ++rank)
                EXPECT_LE((*segment)->sortKey(rank).size(), whole.size());
            EXPECT_LE((*segment)->beginning("a").size(), (*segment)->cards());
        }
    EXPECT_GT(refused, 100U);
}

}  // namespace
}  // namespace ledger
