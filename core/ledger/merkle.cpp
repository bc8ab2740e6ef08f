// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/merkle.h"

#include <sodium.h>

#include <bit>
#include <charconv>
#include <span>

namespace ledger {
namespace {

using Leaves = std::span<const Digest>;

/// Where RFC 6962 splits a tree of more than one leaf: the largest power of two below its size.
std::size_t splitOf(std::size_t size) { return std::bit_floor(size - 1); }

Digest rootOver(Leaves leaves) {
    if (leaves.empty()) return emptyRoot();
    if (leaves.size() == 1) return leaves.front();
    const std::size_t split = splitOf(leaves.size());
    return nodeHash(rootOver(leaves.first(split)), rootOver(leaves.subspan(split)));
}

void proveInclusion(Leaves leaves, std::size_t index, Proof& proof) {
    if (leaves.size() == 1) return;
    const std::size_t split = splitOf(leaves.size());
    if (index < split) {
        proveInclusion(leaves.first(split), index, proof);
        proof.push_back(rootOver(leaves.subspan(split)));
    } else {
        proveInclusion(leaves.subspan(split), index - split, proof);
        proof.push_back(rootOver(leaves.first(split)));
    }
}

/// Whether the verifier holds the root of what is being proved, as it does as long as the old tree
/// is a left part of it.
enum class OldRoot { Known, Unknown };

void proveConsistency(Leaves leaves, std::size_t size, OldRoot known, Proof& proof) {
    if (size == leaves.size()) {
        if (known == OldRoot::Unknown) proof.push_back(rootOver(leaves));
        return;
    }
    const std::size_t split = splitOf(leaves.size());
    if (size <= split) {
        proveConsistency(leaves.first(split), size, known, proof);
        proof.push_back(rootOver(leaves.subspan(split)));
    } else {
        proveConsistency(leaves.subspan(split), size - split, OldRoot::Unknown, proof);
        proof.push_back(rootOver(leaves.first(split)));
    }
}

}  // namespace

Digest sha256(std::string_view bytes) {
    Digest digest{};
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()),
                       bytes.size());
    return digest;
}

std::string toHex(const Digest& digest) {
    return toHex(std::string_view(reinterpret_cast<const char*>(digest.data()), digest.size()));
}

std::string toHex(std::string_view bytes) {
    std::string hex(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
                   bytes.size());
    hex.pop_back();
    return hex;
}

bool isHex(std::string_view text, std::size_t letters) {
    return text.size() == letters &&
           text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

std::optional<Digest> digestOf(std::string_view hex) {
    Digest digest{};
    std::size_t length = 0;
    const int failed = sodium_hex2bin(digest.data(), digest.size(), hex.data(), hex.size(), nullptr,
                                      &length, nullptr);
    if (failed != 0 || hex.size() != 64 || toHex(digest) != hex) return std::nullopt;
    return digest;
}

Digest leafHash(std::string_view entry) {
    const unsigned char prefix = 0;
    Digest digest{};
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    crypto_hash_sha256_update(&state, &prefix, 1);
    crypto_hash_sha256_update(&state, reinterpret_cast<const unsigned char*>(entry.data()),
                              entry.size());
    crypto_hash_sha256_final(&state, digest.data());
    return digest;
}

Digest nodeHash(const Digest& left, const Digest& right) {
    const unsigned char prefix = 1;
    Digest digest{};
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    crypto_hash_sha256_update(&state, &prefix, 1);
    crypto_hash_sha256_update(&state, left.data(), left.size());
    crypto_hash_sha256_update(&state, right.data(), right.size());
    crypto_hash_sha256_final(&state, digest.data());
    return digest;
}

Digest emptyRoot() { return sha256({}); }

Digest rootOf(const std::vector<Digest>& leaves) { return rootOver(leaves); }

void RightEdge::append(const Digest& leaf) {
    Digest node = leaf;
    // Every bit that is set at the low end is a complete subtree that the new leaf completes to
    // one of twice its size.
    for (std::uint64_t bits = m_size; (bits & 1U) != 0; bits >>= 1U) {
        node = nodeHash(m_peaks.back(), node);
        m_peaks.pop_back();
    }
    m_peaks.push_back(node);
    ++m_size;
}

Digest RightEdge::root() const {
    if (m_peaks.empty()) return emptyRoot();
    Digest node = m_peaks.back();
    for (std::size_t i = m_peaks.size() - 1; i-- > 0;) node = nodeHash(m_peaks[i], node);
    return node;
}

std::string RightEdge::text() const {
    std::string out = std::to_string(m_size) + ":";
    for (std::size_t i = 0; i < m_peaks.size(); ++i) out += (i > 0 ? "," : "") + toHex(m_peaks[i]);
    return out;
}

std::optional<RightEdge> RightEdge::parse(std::string_view text) {
    RightEdge edge;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), edge.m_size);
    if (read.ec != std::errc{}) return std::nullopt;
    const auto peaks = static_cast<std::size_t>(std::popcount(edge.m_size));
    std::size_t at = static_cast<std::size_t>(read.ptr - text.data()) + 1;  // past the colon
    for (std::size_t i = 0; i < peaks; ++i, at += 65) {
        if (at > text.size()) return std::nullopt;
        const auto digest = digestOf(text.substr(at, 64));
        if (!digest) return std::nullopt;
        edge.m_peaks.push_back(*digest);
    }
    if (edge.text() != text) return std::nullopt;
    return edge;
}

