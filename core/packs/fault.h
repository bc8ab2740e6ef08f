// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace packs {

/// One thing wrong with a pack: where (JSON Pointer of RFC 6901, and the byte from 0 in the file),
/// one plain English sentence, and one of what to do.
struct Fault {
    std::string pointer;
    std::size_t byte = 0;
    std::string sentence;
    std::string remedy;

    bool operator==(const Fault&) const = default;
};

/// A word of the file in quotation marks, fit to stand in a sentence: cut to 40 bytes, without
/// control characters.
std::string inQuotes(std::string_view word);

/// Gathers faults, at most `most`; a hostile file shall not fill the memory with complaints.
class Faults {
  public:
    static constexpr std::size_t most = 100;

    void add(Fault fault) {
        if (m_list.size() < most) m_list.push_back(std::move(fault));
    }
    const std::vector<Fault>& list() const { return m_list; }
    bool isEmpty() const { return m_list.empty(); }

  private:
    std::vector<Fault> m_list;
};

}  // namespace packs
