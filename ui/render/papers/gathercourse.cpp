// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <set>

#include "practice/measures.h"
#include "render/papers/gather.h"

namespace render {
namespace {

/// Goes through the events of a visit once, in their order.
class Turns {
  public:
    Turns(const Gathering& from, const record::Visit& visit) : m_from(from), m_visit(visit) {
        for (const practice::Event& event : visit.events) {
            m_places.emplace(event.id, m_places.size());
            if (const auto* back = std::get_if<practice::TakeBack>(&event.said))
                m_takenBack.insert(back->entry);
        }
    }

    std::vector<PaperTurn> all() {
        for (const practice::Event& event : m_visit.events) {
            if (m_isOver || m_takenBack.contains(event.id)) continue;
            m_event = &event;
            std::visit([this](const auto& said) { on(said); }, event.said);
        }
        return std::move(m_turns);
    }

  private:
    template <class T>
    void on(const T&) {}
    void on(const practice::HandOver& said) {
        add(said.to == m_event->by ? Turn::TakenOn : Turn::HandedOver);
        m_turns.back().to = m_from.nameOf(said.to);
    }
    void on(const practice::TakeOver& said) {
        add(Turn::TookOver);
        m_turns.back().why = said.why;
    }
    void on(const practice::Pause&) { add(Turn::Paused); }
    void on(const practice::Resume&) { endPause(); }
    void on(const practice::ComeBack& said) {
        add(said.by == practice::BackBy::Restart ? Turn::Restarted : Turn::Away);
        m_turns.back().untilMs = m_event->wallMs;
        m_turns.back().fromMs = said.awayMs ? m_event->wallMs - *said.awayMs : 0;
    }
    void on(const practice::StopVisit&) { end(); }
    void on(const practice::CloseVisit&) { end(); }

    void add(Turn turn) {
        m_turns.push_back({.turn = turn, .fromMs = m_event->wallMs});
        m_turns.back().by = m_from.nameOf(m_event->by);
        m_turns.back().fromStep = firstStepAfter(*m_event);
    }
    void endPause() {
        const auto begun = std::find_if(m_turns.rbegin(), m_turns.rend(), [](const PaperTurn& one) {
            return one.turn == Turn::Paused && one.untilMs == 0;
        });
        if (begun != m_turns.rend()) begun->untilMs = m_event->wallMs;
    }
    void end() {
        endPause();
        m_isOver = true;
    }
    /// The first step that was marked after this event, by its number in the pack.
    int firstStepAfter(const practice::Event& event) const {
        int number = 0;
        for (const practice::StepRecord& step : m_visit.state.steps) {
            ++number;
            const auto marked = step.entry ? m_places.find(*step.entry) : m_places.end();
            if (marked != m_places.end() && marked->second > m_places.at(event.id)) return number;
        }
        return 0;
    }

    const Gathering& m_from;
    const record::Visit& m_visit;
    std::map<base::CommandId, std::size_t> m_places;  ///< in the order of the visit
    std::set<base::CommandId> m_takenBack;
    const practice::Event* m_event = nullptr;
    std::vector<PaperTurn> m_turns;
    bool m_isOver = false;
};

/// Whether anything was to be read at this step: not where it does not apply, nor where the visit
/// never came to it.
bool isReached(const practice::StepRecord& step, const record::Visit& visit) {
    if (step.mark == practice::Mark::DoesNotApply) return false;
    return step.mark != practice::Mark::None || visit.change;
}

/// Says each thing once, in the pack's words; what the pack does not know is left out.
class Missing {
  public:
    Missing(const Gathering& from, const record::Visit& visit) : m_from(from), m_visit(visit) {}

    void add(const std::string& measure, practice::Moment moment, const std::string& why = {}) {
        const packs::Pack& pack = m_visit.taught->pack;
        const packs::Measure* known = packs::find(pack.measures, measure);
        if (!known) return;
        const std::string label = packs::text(pack, known->label, m_from.context.language);
        const bool isSaid = std::ranges::any_of(all, [&](const PaperMissing& one) {
            return one.label == label && one.moment == moment && one.why == why;
        });
        if (!isSaid) all.push_back({label, moment, why});
    }

    std::vector<PaperMissing> all;

  private:
    const Gathering& m_from;
    const record::Visit& m_visit;
};

/// Whether a figure came after it could not be had: also on a way back, where the one of before may
/// be true no more.
bool isReadSince(const practice::NotMeasured& one, const practice::State& state) {
    return std::ranges::any_of(state.readings, [&](const auto& read) {
        return read.measure == one.measure && read.moment == one.moment && read.atMs >= one.atMs;
    });
}

}  // namespace

std::vector<PaperTurn> turnsOf(const Gathering& from, const record::Visit& visit) {
    return Turns(from, visit).all();
}

std::vector<PaperMissing> missingIn(const Gathering& from, const record::Visit& visit) {
    if (!visit.taught) return {};
    Missing missing(from, visit);
    for (const practice::MeasureOfStep& one :
         practice::measuresOf(visit.taught->pack, visit.state)) {
        const auto step =
            std::ranges::find(visit.state.steps, one.step, &practice::StepRecord::step);
        if (one.measured == practice::Measured::No && isReached(*step, visit))
            missing.add(one.measure, one.moment);
    }
    for (const practice::NotMeasured& one : visit.state.notMeasured)
        if (!isReadSince(one, visit.state)) missing.add(one.measure, one.moment, one.why);
    return std::move(missing.all);
}

}  // namespace render
