// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a few letters find, remembered: held against the same without a memory.
#include "ledger/beginnings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

#include "ledger/memoryledger.h"

namespace ledger {
namespace {

/// Many cards with short words of few letters, one of them of two bytes.
std::vector<CardKeys> manyCards(std::size_t count) {
    std::mt19937 random(20261126);
    const std::vector<std::string> letters = {"a", "a", "a", "b", "c", "\u0628"};
    const auto word = [&] {
        std::string text;
        for (std::uint32_t i = 0; i < 2 + random() % 4; ++i) text += letters[random() % 6];
        return text;
    };
    std::vector<CardKeys> cards;
    for (std::size_t i = 0; i < count; ++i)
        cards.push_back({base::LearnerId::random().text(), word(), {word(), word()}});
    return cards;
}

const std::vector<std::string> asked = {"a",   "b",   "\u0628",       "aa",   "ab",
                                        "aaa", "abc", "\u0628\u0628", "aaaa", "\u0628a\u0628",
                                        "z",   "\xd8"};

TEST(Beginnings, FindTheSameAsWithoutAMemory) {
    const auto segment = *Segment::read(Segment::write(manyCards(80'000)));
    RankSet dead(segment->cards());
    for (std::uint32_t rank = 0; rank < segment->cards(); rank += 7) dead.insert(rank);
    Beginnings beginnings;
    beginnings.gather(*segment, dead);
    const std::size_t kept = beginnings.kept();
    EXPECT_GT(kept, 6U);
    EXPECT_LT(kept, 100U) << "only what many cards have";
    for (const std::string& prefix : asked) {
        RankSet ranks = segment->beginning(prefix);
        ranks.remove(dead);
        const Begun expected = Begun::of(ranks);
        EXPECT_EQ(beginnings.find(*segment, dead, prefix), expected) << prefix;
        EXPECT_EQ(Beginnings().find(*segment, dead, prefix), expected) << prefix;
    }
    EXPECT_EQ(beginnings.kept(), kept + 1) << "half a letter was asked for, and is kept";
    beginnings.clear();
    dead = RankSet(segment->cards());
    EXPECT_EQ(beginnings.find(*segment, dead, "a").total, segment->beginning("a").size());
    EXPECT_EQ(beginnings.kept(), 1U) << "asked for once, it is kept";
}

std::vector<CardKeys> inOrder(std::vector<CardKeys> cards) {
    std::sort(cards.begin(), cards.end(), [](const CardKeys& a, const CardKeys& b) {
        return std::tie(a.sortKey, a.learner) < std::tie(b.sortKey, b.learner);
    });
    return cards;
}

/// Those that have a word with this beginning.
CardIndex::Page pageOf(const std::vector<CardKeys>& cards, const CardQuery& query) {
    CardIndex::Page page;
    for (const CardKeys& card : cards) {
        const auto& keys = card.searchKeys;
        if (std::none_of(keys.begin(), keys.end(),
                         [&](const std::string& key) { return key.starts_with(query.words[0]); }))
            continue;
        if (page.total++ >= query.offset && page.learners.size() < query.limit)
            page.learners.push_back(card.learner);
    }
    return page;
}

TEST(Beginnings, AreForgottenWhenACardGetsAnotherName) {
    MemoryCardShelf shelf;
    RightEdge edge;
    edge.append(leafHash("first"));
    std::vector<CardKeys> cards = manyCards(12'000);
    ASSERT_TRUE(CardIndex(shelf).make(cards, edge).ok());
    CardIndex index(shelf);
    const auto expectAll = [&] {
        const std::vector<CardKeys> sorted = inOrder(cards);
        for (const std::string& prefix : asked)
            for (const std::uint32_t offset : {0U, 180U, 250U}) {
                const CardQuery query{.words = {prefix}, .offset = offset, .limit = 50};
                const auto found = index.find(query, edge);
                ASSERT_TRUE(found.ok());
                const auto expected = pageOf(sorted, query);
                ASSERT_EQ(found->total, expected.total) << prefix << offset;
                ASSERT_EQ(found->learners, expected.learners) << prefix << offset;
            }
    };
    ASSERT_NO_FATAL_FAILURE(expectAll());
    for (const std::size_t at : {0U, 10U, 11'000U}) {
        cards[at].sortKey = "a";
        cards[at].searchKeys = {"zb", "\u0628\u0628"};
        const RightEdge before = edge;
        edge.append(leafHash(cards[at].learner));
        ASSERT_TRUE(index.put({{.isNew = false, .keys = cards[at]}}, before, edge).ok());
    }
    ASSERT_NO_FATAL_FAILURE(expectAll());
}

}  // namespace
}  // namespace ledger
