// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "ledger/entry.h"
#include "proof/verifier.h"
#include "store/database.h"

namespace store {

/// The letters of an id, or of none. Ordered as SQLite orders texts.
class IndexKey {
  public:
    /// Nothing of what is no id is kept but that it is another one.
    explicit IndexKey(std::string_view text);
    std::string_view text() const { return {m_letters.data(), m_size}; }
    auto operator<=>(const IndexKey& other) const { return text() <=> other.text(); }
    bool operator==(const IndexKey& other) const { return text() == other.text(); }

  private:
    static constexpr std::size_t idLetters = 26;
    std::array<char, idLetters> m_letters{};
    std::uint8_t m_size = 0;
};

/// Holds the rows by which an entry is found, by its command and by its subject, against the
/// entries: both are brought into one order and gone through once.
class IndexCheck {
  public:
    /// A stored entry; places rise, as SQLite counts.
    void notePlace(std::uint64_t seq) { m_places.push_back(static_cast<std::int64_t>(seq)); }
    /// One that was read.
    void note(const ledger::Entry& entry, std::uint64_t seq);

    /// Tells of each entry that is not found. Errors: those of the disk.
    base::Outcome findMissing(Database& database, proof::Verifier& verifier);
    /// Tells of each row that leads to no entry; after findMissing().
    void findStrays(proof::Verifier& verifier) const;

  private:
    struct Row {
        IndexKey key;
        std::uint64_t seq = 0;
        auto operator<=>(const Row&) const = default;
    };
    base::Outcome lookAtCommands(Database& database);
    base::Outcome lookAtClosed(Database& database);
    base::Outcome lookAtSubjects(Database& database);
    bool isPlace(std::int64_t seq) const;

    std::vector<Row> m_commands, m_subjects;
    std::vector<std::int64_t> m_places;
    std::vector<std::uint64_t> m_closed;  ///< of which the command is not known
    std::vector<std::uint64_t> m_missing, m_strayCommands, m_straySubjects;
};

}  // namespace store
