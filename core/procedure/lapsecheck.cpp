// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <map>
#include <tuple>

#include "procedure/checkparts.h"

namespace procedure {
namespace {

/// One lapse at one step that lists it.
struct Listing {
    int step = 0;   ///< index of the operator
    int lapse = 0;  ///< index in the model
    std::string pointer;
};

/// Asks for the way back from every listed lapse and keeps the answers for the whole check.
class LapseCheck {
  public:
    explicit LapseCheck(CheckRun& run) : m_run(run), m_states(nominalStates(run.model)) {}

    void checkAll();

  private:
    using Key = std::tuple<int, std::uint64_t, Company>;

    const ModelLapse& lapseOf(const Listing& listing) const {
        return m_run.model.lapses[listing.lapse];
    }
    std::string phrase(const Listing& listing, Seen seen) const;
    Conditions before(const Listing& listing, Seen seen) const {
        return m_states[seen == Seen::During ? listing.step : listing.step + 1];
    }
    void checkListing(const Listing& listing);
    void checkSeen(const Listing& listing, Seen seen);
    const PlanAnswer& answer(const Listing& listing, Seen seen, Company company);
    const PlanAnswer& ask(const Listing& listing, Conditions state, int nextStep, Company company);
    void note(const Listing& listing, Seen seen, Company company, const PlanAnswer& answer);
    bool isSpent() const { return m_run.report.statesStored > m_run.limits.statesOfCheck; }

    CheckRun& m_run;
    std::vector<Conditions> m_states;
    std::map<Key, PlanAnswer> m_answers;
};

std::string LapseCheck::phrase(const Listing& listing, Seen seen) const {
    return (seen == Seen::During ? "during" : "after") + std::string(" the step \"") +
           m_run.model.operators[listing.step].id + "\"";
}

const PlanAnswer& LapseCheck::ask(const Listing& listing, Conditions state, int nextStep,
                                  Company company) {
    const Key key{nextStep, state.bits(), company};
    if (const auto known = m_answers.find(key); known != m_answers.end()) return known->second;
    const PlanAnswer answer =
        findPlan(m_run.model, questionAt(m_run.model, state, nextStep, company),
                 m_run.limits.statesOfQuestion);
    m_run.report.statesStored += answer.stored;
    if (answer.outcome == PlanOutcome::TooLarge)
        m_run.error(listing.pointer, "The search for a way back is too large.",
                    "Mark fewer steps as repeatable, or write fewer recoveries.");
    else if (answer.stored > m_run.limits.statesAdvised)
        m_run.advise(listing.pointer, "The search for a way back stores " +
                                          std::to_string(answer.stored) +
                                          " states; keep it under " +
                                          std::to_string(m_run.limits.statesAdvised) + ".");
    return m_answers.emplace(key, answer).first->second;
}

const PlanAnswer& LapseCheck::answer(const Listing& listing, Seen seen, Company company) {
    static const PlanAnswer notSought{.outcome = PlanOutcome::NotSought};
    if (lapseOf(listing).action == packs::Action::StopAndCall) return notSought;
    const Conditions state = afterLapse(lapseOf(listing), before(listing, seen));
    const int nextStep = seen == Seen::During ? listing.step + 1 : listing.step + 2;
    return ask(listing, state, nextStep, company);
}

void LapseCheck::note(const Listing& listing, Seen seen, Company company,
                      const PlanAnswer& answer) {
    WayBack way;
    way.step = m_run.model.operators[listing.step].id;
    way.lapse = lapseOf(listing).id;
    way.seen = seen;
    way.company = company;
    way.action = lapseOf(listing).action;
    way.outcome = answer.outcome;
    way.seconds = answer.plan.seconds;
    way.strain = answer.plan.strain;
    for (const int index : answer.plan.operators)
        way.plan.push_back(m_run.model.operators[index].id);
    m_run.report.ways.push_back(std::move(way));
}

void LapseCheck::checkSeen(const Listing& listing, Seen seen) {
    const PlanAnswer& helped = answer(listing, seen, Company::WithHelper);
    const PlanAnswer& alone = answer(listing, seen, Company::Alone);
    note(listing, seen, Company::WithHelper, helped);
    note(listing, seen, Company::Alone, alone);
    const std::string& lapse = lapseOf(listing).id;
    if (helped.outcome == PlanOutcome::None)
        m_run.error(listing.pointer,
                    "There is no way back from the lapse \"" + lapse + "\" seen " +
                        phrase(listing, seen) + ".",
                    "Mark a step before it as repeatable, write a recovery that gives what is "
                    "lost, or have the lapse stop and call.");
    else if (helped.outcome == PlanOutcome::Found && alone.outcome == PlanOutcome::None)
        m_run.advise(listing.pointer, "The way back from the lapse \"" + lapse + "\" seen " +
                                          phrase(listing, seen) + " exists only with a helper.");
}

void LapseCheck::checkListing(const Listing& listing) {
    bool changesState = false;
    for (const Seen seen : {Seen::During, Seen::After}) {
        const Conditions state = before(listing, seen);
        changesState = changesState || afterLapse(lapseOf(listing), state) != state;
        checkSeen(listing, seen);
    }
    if (!changesState)
        m_run.error(
            listing.pointer,
            "The lapse \"" + lapseOf(listing).id + "\" changes nothing during or after this step.",
            "Take it out of this step, or say what it breaks here.");
}

void LapseCheck::checkAll() {
    for (int step = 0; step < m_run.model.stepCount; ++step) {
        const Operator& op = m_run.model.operators[step];
        for (std::size_t i = 0; i < op.lapses.size(); ++i) {
            if (isSpent()) {
                m_run.error("/lapses",
                            "The check is too large: it would store more than " +
                                std::to_string(m_run.limits.statesOfCheck) + " states.",
                            "Mark fewer steps as repeatable, list lapses at fewer steps, or divide "
                            "the pack.");
                return;
            }
            checkListing(
                {step, op.lapses[i], m_run.pointers[step] + "/lapses/" + std::to_string(i)});
        }
    }
}

}  // namespace

void checkLapses(CheckRun& run) { LapseCheck(run).checkAll(); }

}  // namespace procedure
