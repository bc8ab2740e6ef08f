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
    m_noted.push_back(noted);
}

base::Outcome IndexCheck::findMissing(Database& database, proof::Verifier& verifier) {
    for (const auto look :
         {&IndexCheck::lookAtCommands, &IndexCheck::lookAtClosed, &IndexCheck::lookAtSubjects})
        if (const auto looked = (this->*look)(database); !looked) return looked;
    for (const Noted& one : m_noted)
        if (!one.isByCommand || !one.isBySubject)
            verifier.find(proof::at(proof::Kind::Index, static_cast<std::uint64_t>(one.seq)));
    return base::Done{};
}

void IndexCheck::findStrays(proof::Verifier& verifier) const {
    for (const auto* strays : {&m_strayCommands, &m_straySubjects})
        for (const std::uint64_t seq : *strays) verifier.find(proof::at(proof::Kind::Index, seq));
}

IndexCheck::Noted* IndexCheck::notedAt(std::int64_t seq) {
    const auto found = placeIn(m_noted, seq, [](const Noted& one) { return one.seq; });
    return found != m_noted.end() && found->seq == seq ? &*found : nullptr;
}

void IndexCheck::noteStray(std::int64_t seq, std::vector<std::uint64_t>& strays) const {
    const auto found = placeIn(m_places, seq, [](std::int64_t one) { return one; });
    if (found == m_places.end() || *found != seq) strays.push_back(static_cast<std::uint64_t>(seq));
}

base::Outcome IndexCheck::lookAtCommands(Database& database) {
    IndexKey last;
    return database.scan("SELECT id, seq FROM command ORDER BY id", [&](const RowView& row) {
        const std::string_view id = row.text(0);
        const std::int64_t seq = row.number(1);
        noteStray(seq, m_strayCommands);
        if (id <= last.text()) return true;
        last = IndexKey(id);
        Noted* const noted = notedAt(seq);
        if (noted != nullptr && noted->command.text() == id) noted->isByCommand = true;
        return true;
    });
}

/// Of an entry that is closed it is known that some command led to it.
base::Outcome IndexCheck::lookAtClosed(Database& database) {
    const auto isClosed = [](const Noted& one) { return one.command.text().empty(); };
    if (std::none_of(m_noted.begin(), m_noted.end(), isClosed)) return base::Done{};
    std::int64_t last = -1;
    const auto visit = [&](const RowView& row) {
        const std::int64_t seq = row.number(0);
        if (seq <= last) return true;
        last = seq;
        Noted* const noted = notedAt(seq);
        if (noted != nullptr && isClosed(*noted)) noted->isByCommand = true;
        return true;
    };
    return database.scan("SELECT seq FROM command WHERE seq >= 0 ORDER BY seq", visit);
}

base::Outcome IndexCheck::lookAtSubjects(Database& database) {
    IndexKey lastPatient;
    std::int64_t last = std::numeric_limits<std::int64_t>::min();
    const auto visit = [&](const RowView& row) {
        const std::string_view patient = row.text(0);
        const std::int64_t seq = row.number(1);  // a stray one may be negative
        noteStray(seq, m_straySubjects);
        if (std::pair(patient, seq) <= std::pair(lastPatient.text(), last)) return true;
        if (patient != lastPatient.text()) lastPatient = IndexKey(patient);
        last = seq;
        Noted* const noted = notedAt(seq);
        if (noted != nullptr && noted->subject.text() == patient) noted->isBySubject = true;
        return true;
    };
    return database.scan("SELECT patient, seq FROM subject ORDER BY patient, seq", visit);
}

}  // namespace store
