// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Looked at on several threads a record has to give the very report it gives on one.
#include "proof/spread.h"

#include "forger.h"

namespace support {
namespace {

constexpr std::size_t threads = 3;

/// As verified(), but a few entries at a time on other threads.
proof::Report spreadOver(SealedHistory& history, proof::Grounds grounds, const Stored& stored,
                         std::size_t atOnce) {
    proof::Verifier verifier(std::move(grounds));
    std::vector<proof::Looker> lookers;
    for (std::size_t i = 0; i < threads; ++i)
        lookers.push_back(*verifier.lookerWith(history.ledger().keyShelf()));
    proof::Spread spread(std::move(lookers), [&](const proof::Seen& seen) { verifier.take(seen); });
    proof::Stretch stretch;
    for (const auto& [seq, bytes] : stored) {
        stretch.add(seq, bytes);
        if (stretch.size() == atOnce) spread.put(stretch);
    }
    spread.put(stretch);
    spread.finish();
    return verifier.finish();
}

void expectSame(const proof::Report& one, const proof::Report& other) {
    EXPECT_EQ(one.findings, other.findings);
    EXPECT_EQ(one.head, other.head);
    EXPECT_EQ(one.signatures, other.signatures);
    EXPECT_EQ(one.opened, other.opened);
    EXPECT_EQ(one.closed, other.closed);
    EXPECT_EQ(one.erased, other.erased);
}

TEST(SpreadOverThreads, ARecordThatIsWholeIsWhole) {
    SealedHistory history;
    const Stored stored = storedIn(history.ledger());
    for (const std::size_t atOnce : {std::size_t{1}, std::size_t{4}, stored.size()}) {
        const auto report = spreadOver(history, history.grounds(), stored, atOnce);
        EXPECT_FALSE(report.isWrong());
        EXPECT_EQ(report.opened, stored.size());
        expectSame(report, verified(history.grounds(), stored));
        expectSame(spreadOver(history, history.keyless(), stored, atOnce),
                   verified(history.keyless(), stored));
    }
}

TEST(SpreadOverThreads, EveryForgeryIsToldAsOnOne) {
    constexpr unsigned seed = 31'415;
    constexpr int rounds = 6;
    SealedHistory history, other;
    Forger forger(history, other, seed);
    const proof::Grounds grounds = history.grounds({proof::KnownHead::of(history.ledger().head())});
    for (int how = 0; how < forgeries; ++how)
        for (int round = 0; round < rounds; ++round) {
            const Forged forged = forger.forge(static_cast<Forgery>(how));
            const auto report = spreadOver(history, grounds, forged.stored, 1 + round % 3);
            EXPECT_TRUE(report.isWrong()) << forger.nameOf(static_cast<Forgery>(how));
            expectSame(report, verified(grounds, forged.stored));
        }
}

TEST(SpreadOverThreads, WhatIsSeenComesInOrder) {
    SealedHistory history;
    const Stored stored = storedIn(history.ledger());
    const proof::Verifier verifier(history.grounds());
    std::vector<proof::Looker> lookers;
    for (std::size_t i = 0; i < threads; ++i)
        lookers.push_back(*verifier.lookerWith(history.ledger().keyShelf()));
    std::vector<std::uint64_t> seen, wanted;
    proof::Spread spread(std::move(lookers),
                         [&](const proof::Seen& one) { seen.push_back(one.seq); });
    proof::Stretch stretch;
    for (const auto& [seq, bytes] : stored) {
        wanted.push_back(seq);
        stretch.add(seq, bytes);
        spread.put(stretch);
        EXPECT_EQ(stretch.size(), 0U);
    }
    spread.finish();
    EXPECT_EQ(seen, wanted);
}

TEST(SpreadOverThreads, AsManyAsAreAskedForOrAsThereAreCores) {
    EXPECT_EQ(proof::threadsOf({.threads = 5}), 5U);
    EXPECT_GE(proof::threadsOf({}), 1U);
}

}  // namespace
}  // namespace support
