// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <tuple>

#include "base/oneof.h"
#include "record/record.h"

namespace record {
namespace {

Origin originOf(const ledger::Entry& entry) {
    return {.entry = entry.body.id,
            .by = entry.body.by,
            .atMs = entry.body.atMs,
            .wallMs = entry.wallMs,
            .offsetMinutes = entry.body.offsetMinutes,
            .seq = entry.seq,
            .basis = entry.body.basis};
}

/// Puts one payload where it belongs; `on` answers whether there was a place for it.
class Placer {
  public:
    Placer(Record& record, const ledger::Entry& entry, const procedure::Shelf& shelf)
        : m_record(record), m_entry(entry), m_shelf(shelf), m_origin(originOf(entry)) {}

    bool on(const AddPatient& said) {
        m_record.patient = said;
        m_record.origin = m_origin;
        return true;
    }
    bool on(const AskAllergies& said) {
        m_record.allergies = {said, m_origin};
        return true;
    }
    bool on(const AddLine& said) {
        m_record.lines.push_back({said, m_origin});
        return true;
    }
    bool on(const CorrectLine& said) {
        return ofLine(said.now.line, [&](Line& one) {
            one.corrected.push_back({one.said, said.why, m_origin});
            one.said = said.now;
        });
    }
    bool on(const RemoveLine& said) {
        return ofLine(said.line, [&](Line& one) {
            one.removals.push_back({said, m_origin});
            one.isInUse = false;
        });
    }
    bool on(const KeepLine& said) {
        return ofLine(said.line, [&](Line& one) {
            one.kept.push_back({said, m_origin});
            one.isInUse = true;
        });
    }
    bool on(const AddLearner& said) {
        m_record.learners.push_back({.said = said, .origin = m_origin});
        return true;
    }
    bool on(const AskConsent& said) {
        return ofLearner(said.learner, [&](Learner& one) { one.consent = {said, m_origin}; });
    }
    bool on(const AskNeeds& said) {
        return ofLearner(said.learner, [&](Learner& one) { one.needs = {said, m_origin}; });
    }
    bool on(const AskBack& said) {
        return ofLearner(said.learner, [&](Learner& one) {
            one.asked.push_back({said, m_origin});
        });
    }
    bool on(const MakePlan& said) {
        return ofLearner(said.learner, [&](Learner& one) {
            one.plans.push_back({said, m_origin});
        });
    }
    bool on(const DoDrill& said) {
        return ofLearner(said.learner, [&](Learner& one) {
            one.drills.push_back({said, m_origin});
        });
    }
    bool on(const SignOff& said) {
        return ofLearner(said.learner, [&](Learner& one) {
            one.signOffs.push_back({said, m_origin});
        });
    }
    bool on(const DecideHelp& said) {
        return ofLearner(said.learner, [&](Learner& one) { one.help = {said, m_origin}; });
    }
    bool on(const IssuePaper& said) {
        return ofLearner(said.learner, [&](Learner& one) {
            one.papers.push_back({said, m_origin});
        });
    }
    bool on(const AddAddendum& said) {
        m_record.addenda.push_back({said, m_origin});
        return true;
    }
    bool on(const AddLateEntry& said) {
        m_record.lateEntries.push_back({said, m_origin});
        return true;
    }
    bool on(const MarkWrongChart& said) {
        m_record.wrongCharts.push_back({said, m_origin});
        return true;
    }
    bool on(const AddStaff&) { return false; }
    bool on(const ChangeAccess&) { return false; }
    bool on(const NoteUse&) { return false; }
    bool on(const ContinueLedger&) { return false; }
    bool on(const ErasePatient&) { return false; }
    bool on(const SetUnit&) { return false; }

    template <class T>
    bool on(const T& said) {
        static_assert(base::isOneOf<T, practice::Said>);
        return inVisit(said);
    }

  private:
    template <class F>
    bool ofLearner(const base::LearnerId& id, F&& put) {
        for (Learner& one : m_record.learners)
            if (one.said.learner == id) return put(one), true;
        return false;
    }

    template <class F>
    bool ofLine(const base::LineId& id, F&& put) {
        for (Line& one : m_record.lines)
            if (one.said.line == id) return put(one), true;
        return false;
    }

    practice::Event event(practice::Said said) const {
        return {.id = m_entry.body.id,
                .by = m_entry.body.by.value_or(base::StaffId()),
                .wallMs = m_entry.wallMs,
                .bootMs = m_entry.bootMs,
                .bootId = m_entry.bootId,
                .said = std::move(said)};
    }

