// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

namespace ledger {

static_assert(std::endian::native == std::endian::little, "rows are stored little-endian");

/// Puts numbers and texts one behind the other, for rows that only the program reads.
class ByteWriter {
  public:
    ByteWriter& count(std::uint64_t number) {
        m_bytes.append(reinterpret_cast<const char*>(&number), sizeof number);
        return *this;
    }
    ByteWriter& text(std::string_view bytes) {
        count(bytes.size());
        m_bytes.append(bytes);
        return *this;
    }
    std::string take() { return std::move(m_bytes); }

  private:
    std::string m_bytes;
};

/// Reads them in the same order. Once something is missing all that follows is 0 and empty.
class ByteReader {
  public:
    explicit ByteReader(std::string_view bytes) : m_left(bytes) {}

    std::uint64_t count() {
        std::uint64_t number = 0;
        if (m_left.size() < sizeof number) return fail();
        std::memcpy(&number, m_left.data(), sizeof number);
        m_left.remove_prefix(sizeof number);
        return number;
    }
    std::string_view text() {
        const std::uint64_t size = count();
        if (size > m_left.size()) fail();
        const std::string_view found = m_left.substr(0, m_isGood ? size : 0);
        m_left.remove_prefix(found.size());
        return found;
    }
    /// The count of things that take so many bytes each at least; 0 when so many can't follow.
    std::uint64_t countOf(std::size_t leastBytes) {
        const std::uint64_t number = count();
        return number > m_left.size() / leastBytes ? fail() : number;
    }

    /// Whether all was there and nothing is left.
    bool isWhole() const { return m_isGood && m_left.empty(); }
    bool isGood() const { return m_isGood; }

  private:
    std::uint64_t fail() {
        m_isGood = false;
        m_left = {};
        return 0;
    }
    std::string_view m_left;
    bool m_isGood = true;
};

/// Overwrites what a text held, so that it does not stay in memory that is given back.
void wipe(std::string& text);

}  // namespace ledger
