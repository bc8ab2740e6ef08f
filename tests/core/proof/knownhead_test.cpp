// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What two heads say of each other: RFC 9162 sections 2.1.4 and 8.1.3 (a log that can't be one list
// for all who know a head of it is caught). How it is told are rules of our own.
#include "proof/knownhead.h"

#include <gtest/gtest.h>

namespace proof {
namespace {

const base::LedgerId ours = base::LedgerId::random();
const Roots roots = {{4, "aa11"}, {7, "bb22"}, {9, "cc33"}};

std::vector<Finding> held(const std::vector<KnownHead>& heads) {
    return holdAgainst(ledger::Lineage(ours), 10, roots, heads);
}

TEST(KnownHeads, NothingIsWrongWhereAllAgree) {
    EXPECT_TRUE(held({}).empty());
    EXPECT_TRUE(held({{4, "aa11"}, {9, "cc"}, {7, "b", "2"}}).empty());
}

TEST(KnownHeads, WhatWasRewrittenLiesBetweenTheTwoNearest) {
    EXPECT_EQ(held({{9, "dd"}}), (std::vector<Finding>{{Kind::Rewritten, 0, 8}}));
    EXPECT_EQ(held({{9, "dd"}, {4, "aa"}}), (std::vector<Finding>{{Kind::Rewritten, 4, 8}}));
    EXPECT_EQ(held({{9, "dd"}, {7, "dd"}, {4, "aa"}}),
              (std::vector<Finding>{{Kind::Rewritten, 4, 6}}));
}

TEST(KnownHeads, AHeadOfMoreEntriesThanThereAreNamesThoseThatAreGone) {
    EXPECT_EQ(held({{11, "ee"}}), (std::vector<Finding>{{Kind::CutOff, 10, 10}}));
    EXPECT_EQ(held({{11, "ee"}, {30, "ff"}}), (std::vector<Finding>{{Kind::CutOff, 10, 29}}));
}

TEST(KnownHeads, AnOlderHeadThatDisagreesWhileANewerAgreesIsOfAFork) {
    EXPECT_EQ(held({{4, "dd"}, {9, "cc"}}), (std::vector<Finding>{{Kind::Forked, 0, 3}}));
    EXPECT_EQ(held({{9, "dd"}, {9, "cc"}}), (std::vector<Finding>{{Kind::Forked, 0, 8}}))
        << "two heads of one size";
}

TEST(KnownHeads, AHeadThatNamesAnotherRecordIsNotHeldAgainstThisOne) {
    KnownHead other{4, "dd"};
    other.ledger = base::LedgerId::random();
    EXPECT_EQ(held({other}), (std::vector<Finding>{{Kind::OtherRecord, 0, 3}}));
    other.ledger = ours;
    EXPECT_EQ(held({other}), (std::vector<Finding>{{Kind::Rewritten, 0, 3}}));
}

TEST(KnownHeads, AHeadOfAFormerIdIsOfThisRecordAsFarAsItHadThatId) {
    const auto former = base::LedgerId::random();
    const ledger::Lineage restored(ours, {{former, {7, "bb22"}}});
    KnownHead head{7, "bb22"};
    head.ledger = former;
    EXPECT_TRUE(holdAgainst(restored, 10, roots, {head}).empty());
    head = {9, "cc33"};
    head.ledger = former;
    EXPECT_EQ(holdAgainst(restored, 10, roots, {head}),
              (std::vector<Finding>{{Kind::OtherRecord, 0, 8}}))
        << "the former one went on by itself";
}

TEST(KnownHeads, AShortenedRootAgreesByBothItsEnds) {
    const KnownHead head{4, "ab", "yz"};
    EXPECT_TRUE(head.agreesWith("abcxyz"));
    EXPECT_FALSE(head.agreesWith("abcxy"));
    EXPECT_FALSE(head.agreesWith("bcxyz"));
}

}  // namespace
}  // namespace proof
