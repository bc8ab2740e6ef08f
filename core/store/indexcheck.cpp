// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/indexcheck.h"

#include <algorithm>
#include <limits>

namespace store {
namespace {

/// Where `seq` is, or would be, among what rises by `placeOf`. Mostly there is none missing.
template <class List, class PlaceOf>
auto placeIn(List& list, std::int64_t seq, PlaceOf placeOf) {
    const auto at = static_cast<std::uint64_t>(seq);
    if (at < list.size() && placeOf(list[at]) == seq)
        return list.begin() + static_cast<std::ptrdiff_t>(at);
    return std::lower_bound(
        list.begin(), list.end(), seq,
        [&](const auto& one, std::int64_t wanted) { return placeOf(one) < wanted; });
}

}  // namespace

void IndexCheck::note(const proof::Seen& seen) {
    Noted noted{.seq = static_cast<std::int64_t>(seen.seq)};
    if (seen.body) noted.command = IndexKey(seen.body->id.text());
    if (seen.envelope->subject) noted.subject = IndexKey(seen.envelope->subject->text());
    m_isClosed = m_isClosed || !seen.body;
    m_isOpen = m_isOpen || seen.body;
    m_noted.push_back(noted);
}

base::Outcome IndexCheck::readRows(Database& database) {
    if (const auto read = readCommands(database); !read) return read;
    if (const auto read = readSubjects(database); !read) return read;
    return readPlaces(database);
}

/// Of an entry that is closed it is known that some command led to it.
base::Outcome IndexCheck::findMissing(Database& database, proof::Verifier& verifier) {
    // Where every entry is closed no command is known.
    if (m_isOpen)
        for (const Row& row : m_commands) find(row, &Noted::command, &Noted::isByCommand);
    for (const Row& row : m_subjects) find(row, &Noted::subject, &Noted::isBySubject);
    if (const auto read = readPlaces(database); !read) return read;
    for (const std::int64_t seq : m_commandPlaces)
        if (Noted* const noted = notedAt(seq); noted != nullptr && noted->command.text().empty())
            noted->isByCommand = true;
    for (const Noted& one : m_noted)
        if (!one.isByCommand || !one.isBySubject)
            verifier.find(proof::at(proof::Kind::Index, static_cast<std::uint64_t>(one.seq)));
    return base::Done{};
}

void IndexCheck::findStrays(proof::Verifier& verifier) const {
    for (const auto* strays : {&m_strayCommands, &m_straySubjects})
        for (const std::uint64_t seq : *strays) verifier.find(proof::at(proof::Kind::Index, seq));
}

void IndexCheck::find(const Row& row, IndexKey Noted::*key, bool Noted::*isFound) {
    Noted* const noted = notedAt(row.seq);
    if (noted != nullptr && (noted->*key).text() == row.key.text()) noted->*isFound = true;
}

IndexCheck::Noted* IndexCheck::notedAt(std::int64_t seq) {
    const auto found = placeIn(m_noted, seq, [](const Noted& one) { return one.seq; });
    return found != m_noted.end() && found->seq == seq ? &*found : nullptr;
}

void IndexCheck::noteStray(std::int64_t seq, std::vector<std::uint64_t>& strays) const {
    const auto found = placeIn(m_places, seq, [](std::int64_t one) { return one; });
    if (found == m_places.end() || *found != seq) strays.push_back(static_cast<std::uint64_t>(seq));
}

base::Outcome IndexCheck::readCommands(Database& database) {
    m_commands.reserve(m_places.size());
    return database.scan("SELECT id, seq FROM command ORDER BY id", [this](const RowView& row) {
        noteStray(row.number(1), m_strayCommands);
        if (!IndexKey::fits(row.text(0))) return true;
        const Row read{IndexKey(row.text(0)), row.number(1)};
        if (m_commands.empty() || m_commands.back().key.text() < row.text(0))
            m_commands.push_back(read);
        return true;
    });
}

base::Outcome IndexCheck::readSubjects(Database& database) {
    m_subjects.reserve(m_places.size());
    const auto visit = [this](const RowView& row) {
        noteStray(row.number(1), m_straySubjects);  // which may be below 0
        if (!IndexKey::fits(row.text(0))) return true;
        const Row read{IndexKey(row.text(0)), row.number(1)};
        const auto placeOf = [](const Row& one) { return std::pair(one.key.text(), one.seq); };
        if (m_subjects.empty() || placeOf(m_subjects.back()) < std::pair(row.text(0), read.seq))
            m_subjects.push_back(read);
        return true;
    };
    return database.scan("SELECT patient, seq FROM subject ORDER BY patient, seq", visit);
}

/// The places that some command leads to, for entries whose command is not known.
base::Outcome IndexCheck::readPlaces(Database& database) {
    if (!m_isClosed || !m_commandPlaces.empty()) return base::Done{};
    const auto visit = [this](const RowView& row) {
        const std::int64_t seq = row.number(0);
        if (m_commandPlaces.empty() || m_commandPlaces.back() < seq) m_commandPlaces.push_back(seq);
        return true;
    };
    return database.scan("SELECT seq FROM command WHERE seq >= 0 ORDER BY seq", visit);
}

}  // namespace store
