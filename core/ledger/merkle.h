// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ledger {

/// A SHA-256 value.
using Digest = std::array<unsigned char, 32>;

Digest sha256(std::string_view bytes);
std::string toHex(const Digest& digest);
std::string toHex(std::string_view bytes);
/// Whether it is so many letters as toHex() writes them.
bool isHex(std::string_view text, std::size_t letters);
/// Reads 64 lower-case hex digits.
std::optional<Digest> digestOf(std::string_view hex);

// RFC 6962 section 2.1: the leading byte keeps a leaf from being passed off as a node.
Digest leafHash(std::string_view entry);
Digest nodeHash(const Digest& left, const Digest& right);
/// The root of no leaves, SHA-256 of nothing.
Digest emptyRoot();
/// The root over these leaf hashes.
Digest rootOf(const std::vector<Digest>& leaves);

/// The right edge of a tree: the roots of its complete subtrees, left to right, one for each bit of
/// its size. Enough to append and to know the root, in the logarithm of the size.
class RightEdge {
  public:
    RightEdge() = default;

    std::uint64_t size() const { return m_size; }
    void append(const Digest& leaf);
    Digest root() const;

    /// "SIZE:HEX,HEX…"; the same edge always gives the same text.
    std::string text() const;
    static std::optional<RightEdge> parse(std::string_view text);

    bool operator==(const RightEdge&) const = default;

  private:
    std::uint64_t m_size = 0;
    std::vector<Digest> m_peaks;  ///< as many as m_size has bits set, the largest first
};

using Proof = std::vector<Digest>;

/// RFC 6962 section 2.1.1: what proves that leaf `index` is in the tree of these leaves. Nothing
/// when there is no such leaf.
std::optional<Proof> inclusionProof(const std::vector<Digest>& leaves, std::uint64_t index);
/// RFC 6962 section 2.1.2: what proves that the tree of the first `size` leaves, at least one,
/// was only added to.
std::optional<Proof> consistencyProof(const std::vector<Digest>& leaves, std::uint64_t size);

struct InclusionClaim {
    std::uint64_t index = 0;
    std::uint64_t size = 0;
    Digest leaf{};
    Digest root{};
};
/// RFC 9162 section 2.1.3.2 gives the steps.
bool verifyInclusion(const InclusionClaim& claim, const Proof& proof);

struct ConsistencyClaim {
    std::uint64_t oldSize = 0;
    std::uint64_t newSize = 0;
    Digest oldRoot{};
    Digest newRoot{};
};
/// RFC 9162 section 2.1.4.2. Every tree is an addition to the empty one, whose root is fixed.
bool verifyConsistency(const ConsistencyClaim& claim, const Proof& proof);

}  // namespace ledger
