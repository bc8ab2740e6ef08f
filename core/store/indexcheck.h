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
    explicit IndexCheck(Database& database) : m_database(database) {}

    /// A stored entry; places rise, as SQLite counts.
    void notePlace(std::uint64_t seq) { m_places.push_back(static_cast<std::int64_t>(seq)); }
    /// One that was read; those that were rise as well.
    void note(const proof::Seen& seen);

    /// Some rows more, while entries are still read and looked at: `most` or all that are left.
    /// Errors: those of the disk.
    base::Outcome readSome(std::size_t most);
    /// Tells of each entry that is not found; after the last entry. Errors: those of the disk.
    base::Outcome findMissing(proof::Verifier& verifier);
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
        bool isInOrder = false;  ///< it would be found
        std::int64_t seq = 0;
    };
    struct List {
        std::string_view sql;
        std::optional<Cursor> cursor = {};
        std::vector<Row> rows = {};    ///< as they were read
        std::optional<Row> last = {};  ///< of those that would be found
    };
    base::Outcome readSome(std::optional<Cursor>& cursor, std::string_view sql, std::size_t most,
                           const std::function<void(const RowView&)>& take);
    base::Outcome readSome(List& list, std::size_t most);
    base::Outcome readPlaces(std::size_t most);
    void find(const List& list, IndexKey Noted::*key, bool Noted::*isFound);
    Noted* notedAt(std::int64_t seq);
    bool isStray(std::int64_t seq) const;

    Database& m_database;
    std::vector<Noted> m_noted;
    List m_commands{"SELECT id, seq FROM command ORDER BY id"};
    List m_subjects{"SELECT patient, seq FROM subject ORDER BY patient, seq"};
    std::optional<Cursor> m_placeRows;
    std::vector<std::int64_t> m_commandPlaces;  ///< the same as m_commands by another tree
    bool m_isClosed = false, m_isOpen = false;  ///< some entry is
    std::vector<std::int64_t> m_places;
};

}  // namespace store
