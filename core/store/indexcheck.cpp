// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/indexcheck.h"

#include <algorithm>

namespace store {

IndexKey::IndexKey(std::string_view text)
    : m_size(static_cast<std::uint8_t>(text.copy(m_letters.data(), m_letters.size()))) {}

void IndexCheck::note(const ledger::Entry& entry, std::uint64_t seq) {
    if (entry.isOpen)
        m_commands.push_back({IndexKey(entry.body.id.text()), seq});
    else
        m_closed.push_back(seq);
    m_subjects.push_back({IndexKey(entry.subject ? entry.subject->text() : std::string()), seq});
}

base::Outcome IndexCheck::findMissing(Database& database, proof::Verifier& verifier) {
    for (const auto look :
         {&IndexCheck::lookAtCommands, &IndexCheck::lookAtClosed, &IndexCheck::lookAtSubjects})
        if (const auto looked = (this->*look)(database); !looked) return looked;
    std::sort(m_missing.begin(), m_missing.end());
    m_missing.erase(std::unique(m_missing.begin(), m_missing.end()), m_missing.end());
    for (const std::uint64_t seq : m_missing) verifier.find(proof::at(proof::Kind::Index, seq));
    return base::Done{};
}

void IndexCheck::findStrays(proof::Verifier& verifier) const {
    for (const auto* strays : {&m_strayCommands, &m_straySubjects})
        for (const std::uint64_t seq : *strays) verifier.find(proof::at(proof::Kind::Index, seq));
}

bool IndexCheck::isPlace(std::int64_t seq) const {
    // Mostly there is none missing.
    const auto at = static_cast<std::uint64_t>(seq);
    if (at < m_places.size() && m_places[at] == seq) return true;
    return std::binary_search(m_places.begin(), m_places.end(), seq);
}

/// In the order of the tree that is asked for a command. A row that is out of order there is not
/// found, though it is there.
base::Outcome IndexCheck::lookAtCommands(Database& database) {
    std::sort(m_commands.begin(), m_commands.end());
    auto wanted = m_commands.cbegin();
    const auto visit = [&](const RowView& row) {
        const std::string_view id = row.text(0);
        const auto seq = row.number(1);
        if (!isPlace(seq)) m_strayCommands.push_back(static_cast<std::uint64_t>(seq));
        for (; wanted != m_commands.cend() && wanted->key.text() < id; ++wanted)
            m_missing.push_back(wanted->seq);
        for (; wanted != m_commands.cend() && wanted->key.text() == id; ++wanted)
            if (wanted->seq != static_cast<std::uint64_t>(seq)) m_missing.push_back(wanted->seq);
        return true;
    };
    const auto read = database.scan("SELECT id, seq FROM command ORDER BY id", visit);
    for (; wanted != m_commands.cend(); ++wanted) m_missing.push_back(wanted->seq);
    return read;
}

/// Of an entry that is closed it is known that some command led to it.
base::Outcome IndexCheck::lookAtClosed(Database& database) {
    if (m_closed.empty()) return base::Done{};
    auto wanted = m_closed.cbegin();
    const auto visit = [&](const RowView& row) {
        const auto seq = static_cast<std::uint64_t>(row.number(0));
        for (; wanted != m_closed.cend() && *wanted < seq; ++wanted) m_missing.push_back(*wanted);
        if (wanted != m_closed.cend() && *wanted == seq) ++wanted;
        return true;
    };
    const auto read = database.scan("SELECT seq FROM command WHERE seq >= 0 ORDER BY seq", visit);
    for (; wanted != m_closed.cend(); ++wanted) m_missing.push_back(*wanted);
    return read;
}

base::Outcome IndexCheck::lookAtSubjects(Database& database) {
    std::sort(m_subjects.begin(), m_subjects.end());
    auto wanted = m_subjects.cbegin();
    const auto visit = [&](const RowView& row) {
        const std::string_view patient = row.text(0);
        const std::int64_t seq = row.number(1);  // a stray one may be negative
        if (!isPlace(seq)) m_straySubjects.push_back(static_cast<std::uint64_t>(seq));
        const auto placeOf = [](const Row& one) {
            return std::pair(one.key.text(), static_cast<std::int64_t>(one.seq));
        };
        const auto isBefore = [&](const Row& one) {
            return placeOf(one) < std::pair(patient, seq);
        };
        for (; wanted != m_subjects.cend() && isBefore(*wanted); ++wanted)
            m_missing.push_back(wanted->seq);
        if (wanted != m_subjects.cend() && placeOf(*wanted) == std::pair(patient, seq)) ++wanted;
        return true;
    };
    const auto read =
        database.scan("SELECT patient, seq FROM subject ORDER BY patient, seq", visit);
    for (; wanted != m_subjects.cend(); ++wanted) m_missing.push_back(wanted->seq);
    return read;
}

}  // namespace store
