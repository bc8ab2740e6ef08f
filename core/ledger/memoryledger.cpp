// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/memoryledger.h"

#include "ledger/blob.h"

#include <algorithm>

namespace ledger {
base::Result<std::optional<KeyRow>> MemoryKeyShelf::byId(const std::string& id) const {
    for (const KeyRow& row : m_rows)
        if (row.id == id) return std::optional<KeyRow>(row);
    return std::optional<KeyRow>();
}

base::Result<std::optional<KeyRow>> MemoryKeyShelf::ofSubject(
    const base::PatientId& subject) const {
    for (auto row = m_rows.rbegin(); row != m_rows.rend(); ++row)
        if (row->subject == subject) return std::optional<KeyRow>(*row);
    return std::optional<KeyRow>();
}

base::Outcome MemoryKeyShelf::put(const KeyRow& row) {
    std::erase_if(m_rows, [&](const KeyRow& old) { return old.id == row.id; });
    m_rows.push_back(row);
    return base::Done{};
}

base::Outcome MemoryKeyShelf::erase(const base::PatientId& subject) {
    for (KeyRow& row : m_rows)
        if (row.subject == subject) row.text.clear();
    return base::Done{};
}

base::Result<std::optional<StoredCard>> MemoryCardShelf::card(
    const base::LearnerId& learner) const {
    const auto found = m_cards.find(learner);
    if (found == m_cards.end()) return std::optional<StoredCard>();
    return std::optional<StoredCard>(found->second);
}

base::Result<std::vector<StoredCard>> MemoryCardShelf::cards() const {
    std::vector<StoredCard> cards;
    for (const auto& [learner, card] : m_cards) cards.push_back(card);
    return cards;
}

base::Outcome MemoryCardShelf::putCard(const StoredCard& card) {
    m_cards.insert_or_assign(card.learner, card);
    return base::Done{};
}

base::Outcome MemoryCardShelf::removeCard(const base::LearnerId& learner) {
    m_cards.erase(learner);
    return base::Done{};
}

base::Result<std::optional<std::string>> MemoryCardShelf::segment(const std::string& name) const {
    const auto found = m_segments.find(name);
    if (found == m_segments.end()) return std::optional<std::string>();
    return std::optional<std::string>(found->second);
}

base::Outcome MemoryCardShelf::putSegment(const std::string& name, const std::string& row) {
    m_segments.insert_or_assign(name, row);
    return base::Done{};
}

base::Outcome MemoryCardShelf::removeSegment(const std::string& name) {
    m_segments.erase(name);
    return base::Done{};
}

base::Outcome MemoryCardShelf::clear() {
    m_cards.clear();
    m_segments.clear();
    return base::Done{};
}

base::Result<std::vector<Entry>> MemoryLedger::append(const std::vector<Draft>& drafts,
                                                      const base::Instant& now,
                                                      const Derived& derived) {
    if (m_nextError) return *std::exchange(m_nextError, std::nullopt);
    std::vector<Entry> known;
    for (const Draft& draft : drafts) {
        auto entry = find(draft.body.id);
        if (!entry) return entry.error();
        if (*entry) known.push_back(std::move(**entry));
    }
    if (!known.empty()) return known;
    if (m_isSealed && !m_codec->seals()) return base::Error{base::Code::SealKeyMissing};
    const MemoryKeyShelf keysBefore = m_keys;
    Tail next = m_tail;
    auto written = extend(next, m_id, drafts, now, *m_codec);
    const auto put = written ? m_cards.book.put(derived.cards, m_tail.edge, next.edge)
                             : base::Outcome(written.error());
    if (!put) {
        m_keys = keysBefore;
        return put.error();
    }
    m_tail = std::move(next);
    std::vector<Entry> entries;
    for (WrittenEntry& item : *written) {
        m_seqs.emplace(item.entry.body.id, m_bytes.size());
        m_bytes.push_back(std::move(item.bytes));
        m_subjects.push_back(item.entry.subject);
        m_isSealed = m_codec->seals();
        entries.push_back(std::move(item.entry));
    }
    putRest(derived);
    if (derived.forgets)
        if (const auto gone = forget(*derived.forgets); !gone) return gone.error();
    return entries;
}

base::Result<std::optional<Entry>> MemoryLedger::find(const base::CommandId& id) const {
    const auto found = m_seqs.find(id);
    if (found == m_seqs.end()) return std::optional<Entry>();
    auto entry = at(found->second);
    if (!entry) return entry.error();
    return std::optional<Entry>(std::move(*entry));
}

base::Result<std::vector<Entry>> MemoryLedger::matching(
    const std::optional<base::PatientId>& subject) const {
    std::vector<Entry> found;
    for (std::size_t seq = 0; seq < m_bytes.size(); ++seq) {
        if (m_subjects[seq] != subject) continue;
        auto entry = at(seq);
        if (!entry) return entry.error();
        found.push_back(std::move(*entry));
    }
    return found;
}

base::Result<std::vector<Entry>> MemoryLedger::ofSubject(const base::PatientId& subject) const {
    return matching(subject);
}

base::Result<std::vector<Entry>> MemoryLedger::withoutSubject() const {
    return matching(std::nullopt);
}

base::Result<std::vector<Entry>> MemoryLedger::readFrom(std::uint64_t seq,
                                                        std::size_t limit) const {
    std::vector<Entry> found;
    for (std::size_t i = std::min<std::uint64_t>(seq, m_bytes.size());
         i < m_bytes.size() && found.size() < limit; ++i) {
        auto entry = at(i);
        if (!entry) return entry.error();
        found.push_back(std::move(*entry));
    }
    return found;
}

base::Result<std::string> MemoryLedger::putBlob(const std::string& bytes,
                                                const std::optional<base::PatientId>& subject) {
    if (m_isSealed && !m_codec->seals()) return base::Error{base::Code::SealKeyMissing};
    auto kept = keptBlob(*m_codec, bytes, subject);
    if (!kept) return kept.error();
    m_blobs.emplace(kept->digest, std::move(kept->stored));
    return kept->digest;
}

base::Result<std::optional<std::string>> MemoryLedger::blob(const std::string& digest) const {
    const auto at = m_blobs.find(digest);
    if (at == m_blobs.end()) return std::optional<std::string>();
    return openedBlob(*m_codec, digest, at->second);
}

void MemoryLedger::use(std::shared_ptr<Codec> codec) {
    m_codec = codec;
    m_cards.book.use(std::move(codec));
}

void MemoryLedger::putRest(const Derived& derived) {
    if (derived.setsOpenVisit) m_openVisit = derived.openVisit;
    for (const AccessRow& row : derived.access) {
        if (row.text.empty())
            m_access.erase({row.kind, row.id});
        else
            m_access.insert_or_assign({row.kind, row.id}, row.text);
    }
    m_foldVersion = derived.foldVersion;
}

base::Result<std::vector<AccessRow>> MemoryLedger::access() const {
    std::vector<AccessRow> rows;
    for (const auto& [name, text] : m_access) rows.push_back({name.first, name.second, text});
    return rows;
}

base::Outcome MemoryLedger::rebuild(const Derived& all) {
    if (m_isSealed && !m_codec->seals()) return base::Error{base::Code::SealKeyMissing};
    if (const auto made = m_cards.book.rebuild(all.cards, m_tail.edge); !made) return made;
    m_openVisit.reset();
    putRest(all);
    return base::Done{};
}

base::Outcome MemoryLedger::forget(const base::PatientId& patient) {
    if (const auto gone = m_cards.book.forget(patient, m_tail.edge); !gone) return gone;
    if (m_openVisit && m_openVisit->patient == patient) m_openVisit.reset();
    return m_keys.erase(patient);
}

}  // namespace ledger
