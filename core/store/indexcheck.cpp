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

base::Outcome IndexCheck::readSome(std::size_t most) {
    if (const auto read = readSome(m_commands, most); !read) return read;
    if (const auto read = readSome(m_subjects, most); !read) return read;
    return readPlaces(most);
}

base::Outcome IndexCheck::readSome(std::optional<Cursor>& cursor, std::string_view sql,
                                   std::size_t most,
                                   const std::function<void(const RowView&)>& take) {
    if (!cursor) {
        auto made = m_database.cursor(sql);
        if (!made) return made.error();
        cursor = std::move(*made);
    }
    const auto read = cursor->take(most, take);
    return read ? base::Outcome(base::Done{}) : read.error();
}

/// One that is too long is no id; its place may be below 0.
base::Outcome IndexCheck::readSome(List& list, std::size_t most) {
    const auto placeOf = [](const Row& one) { return std::pair(one.key.text(), one.seq); };
    return readSome(list.cursor, list.sql, most, [&](const RowView& row) {
        Row read{.seq = row.number(1)};
        if (IndexKey::fits(row.text(0))) {
            read.key = IndexKey(row.text(0));
            read.isInOrder = !list.last || placeOf(*list.last) < placeOf(read);
        }
        if (read.isInOrder) list.last = read;
        list.rows.push_back(read);
    });
}

/// The places that some command leads to, for entries whose command is not known.
base::Outcome IndexCheck::readPlaces(std::size_t most) {
    if (!m_isClosed) return base::Done{};
    const char* const sql = "SELECT seq FROM command WHERE seq >= 0 ORDER BY seq";
    return readSome(m_placeRows, sql, most, [this](const RowView& row) {
        const std::int64_t seq = row.number(0);
        if (m_commandPlaces.empty() || m_commandPlaces.back() < seq) m_commandPlaces.push_back(seq);
    });
}

/// Of an entry that is closed it is known that some command led to it.
base::Outcome IndexCheck::findMissing(proof::Verifier& verifier) {
    if (const auto read = readSome(std::numeric_limits<std::size_t>::max()); !read) return read;
    // Where every entry is closed no command is known.
    if (m_isOpen) find(m_commands, &Noted::command, &Noted::isByCommand);
    find(m_subjects, &Noted::subject, &Noted::isBySubject);
    for (const std::int64_t seq : m_commandPlaces)
        if (Noted* const noted = notedAt(seq); noted != nullptr && noted->command.text().empty())
            noted->isByCommand = true;
    for (const Noted& one : m_noted)
        if (!one.isByCommand || !one.isBySubject)
            verifier.find(proof::at(proof::Kind::Index, static_cast<std::uint64_t>(one.seq)));
    return base::Done{};
}

void IndexCheck::find(const List& list, IndexKey Noted::*key, bool Noted::*isFound) {
    for (const Row& row : list.rows) {
        Noted* const noted = row.isInOrder ? notedAt(row.seq) : nullptr;
        if (noted != nullptr && (noted->*key).text() == row.key.text()) noted->*isFound = true;
    }
}

IndexCheck::Noted* IndexCheck::notedAt(std::int64_t seq) {
    const auto found = placeIn(m_noted, seq, [](const Noted& one) { return one.seq; });
    return found != m_noted.end() && found->seq == seq ? &*found : nullptr;
}

void IndexCheck::findStrays(proof::Verifier& verifier) const {
    for (const List* list : {&m_commands, &m_subjects})
        for (const Row& row : list->rows)
            if (isStray(row.seq))
                verifier.find(proof::at(proof::Kind::Index, static_cast<std::uint64_t>(row.seq)));
}

bool IndexCheck::isStray(std::int64_t seq) const {
    const auto found = placeIn(m_places, seq, [](std::int64_t one) { return one; });
    return found == m_places.end() || *found != seq;
}

}  // namespace store
