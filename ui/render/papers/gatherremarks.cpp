// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/gather.h"

namespace render {
namespace {

/// Looks for one entry among all that the record keeps by its id.
class EntrySearch {
  public:
    EntrySearch(const Gathering& from, const base::CommandId& entry)
        : m_from(from), m_entry(entry) {}

    std::optional<Stamp> found() {
        const record::Record& record = m_from.record;
        look(record.origin);
        if (record.allergies) look(record.allergies->origin);
        for (const record::Line& line : record.lines) {
            look(line.origin);
            for (const record::Corrected& one : line.corrected) look(one.origin);
            lookAtAll(line.removals), lookAtAll(line.kept);
        }
        for (const record::Learner& learner : record.learners) lookAt(learner);
        for (const record::Visit& visit : record.visits) lookAt(visit);
        lookAtAll(record.addenda), lookAtAll(record.lateEntries);
        lookAtAll(record.wrongCharts);
        return m_found;
    }

  private:
    void look(const record::Origin& origin) {
        if (origin.entry == m_entry) m_found = m_from.stamp(origin);
    }
    template <class T>
    void lookAtAll(const std::vector<record::Stated<T>>& all) {
        for (const auto& one : all) look(one.origin);
    }
    void lookAt(const record::Learner& learner) {
        look(learner.origin);
        if (learner.consent) look(learner.consent->origin);
        if (learner.needs) look(learner.needs->origin);
        if (learner.help) look(learner.help->origin);
        lookAtAll(learner.asked), lookAtAll(learner.plans), lookAtAll(learner.drills);
        lookAtAll(learner.signOffs), lookAtAll(learner.papers);
    }
    void lookAt(const record::Visit& visit) {
        look(visit.origin);
        for (const practice::Event& event : visit.events) {
            if (event.id != m_entry) continue;
            record::Origin origin = visit.origin;
            origin.entry = event.id, origin.by = event.by;
            origin.atMs = origin.wallMs = event.wallMs;
            m_found = m_from.stamp(origin);
        }
    }

    const Gathering& m_from;
    base::CommandId m_entry;
    std::optional<Stamp> m_found;
};

}  // namespace

void gatherRemarks(const Gathering& from, const base::LearnerId& learner, PaperData& data) {
    for (const auto& addendum : from.record.addenda) {
        PaperRemark shown{
            from.stamp(addendum.origin), addendum.said.to.text(), addendum.said.text, {}};
        shown.concerned = EntrySearch(from, addendum.said.to).found();
        data.addenda.push_back(shown);
    }
    for (const auto& late : from.record.lateEntries) {
        if (late.said.learner && *late.said.learner != learner) continue;
        if (from.record.wrongChart(late.origin.entry)) continue;
        data.lateEntries.push_back(gatherLate(from, late));
    }
    for (const record::Unknown& entry : from.record.unknown) data.unknown.push_back(entry.type);
}

}  // namespace render
