// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstdint>

namespace procedure {

/// A set of at most 64 conditions; condition i of the pack is bit i.
class Conditions {
  public:
    static constexpr int most = 64;

    constexpr Conditions() = default;
    constexpr explicit Conditions(std::uint64_t bits) : m_bits(bits) {}
    static constexpr Conditions single(int index) { return Conditions(std::uint64_t{1} << index); }

    constexpr std::uint64_t bits() const { return m_bits; }
    constexpr bool isEmpty() const { return m_bits == 0; }
    constexpr int count() const { return std::popcount(m_bits); }
    constexpr bool has(int index) const { return ((m_bits >> index) & 1U) != 0; }
    constexpr bool contains(Conditions all) const { return (all.m_bits & ~m_bits) == 0; }
    constexpr bool meets(Conditions other) const { return (m_bits & other.m_bits) != 0; }
    constexpr Conditions with(Conditions more) const { return Conditions(m_bits | more.m_bits); }
    constexpr Conditions without(Conditions less) const {
        return Conditions(m_bits & ~less.m_bits);
    }
    constexpr Conditions within(Conditions other) const {
        return Conditions(m_bits & other.m_bits);
    }

    constexpr bool operator==(const Conditions&) const = default;

  private:
    std::uint64_t m_bits = 0;
};

}  // namespace procedure
