// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/merkle.h"

#include <gtest/gtest.h>

namespace ledger {
namespace {

// The eight reference leaves, their roots and proofs as published in the tests of
// https://github.com/transparency-dev/merkle (proof/verify_test.go, rfc6962/rfc6962_test.go).
std::vector<Digest> referenceLeaves() {
    const std::string entries[] = {"",         std::string(1, '\0'), "\x10", " !", "01", "@ABC",
                                   "PQRSTUVW", "`abcdefghijklmno"};
    std::vector<Digest> leaves;
    for (const std::string& entry : entries) leaves.push_back(leafHash(entry));
    return leaves;
}

const char* const referenceRoots[] = {
    "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
    "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
    "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
    "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
    "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
    "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
    "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328"};

struct PublishedProof {
    std::uint64_t at;    ///< of an inclusion the leaf, counted from 1; else the old size
    std::uint64_t size;  ///< of the tree, the newer one
    std::vector<std::string> hashes;
};

const std::vector<PublishedProof> publishedInclusions = {
    {1, 1, {}},
    {1,
     8,
     {"96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
      "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
      "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4"}},
    {6,
     8,
     {"bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
      "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
      "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7"}},
    {3, 3, {"fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125"}},
    {2,
     5,
     {"6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
      "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
      "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b"}}};

const std::vector<PublishedProof> publishedConsistencies = {
    {1, 1, {}},
    {1,
     8,
     {"96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
      "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
      "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4"}},
    {6,
     8,
     {"0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a",
      "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
      "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7"}},
    {2,
     5,
     {"5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
      "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b"}},
    {6,
     7,
     {"0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a",
      "b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f",
      "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7"}}};

std::vector<Digest> firstLeaves(std::uint64_t count) {
    auto leaves = referenceLeaves();
    leaves.resize(count);
    return leaves;
}

std::vector<std::string> hexOf(const Proof& proof) {
    std::vector<std::string> hashes;
    for (const Digest& digest : proof) hashes.push_back(toHex(digest));
    return hashes;
}

Digest flipped(Digest digest) {
    digest[0] ^= 8;
    return digest;
}

/// The ways the reference tests spoil a proof.
std::vector<Proof> spoiled(const Proof& proof, const Digest& root) {
    std::vector<Proof> all;
    for (std::size_t i = 0; i < proof.size(); ++i) {
        all.push_back(proof);
        all.back()[i] = flipped(proof[i]);
    }
    all.push_back(proof);
    all.back().push_back(root);
    all.push_back(proof);
    all.back().insert(all.back().begin(), root);
    if (!proof.empty()) all.emplace_back(proof.begin(), proof.end() - 1);
    return all;
}

TEST(Merkle, HashesAsPublished) {
    EXPECT_EQ(toHex(emptyRoot()),
              "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(toHex(leafHash("")),
              "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d");
    EXPECT_EQ(toHex(leafHash("L123456")),
              "395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56");
    // FIPS 180-2, appendix B.1.
    EXPECT_EQ(toHex(sha256("abc")),
              "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Merkle, HasThePublishedRoots) {
    RightEdge edge;
    EXPECT_EQ(edge.root(), emptyRoot());
    const auto leaves = referenceLeaves();
    for (std::size_t size = 1; size <= leaves.size(); ++size) {
        edge.append(leaves[size - 1]);
        EXPECT_EQ(edge.size(), size);
        EXPECT_EQ(toHex(edge.root()), referenceRoots[size - 1]);
        EXPECT_EQ(toHex(rootOf(firstLeaves(size))), referenceRoots[size - 1]);
    }
}

TEST(Merkle, MakesAndAcceptsThePublishedInclusionProofs) {
    for (const PublishedProof& row : publishedInclusions) {
        const auto leaves = firstLeaves(row.size);
        const auto proof = inclusionProof(leaves, row.at - 1);
        ASSERT_TRUE(proof);
        EXPECT_EQ(hexOf(*proof), row.hashes);
        const InclusionClaim claim{row.at - 1, row.size, leaves[row.at - 1],
                                   *digestOf(referenceRoots[row.size - 1])};
        EXPECT_TRUE(verifyInclusion(claim, *proof));
        for (const Proof& bad : spoiled(*proof, claim.root))
            EXPECT_FALSE(verifyInclusion(claim, bad)) << row.at << " of " << row.size;
    }
    EXPECT_EQ(inclusionProof(referenceLeaves(), 8), std::nullopt);
}

TEST(Merkle, RefusesOtherInclusionClaims) {
    for (const PublishedProof& row : publishedInclusions) {
        const auto leaves = firstLeaves(row.size);
        const auto proof = inclusionProof(leaves, row.at - 1).value();
        const InclusionClaim good{row.at - 1, row.size, leaves[row.at - 1], rootOf(leaves)};
        std::vector<InclusionClaim> others(7, good);
        others[0].index -= 1;
        others[1].index += 1;
        others[2].index ^= 2;
        others[3].size *= 2;
        others[4].size /= 2;
        others[5].leaf = flipped(good.leaf);
        others[6].root = emptyRoot();
        for (std::size_t i = 0; i < others.size(); ++i)
            EXPECT_FALSE(verifyInclusion(others[i], proof)) << i << " at " << row.at;
    }
}

TEST(Merkle, MakesAndAcceptsThePublishedConsistencyProofs) {
    for (const PublishedProof& row : publishedConsistencies) {
        const auto proof = consistencyProof(firstLeaves(row.size), row.at);
        ASSERT_TRUE(proof);
        EXPECT_EQ(hexOf(*proof), row.hashes);
        const ConsistencyClaim claim{row.at, row.size, *digestOf(referenceRoots[row.at - 1]),
                                     *digestOf(referenceRoots[row.size - 1])};
        EXPECT_TRUE(verifyConsistency(claim, *proof));
        for (const Proof& bad : spoiled(*proof, claim.newRoot))
            EXPECT_FALSE(verifyConsistency(claim, bad)) << row.at << " to " << row.size;
        if (proof->empty()) continue;
        std::vector<ConsistencyClaim> others(8, claim);
        others[0].oldSize -= 1;
        others[1].oldSize += 1;
        others[2].oldSize ^= 2;
        others[3].newSize *= 2;
        others[4].newSize /= 2;
        others[5].oldRoot = flipped(claim.oldRoot);
        others[6].newRoot = flipped(claim.newRoot);
        std::swap(others[7].oldRoot, others[7].newRoot);
        for (std::size_t i = 0; i < others.size(); ++i)
            EXPECT_FALSE(verifyConsistency(others[i], *proof)) << i << " at " << row.at;
    }
    EXPECT_EQ(consistencyProof(referenceLeaves(), 0), std::nullopt);
    EXPECT_EQ(consistencyProof(referenceLeaves(), 9), std::nullopt);
}

TEST(Merkle, EveryProofOfEverySmallTreeHolds) {
    std::vector<Digest> leaves;
    std::vector<Digest> roots = {emptyRoot()};
    RightEdge edge;
    for (int i = 0; i < 33; ++i) {
        leaves.push_back(leafHash(std::to_string(i)));
        edge.append(leaves.back());
        roots.push_back(edge.root());
        ASSERT_EQ(rootOf(leaves), edge.root());
        const std::uint64_t size = leaves.size();
        for (std::uint64_t at = 0; at < size; ++at) {
            EXPECT_TRUE(verifyInclusion({at, size, leaves[at], edge.root()},
                                        inclusionProof(leaves, at).value()));
            EXPECT_TRUE(verifyConsistency({at + 1, size, roots[at + 1], edge.root()},
                                          consistencyProof(leaves, at + 1).value()));
        }
    }
}

TEST(RightEdge, IsReadBackFromItsText) {
    RightEdge edge;
    for (int i = 0; i < 40; ++i) {
        const auto again = RightEdge::parse(edge.text());
        ASSERT_TRUE(again) << edge.text();
        EXPECT_EQ(*again, edge);
        edge.append(leafHash(std::to_string(i)));
    }
}

TEST(RightEdge, RefusesEveryOtherText) {
    RightEdge edge;
    edge.append(leafHash("a"));
    const std::string good = edge.text();
    const std::string bad[] = {"",         "1",
                               "1:",       "0",
                               ":",        "01" + good.substr(1),
                               good + ",", "3" + good.substr(1),
                               "x" + good, good.substr(0, 40),
                               "-1:",      "1;" + good.substr(2)};
    for (const std::string& text : bad) EXPECT_EQ(RightEdge::parse(text), std::nullopt) << text;
}

}  // namespace
}  // namespace ledger
