// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/memoryledger.h"

#include <algorithm>

namespace ledger {
namespace {

bool matchesAll(const CardRow& card, const std::vector<std::string>& words) {
    return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::any_of(card.searchKeys.begin(), card.searchKeys.end(),
                           [&](const std::string& key) { return key.starts_with(word); });
    });
}

}  // namespace

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
    auto written = extend(m_tail, m_id, drafts, now, *m_codec);
    if (!written) {
        m_keys = keysBefore;
        return written.error();
    }
    std::vector<Entry> entries;
    for (WrittenEntry& item : *written) {
        m_seqs.emplace(item.entry.body.id, m_bytes.size());
        m_bytes.push_back(std::move(item.bytes));
        m_subjects.push_back(item.entry.subject);
        m_isSealed = m_codec->seals();
        entries.push_back(std::move(item.entry));
    }
    put(derived);
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

base::Result<std::string> MemoryLedger::putBlob(const std::string& bytes) {
    const std::string digest = toHex(sha256(bytes));
    m_blobs[digest] = bytes;
    return digest;
}

base::Result<std::optional<std::string>> MemoryLedger::blob(const std::string& digest) const {
    const auto at = m_blobs.find(digest);
    if (at == m_blobs.end()) return std::optional<std::string>();
    return std::optional<std::string>(at->second);
}

base::Result<CardPage> MemoryLedger::cards(const CardQuery& query) const {
    std::vector<CardRow> found;
    for (const auto& [learner, card] : m_cards)
        if (matchesAll(card, query.words)) found.push_back(card);
    std::stable_sort(found.begin(), found.end(), [](const CardRow& a, const CardRow& b) {
        return a.sortKey < b.sortKey;  // equal ones stay in the order of their ids
    });
    CardPage page{.total = found.size()};
    for (std::size_t i = query.offset; i < found.size() && page.rows.size() < query.limit; ++i)
        page.rows.push_back(found[i]);
    return page;
}

void MemoryLedger::put(const Derived& derived) {
    for (const CardRow& card : derived.cards) m_cards.insert_or_assign(card.learner, card);
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
    m_cards.clear();
    m_openVisit.reset();
    put(all);
    return base::Done{};
}

}  // namespace ledger
