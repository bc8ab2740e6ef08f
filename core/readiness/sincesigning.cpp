// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "readiness/sincesigning.h"

#include <algorithm>
#include <set>

namespace readiness {
namespace {

/// Whether something was recorded for a step of the competency in that visit.
bool concerns(const procedure::Taught& taught, const record::Visit& visit,
              const packs::Competency& competency) {
    if (visit.opened.pack.digest != taught.digest) return false;
    return std::ranges::any_of(competency.steps, [&](const packs::Step& step) {
        const auto number = static_cast<std::size_t>(packs::findStep(taught.pack, step.id).number);
        const practice::StepRecord& seen = visit.state.steps.at(number - 1);
        return !seen.lapses.empty() ||
               practice::helpOf(seen, visit.state) != practice::Help::NothingRecorded;
    });
}

bool isAbout(const procedure::Taught& taught, const record::AskBack& asked,
             const packs::Competency& competency) {
    if (asked.pack != taught.digest) return false;
    const packs::Prompt* prompt = packs::find(taught.pack.prompts, asked.prompt);
    return prompt && prompt->competency == competency.id;
}

/// Goes through what concerns one signature, and remembers the entries that an addendum may be to.
class Since {
  public:
    /// `from`: the first entry that it does not rest on.
    Since(const record::Record& record, std::uint64_t from) : m_record(record), m_from(from) {}

    /// Also the mark of what is marked: a mistake in marking gets an addendum.
    void see(const base::CommandId& entry) {
        m_seen.insert(entry);
        if (const auto* mark = m_record.wrongChart(entry)) m_seen.insert(mark->origin.entry);
    }
    /// Whose newest part has this place in the ledger. What is marked counts only where the
    /// signature rests on it, and then the mark is what is new.
    void see(const record::Origin& origin, std::uint64_t newest) {
        see(origin.entry);
        const auto* mark = m_record.wrongChart(origin.entry);
        if (!mark)
            tell(newest);
        else if (newest < m_from)
            tell(mark->origin.seq);
    }
    void seeAddenda() {
        for (const auto& one : m_record.addenda)
            if (m_seen.contains(one.said.to)) see(one.origin.entry), tell(one.origin.seq);
    }
    bool isAny() const { return m_newest >= m_from; }

  private:
    void tell(std::uint64_t seq) { m_newest = std::max(m_newest, seq); }

    const record::Record& m_record;
    std::uint64_t m_from, m_newest = 0;
    std::set<base::CommandId> m_seen;
};

bool isFor(const record::Stated<record::SignOff>& signOff, const procedure::Taught& taught,
           const packs::Competency& competency) {
    return signOff.said.pack.digest == taught.digest &&
           std::ranges::count(signOff.said.competencies, competency.id) > 0;
}

/// The first entry that was not there when it was signed: its place alone could be another one.
std::uint64_t firstAfter(const record::Origin& signOff) {
    if (signOff.basis.empty()) return signOff.seq;
    return std::min(signOff.seq, signOff.basis.begin()->second);
}

}  // namespace

const record::Stated<record::SignOff>* signatureFor(const record::Record& record,
                                                    const record::Learner& learner,
                                                    const procedure::Taught& taught,
                                                    const packs::Competency& competency) {
    const record::Stated<record::SignOff>* last = nullptr;
    for (const auto& one : learner.signOffs)
        if (isFor(one, taught, competency) && !record.wrongChart(one.origin.entry)) last = &one;
    return last;
}

bool isNewSince(const record::Stated<record::SignOff>& signature, const record::Record& record,
                const record::Learner& learner, const procedure::Taught& taught,
                const packs::Competency& competency) {
    Since since(record, firstAfter(signature.origin));
    for (const record::Visit& visit : record.visits) {
        if (visit.opened.learner != learner.said.learner || !concerns(taught, visit, competency))
            continue;
        since.see(visit.origin, visit.lastSeq);
        for (const practice::Event& event : visit.events) since.see(event.id);
    }
    for (const auto& asked : learner.asked)
        if (isAbout(taught, asked.said, competency)) since.see(asked.origin, asked.origin.seq);
    for (const auto& late : record.lateEntries)
        if (late.said.learner.value_or(learner.said.learner) == learner.said.learner)
            since.see(late.origin, late.origin.seq);
    for (const auto& one : learner.signOffs)
        if (isFor(one, taught, competency)) since.see(one.origin.entry);
    since.seeAddenda();
    return since.isAny();
}

}  // namespace readiness
