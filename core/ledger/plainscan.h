// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace ledger {

/// Goes through canonical JSON that holds nothing unusual, without making anything of it. Once
/// something else is met, all that follows fails.
class PlainScan {
  public:
    explicit PlainScan(std::string_view bytes) : m_left(bytes) {}

    bool isGood() const { return m_isGood; }
    void fail() { m_isGood = false; }
    bool isAtEnd() const { return m_isGood && m_left.empty(); }
    /// The next letter, not taken; 0 at the end.
    char next() const { return m_left.empty() ? '\0' : m_left.front(); }

    /// Whether these letters come next; they are not taken.
    bool meets(std::string_view letters) const { return m_left.starts_with(letters); }

    /// Takes just these letters.
    bool take(std::string_view letters) {
        m_isGood = m_isGood && m_left.starts_with(letters);
        if (m_isGood) m_left.remove_prefix(letters.size());
        return m_isGood;
    }
    /// Takes a string of printable ASCII without escapes; what is between its quotes.
    std::string_view text() {
        if (!take("\"")) return {};
        std::size_t length = 0;
        while (length < m_left.size() && isPlain(m_left[length])) ++length;
        const std::string_view found = m_left.substr(0, length);
        m_left.remove_prefix(length);
        return take("\"") ? found : std::string_view();
    }
    /// Takes a string of which only the end is looked for: whoever reads it refuses all that would
    /// need an escape.
    std::string_view letters() {
        if (!take("\"")) return {};
        const std::string_view found = m_left.substr(0, m_left.find('"'));
        m_left.remove_prefix(found.size());
        return take("\"") ? found : std::string_view();
    }
    /// Takes a whole number of up to 15 digits as canonical JSON spells it.
    std::int64_t integer() {
        const bool isBelow = next() == '-';
        if (isBelow) take("-");
        std::int64_t number = 0;
        std::size_t length = 0;
        for (; length < m_left.size() && isDigit(m_left[length]) && length < mostDigits; ++length)
            number = number * 10 + (m_left[length] - '0');
        const bool isSpelled = length == 1 ? !isBelow || number > 0 : next() != '0';
        m_isGood = m_isGood && length > 0 && isSpelled;
        m_left.remove_prefix(length);
        return isBelow ? -number : number;
    }

    /// The same behind these letters.
    std::string_view textAfter(std::string_view letters) {
        return take(letters) ? text() : std::string_view();
    }
    std::int64_t integerAfter(std::string_view letters) { return take(letters) ? integer() : 0; }

  private:
    static constexpr std::size_t mostDigits = 15;
    static bool isDigit(char letter) { return letter >= '0' && letter <= '9'; }
    static bool isPlain(char letter) {
        return letter >= ' ' && letter <= '~' && letter != '"' && letter != '\\';
    }
    std::string_view m_left;
    bool m_isGood = true;
};

}  // namespace ledger