    bool openVisit(const practice::OpenVisit& said) {
        Visit visit;
        visit.id = *m_entry.body.visit;
        visit.opened = said;
        visit.origin = m_origin;
        visit.taught = m_shelf.byDigest(said.pack.digest);
        m_record.visits.push_back(std::move(visit));
        return step(m_record.visits.back(), said);
    }

    bool step(Visit& visit, const practice::Said& said) {
        practice::Event next = event(said);
        if (visit.taught)
            visit.state =
                practice::advance(*visit.taught, std::move(visit.state), visit.events, next);
        else
            endBare(visit, said);
        visit.events.push_back(std::move(next));
        visit.lastSeq = m_entry.seq;
        return true;
    }

    /// Without its pack a visit is only known to be open or ended.
    void endBare(Visit& visit, const practice::Said& said) const {
        if (std::holds_alternative<practice::CloseVisit>(said))
            visit.state.ending = practice::Ending::Closed;
        if (std::holds_alternative<practice::StopVisit>(said))
            visit.state.ending = practice::Ending::Stopped;
    }

    template <class T>
    bool inVisit(const T& said) {
        if (!m_entry.body.visit) return false;
        if constexpr (std::is_same_v<T, practice::OpenVisit>) {
            return openVisit(said);
        } else {
            for (Visit& visit : m_record.visits) {
                if (visit.id != *m_entry.body.visit) continue;
                if constexpr (std::is_same_v<T, practice::RecordChange>)
                    visit.change = {said, m_origin};
                if constexpr (std::is_same_v<T, practice::StopVisit>)
                    visit.stopped = {said, m_origin};
                return step(visit, said);
            }
            return false;
        }
    }

    Record& m_record;
    const ledger::Entry& m_entry;
    const procedure::Shelf& m_shelf;
    Origin m_origin;
};

/// By tick, then ledger, then seq: the same for all who have the same entries. Never by a clock.
std::vector<const ledger::Entry*> inOrder(const std::vector<ledger::Entry>& entries) {
    std::vector<const ledger::Entry*> order;
    for (const ledger::Entry& entry : entries) order.push_back(&entry);
    std::sort(order.begin(), order.end(), [](const ledger::Entry* a, const ledger::Entry* b) {
        return std::tie(a->tick, a->ledger, a->seq) < std::tie(b->tick, b->ledger, b->seq);
    });
    return order;
}

Unknown unknownOf(const ledger::Entry& entry) {
    return {.type = entry.body.type,
            .version = entry.body.tv,
            .must = entry.body.must,
            .origin = originOf(entry),
            .about = entry.body.about,
            .visit = entry.body.visit,
            .data = entry.body.data.dump()};
}

}  // namespace

void fold(Record& record, const ledger::Entry& entry, const procedure::Shelf& shelf,
          const ledger::Shapes& known) {
    ++record.entries;
    if (entry.subject) record.id = *entry.subject;
    const auto payload = lifted(entry.body, known).payload;
    Placer placer(record, entry, shelf);
    const bool placed =
        payload && std::visit([&](const auto& said) { return placer.on(said); }, *payload);
    if (!placed) record.unknown.push_back(unknownOf(entry));
}

namespace {

void change(Staff& person, const ChangeAccess& said) {
    switch (said.what) {
        case AccessChange::Founded:
        case AccessChange::Admitted:
        case AccessChange::Reset:
        case AccessChange::Recovered:
            if (said.role) person.said.role = *said.role;
            person.kids.push_back(said.kid);
            person.isRetired = false;
            return;
        case AccessChange::Retired:
            person.isRetired = true;
            return;
        case AccessChange::NewPassphrase:
        case AccessChange::RaisedCost:
        case AccessChange::NewRecovery:
            return;
    }
}

}  // namespace

void fold(House& house, const ledger::Entry& entry) {
    const auto payload = lifted(entry.body).payload;
    if (!payload) return;
    if (const auto* said = std::get_if<ChangeAccess>(&*payload))
        for (Staff& person : house.staff)
            if (person.said.staff == said->staff) change(person, *said);
    if (const auto* staff = std::get_if<AddStaff>(&*payload))
        house.staff.push_back({*staff, originOf(entry)});
    if (const auto* erased = std::get_if<ErasePatient>(&*payload))
        house.erased.push_back({*erased, originOf(entry)});
    if (const auto* unit = std::get_if<SetUnit>(&*payload)) house.unit = *unit;
}

Record foldRecord(const std::vector<ledger::Entry>& entries, const procedure::Shelf& shelf) {
    Record record;
    for (const ledger::Entry* entry : inOrder(entries)) fold(record, *entry, shelf);
    return record;
}

House foldHouse(const std::vector<ledger::Entry>& entries) {
    House house;
    for (const ledger::Entry* entry : inOrder(entries)) fold(house, *entry);
    return house;
}

}  // namespace record
