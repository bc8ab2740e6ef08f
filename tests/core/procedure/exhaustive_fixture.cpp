// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/procedure/exhaustive.h"

#include <map>

namespace exhaustive {
namespace {

using Names = std::vector<std::string>;

bool hasAll(const State& state, const Names& names) {
    for (const std::string& name : names)
        if (!state.count(name)) return false;
    return true;
}

bool hasAny(const State& state, const Names& names) {
    for (const std::string& name : names)
        if (state.count(name)) return true;
    return false;
}

bool canDo(const packs::Step& step, const State& state) {
    return hasAll(state, step.needs) && !hasAny(state, step.forbids);
}

State done(const packs::Step& step, State state) {
    for (const std::string& name : step.ends) state.erase(name);
    for (const std::string& name : step.gives) state.insert(name);
    return state;
}

std::set<std::string> brokenGuards(const packs::Pack& pack, const State& state) {
    std::set<std::string> broken;
    for (const packs::Guard& guard : pack.guards)
        if (hasAll(state, guard.whileAll) && !hasAll(state, guard.holds)) broken.insert(guard.id);
    return broken;
}

std::vector<packs::Step> allSteps(const packs::Pack& pack) {
    std::vector<packs::Step> steps;
    for (const packs::Competency& competency : pack.competencies)
        steps.insert(steps.end(), competency.steps.begin(), competency.steps.end());
    return steps;
}

int secondsOf(const packs::Step& step) {
    int seconds = step.handsOnSeconds;
    for (const packs::Phase& phase : step.phases) seconds += phase.minSeconds;
    return seconds;
}

/// One question worked out over every state that can be reached.
class Worker {
  public:
    Worker(const packs::Pack& pack, const Question& question);
    std::optional<Plan> answer();

  private:
    struct Choice {
        packs::Step step;
        int place;
    };

    bool isGood(State state) const;
    bool mayDo(const Choice& choice, const State& from, const State& to) const;
    void collect(const State& state);
    bool improve(const State& state);
    bool isLess(const Plan& a, const Plan& b) const;

    const packs::Pack& m_pack;
    const Question& m_question;
    std::vector<packs::Step> m_remaining;
    std::vector<Choice> m_choices;
    std::map<State, std::optional<Plan>> m_best;
};

Worker::Worker(const packs::Pack& pack, const Question& question)
    : m_pack(pack), m_question(question) {
    int place = 0;
    for (const packs::Step& step : allSteps(pack)) {
        ++place;
        if (place >= question.nextStep)
            m_remaining.push_back(step);
        else if (step.repeatable || question.alsoRepeatable.count(step.id))
            m_choices.push_back({step, place});
    }
    for (const packs::Step& step : pack.recoveries) m_choices.push_back({step, ++place});
    if (question.isAlone && question.order != Order::HelperForgotten)
        std::erase_if(m_choices,
                      [](const Choice& choice) { return choice.step.by == packs::By::Helper; });
}

bool Worker::isGood(State state) const {
    const bool asksGuards = m_question.order != Order::GuardsForgotten;
    if (asksGuards && !brokenGuards(m_pack, state).empty()) return false;
    for (const packs::Step& step : m_remaining) {
        if (m_question.order == Order::RestForgotten) return canDo(step, state);
        if (!canDo(step, state)) return false;
        state = done(step, state);
        if (asksGuards && !brokenGuards(m_pack, state).empty()) return false;
    }
    return hasAll(state, m_pack.goal);
}

bool Worker::mayDo(const Choice& choice, const State& from, const State& to) const {
    if (!canDo(choice.step, from)) return false;
    if (m_question.order == Order::GuardsForgotten) return true;
    const auto before = brokenGuards(m_pack, from);
    for (const std::string& guard : brokenGuards(m_pack, to))
        if (!before.count(guard)) return false;
    return true;
}

void Worker::collect(const State& state) {
    if (m_best.count(state)) return;
    m_best[state] = isGood(state) ? std::optional<Plan>(Plan{}) : std::nullopt;
    for (const Choice& choice : m_choices) {
        const State next = done(choice.step, state);
        if (mayDo(choice, state, next)) collect(next);
    }
}

bool Worker::isLess(const Plan& a, const Plan& b) const {
    const std::size_t countA = a.places.size();
    const std::size_t countB = b.places.size();
    const bool strainFirst = m_question.order != Order::SecondsBeforeStrain;
    if (strainFirst && a.strain != b.strain) return a.strain < b.strain;
    if (m_question.order == Order::CountBeforeSeconds && countA != countB) return countA < countB;
    if (a.seconds != b.seconds) return a.seconds < b.seconds;
    if (a.strain != b.strain) return a.strain < b.strain;
    if (countA != countB) return countA < countB;
    return m_question.order == Order::LastInPackOrder ? b.places < a.places : a.places < b.places;
}

bool Worker::improve(const State& state) {
    bool isBetter = false;
    for (const Choice& choice : m_choices) {
        const State next = done(choice.step, state);
        if (!mayDo(choice, state, next) || !m_best[next]) continue;
        Plan plan = *m_best[next];
        plan.strain += choice.step.strain;
        plan.seconds += secondsOf(choice.step);
        plan.ids.insert(plan.ids.begin(), choice.step.id);
        plan.places.insert(plan.places.begin(), choice.place);
        std::optional<Plan>& best = m_best[state];
        if (best && !isLess(plan, *best)) continue;
        best = plan;
        isBetter = true;
    }
    return isBetter;
}

std::optional<Plan> Worker::answer() {
    collect(m_question.state);
    for (bool isChanging = true; isChanging;) {
        isChanging = false;
        for (const auto& [state, plan] : m_best) isChanging = improve(state) || isChanging;
    }
    return m_best[m_question.state];
}

}  // namespace

std::optional<Plan> leastPlan(const packs::Pack& pack, const Question& question) {
    return Worker(pack, question).answer();
}

std::vector<State> nominal(const packs::Pack& pack) {
    std::vector<State> states{State(pack.start.begin(), pack.start.end())};
    for (const packs::Step& step : allSteps(pack)) states.push_back(done(step, states.back()));
    return states;
}

State noticed(const packs::Pack& pack, const State& breaks, const State& sets, int happened,
              int seen) {
    State spoiled = breaks;
    State set = sets;
    State clean;
    for (const packs::Condition& condition : pack.conditions)
        if (condition.clean) clean.insert(condition.id);
    const std::vector<packs::Step> steps = allSteps(pack);
    for (int number = happened + 1; number <= seen; ++number) {
        const packs::Step& step = steps.at(static_cast<std::size_t>(number) - 1);
        const bool isUsed = hasAny(spoiled, step.needs);
        for (const std::string& name : step.gives) {
            spoiled.erase(name);
            if (isUsed && clean.count(name)) spoiled.insert(name);
        }
        for (const std::string& name : step.ends) {
            spoiled.erase(name);
            set.erase(name);
        }
    }
    State state = nominal(pack).at(static_cast<std::size_t>(seen));
    for (const std::string& name : spoiled) state.erase(name);
    state.insert(set.begin(), set.end());
    return state;
}

}  // namespace exhaustive