std::optional<Proof> inclusionProof(const std::vector<Digest>& leaves, std::uint64_t index) {
    if (index >= leaves.size()) return std::nullopt;
    Proof proof;
    proveInclusion(leaves, index, proof);
    return proof;
}

std::optional<Proof> consistencyProof(const std::vector<Digest>& leaves, std::uint64_t size) {
    if (size == 0 || size > leaves.size()) return std::nullopt;
    Proof proof;
    proveConsistency(leaves, size, OldRoot::Known, proof);
    return proof;
}

bool verifyInclusion(const InclusionClaim& claim, const Proof& proof) {
    if (claim.index >= claim.size) return false;
    std::uint64_t index = claim.index;
    std::uint64_t last = claim.size - 1;
    Digest node = claim.leaf;
    for (const Digest& sibling : proof) {
        if (last == 0) return false;  // the proof goes on above the root
        if ((index & 1U) != 0 || index == last) {
            node = nodeHash(sibling, node);
            while ((index & 1U) == 0 && index != 0) {
                index >>= 1U;
                last >>= 1U;
            }
        } else {
            node = nodeHash(node, sibling);
        }
        index >>= 1U;
        last >>= 1U;
    }
    return last == 0 && node == claim.root;
}

bool verifyConsistency(const ConsistencyClaim& claim, const Proof& proof) {
    if (claim.oldSize > claim.newSize) return false;
    if (claim.oldSize == claim.newSize) return proof.empty() && claim.oldRoot == claim.newRoot;
    if (claim.oldSize == 0) return proof.empty() && claim.oldRoot == emptyRoot();
    if (proof.empty()) return false;
    std::size_t next = 0;
    std::uint64_t old = claim.oldSize - 1;
    std::uint64_t last = claim.newSize - 1;
    for (; (old & 1U) != 0; old >>= 1U) last >>= 1U;
    // A complete old tree is a node of the new one, so its root is not sent.
    Digest oldNode = std::has_single_bit(claim.oldSize) ? claim.oldRoot : proof[next++];
    Digest newNode = oldNode;
    for (; next < proof.size(); ++next) {
        if (last == 0) return false;
        if ((old & 1U) != 0 || old == last) {
            oldNode = nodeHash(proof[next], oldNode);
            newNode = nodeHash(proof[next], newNode);
            while ((old & 1U) == 0 && old != 0) {
                old >>= 1U;
                last >>= 1U;
            }
        } else {
            newNode = nodeHash(newNode, proof[next]);
        }
        old >>= 1U;
        last >>= 1U;
    }
    return last == 0 && oldNode == claim.oldRoot && newNode == claim.newRoot;
}

}  // namespace ledger
