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

base::Result<std::vector<Entry>> MemoryLedger::append(const std::vector<Draft>& drafts,
                                                      const base::Instant& now,
                                                      const Derived& derived) {
    if (m_nextError) return *std::exchange(m_nextError, std::nullopt);
    std::vector<Entry> known;
    for (const Draft& draft : drafts)
        if (const auto at = m_seqs.find(draft.body.id); at != m_seqs.end())
            known.push_back(m_entries[at->second]);
    if (!known.empty()) return known;
    auto written = extend(m_tail, m_id, drafts, now);
    if (!written) return written.error();
    std::vector<Entry> entries;
    for (WrittenEntry& item : *written) {
        m_seqs.emplace(item.entry.body.id, m_entries.size());
        m_entries.push_back(item.entry);
        entries.push_back(std::move(item.entry));
    }
    put(derived);
    return entries;
}

base::Result<std::optional<Entry>> MemoryLedger::find(const base::CommandId& id) const {
    const auto at = m_seqs.find(id);
    if (at == m_seqs.end()) return std::optional<Entry>();
    return std::optional<Entry>(m_entries[at->second]);
}

std::vector<Entry> MemoryLedger::matching(const std::optional<base::PatientId>& subject) const {
    std::vector<Entry> found;
    std::copy_if(m_entries.begin(), m_entries.end(), std::back_inserter(found),
                 [&](const Entry& entry) { return entry.subject == subject; });
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
    const std::size_t from = std::min<std::uint64_t>(seq, m_entries.size());
    const std::size_t count = std::min(limit, m_entries.size() - from);
    const auto first = m_entries.begin() + static_cast<std::ptrdiff_t>(from);
    return std::vector<Entry>(first, first + static_cast<std::ptrdiff_t>(count));
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
    m_foldVersion = derived.foldVersion;
}

base::Outcome MemoryLedger::rebuild(const Derived& all) {
    m_cards.clear();
    m_openVisit.reset();
    put(all);
    return base::Done{};
}

}  // namespace ledger
