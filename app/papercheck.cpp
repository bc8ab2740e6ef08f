// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "papercheck.h"

#include <algorithm>

#include "render/papers/issued.h"

namespace app {
namespace {

/// Nothing of all other entries, nor where this program can't read it.
std::optional<record::IssuePaper> issuedBy(const ledger::Entry& entry) {
    if (!entry.isOpen || entry.body.type != record::IssuePaper::type) return std::nullopt;
    auto said = record::lifted(entry.body).payload;
    if (!said) return std::nullopt;
    return std::get<record::IssuePaper>(std::move(*said));
}

}  // namespace

void PaperCheck::see(const ledger::Entry& entry) {
    m_seen = entry.seq + 1;
    if (!entry.subject && entry.body.type != record::NoteUse::type) m_ofHouse.push_back(entry);
    const auto said = issuedBy(entry);
    if (said && !render::withoutRecord(*said)) m_sizes.insert(said->ground->size);
}

base::Outcome PaperCheck::sawAll() {
    if (m_sizes.empty()) return base::Done{};
    auto roots = store::rootsOf(m_database, m_sizes, [this] { return goesOn(); });
    if (!roots) return roots.error();
    m_roots = std::move(*roots);
    return base::Done{};
}

/// Those that have to be made again, in the order of what they were made of; the rest is counted.
std::vector<PaperCheck::Issued> PaperCheck::issuedIn(const std::vector<ledger::Entry>& entries) {
    std::vector<Issued> papers;
    for (const ledger::Entry& entry : entries) {
        if (!entry.isOpen || entry.body.type != record::IssuePaper::type) continue;
        auto said = issuedBy(entry);
        const auto known = said ? render::withoutRecord(*said) : render::PaperHolds::OtherForm;
        if (!known)
            papers.push_back({std::move(*said), entry.seq});
        else
            ++(*known == render::PaperHolds::Before ? m_papers.before : m_papers.others);
    }
    std::ranges::stable_sort(papers, {}, [](const Issued& one) { return one.said.ground->size; });
    return papers;
}

base::Outcome PaperCheck::seeRecord(const std::vector<ledger::Entry>& entries) {
    const std::vector<Issued> papers = issuedIn(entries);
    if (papers.empty()) return base::Done{};
    // In one sound ledger the order of a fold is that of seq.
    std::vector<const ledger::Entry*> order;
    for (const ledger::Entry& entry : entries) order.push_back(&entry);
    std::ranges::sort(order, {}, &ledger::Entry::seq);
    record::Record then;
    auto next = order.begin();
    for (const Issued& paper : papers) {
        if (!goesOnAtPaper()) return base::Error{base::Code::VerifyStopped};
        while (next != order.end() && (*next)->seq < paper.said.ground->size)
            record::fold(then, **next++, m_shelf);
        look(paper, then);
    }
    return base::Done{};
}

void PaperCheck::look(const Issued& paper, const record::Record& record) {
    const std::uint64_t size = paper.said.ground->size;
    auto holds = render::PaperHolds::No;  // nobody prints what was never written
    const auto root = m_roots.find(size);
    if (root != m_roots.end())
        holds = render::holdAgainst(paper.said, {record, houseOf(size), m_shelf, root->second});
    switch (holds) {
        case render::PaperHolds::No:
            m_findings.push_back({proof::Kind::Paper, paper.seq, paper.seq, paper.said.kind});
            [[fallthrough]];
        case render::PaperHolds::Yes:
            ++m_papers.checked;
            return;
        case render::PaperHolds::Before:
            ++m_papers.before;
            return;
        case render::PaperHolds::OtherForm:
            ++m_papers.others;
            return;
    }
}

/// Who was on the staff, and the unit's words, when there were so many entries.
const record::House& PaperCheck::houseOf(std::uint64_t size) {
    const auto end = std::ranges::lower_bound(m_ofHouse, size, {}, &ledger::Entry::seq);
    const auto upTo = static_cast<std::size_t>(end - m_ofHouse.begin());
    if (m_houseUpTo == upTo) return m_house;
    m_house = {};
    std::for_each(m_ofHouse.begin(), end, [this](const auto& one) { record::fold(m_house, one); });
    m_houseUpTo = upTo;
    return m_house;
}

void PaperCheck::tell(proof::Report& report) const {
    report.papers = m_papers;
    report.findings.insert(report.findings.end(), m_findings.begin(), m_findings.end());
    std::ranges::stable_sort(report.findings, {}, &proof::Finding::from);
}

}  // namespace app
