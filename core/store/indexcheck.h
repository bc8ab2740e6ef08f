// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "proof/verifier.h"
#include "store/database.h"

namespace store {

/// The letters of an id, or of none.
class IndexKey {
  public:
    IndexKey() = default;
    /// Of a text that fits().
    explicit IndexKey(std::string_view text)
        : m_size(static_cast<std::uint8_t>(text.copy(m_letters.data(), m_letters.size()))) {}
    /// A longer one is no id.
    static bool fits(std::string_view text) { return text.size() <= idLetters; }
    std::string_view text() const { return {m_letters.data(), m_size}; }

  private:
    static constexpr std::size_t idLetters = 26;
    std::array<char, idLetters> m_letters{};
    std::uint8_t m_size = 0;
};

/// Holds the rows by which an entry is found, by its command and by its subject, against the
/// entries: they are read once, in the order in which SQLite looks for one. A row that is out of
/// that order is not found, though it is there.
class IndexCheck {
  public:
    /// A stored entry; places rise, as SQLite counts.
    void notePlace(std::uint64_t seq) { m_places.push_back(static_cast<std::int64_t>(seq)); }
    /// One that was read; those that were rise as well.
    void note(const proof::Seen& seen);

    /// Once every place was noted, while entries may still be looked at. Errors: those of the disk.
    base::Outcome readRows(Database& database);
    /// Tells of each entry that is not found; after all of that. Errors: those of the disk.
    base::Outcome findMissing(Database& database, proof::Verifier& verifier);
    /// Tells of each row that leads to no entry; after findMissing().
    void findStrays(proof::Verifier& verifier) const;

  private:
    struct Noted {
        std::int64_t seq = 0;
        IndexKey command = {}, subject = {};  ///< "": not known, the house's own
        bool isByCommand = false, isBySubject = false;
    };
    struct Row {
        IndexKey key;
        std::int64_t seq = 0;
    };
    base::Outcome readCommands(Database& database);
    base::Outcome readSubjects(Database& database);
    base::Outcome readPlaces(Database& database);
    void find(const Row& row, IndexKey Noted::*key, bool Noted::*isFound);
    Noted* notedAt(std::int64_t seq);
    void noteStray(std::int64_t seq, std::vector<std::uint64_t>& strays) const;

    std::vector<Noted> m_noted;
    std::vector<Row> m_commands, m_subjects;    ///< as they were read, what leads nowhere left out
    std::vector<std::int64_t> m_commandPlaces;  ///< the same by another tree
    bool m_isClosed = false, m_isOpen = false;  ///< some entry is
    std::vector<std::int64_t> m_places;
    std::vector<std::uint64_t> m_strayCommands, m_straySubjects;
};

}  // namespace store
