// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "readiness/demonstrations.h"

#include <algorithm>

#include "base/date.h"

namespace readiness {
namespace {

using practice::Help;

bool isWhole(const record::Visit& visit) {
    const practice::State& state = visit.state;
    return state.ending != practice::Ending::Open && state.remaining.empty() && !state.wayBack &&
           !state.takenOver;
}

bool wentUnprompted(const practice::State& state, int step) {
    const Help help = practice::helpOf(state.steps.at(static_cast<std::size_t>(step)), state);
    return help == Help::Unprompted || help == Help::DoesNotApply;
}

/// Cues and hands-on help on the way back belong to the step it was for: none went unprompted. The
/// way back from what was found, or from a machine that stopped, is not the learner's to know.
bool wayBackWasHelped(const practice::State& state) {
    return std::any_of(state.waysBack.begin(), state.waysBack.end(), [&](const auto& step) {
        return step.afterLapse && (step.cues > 0 || step.handsOn);
    });
}

const record::AskBack* newestRound(const record::Learner& learner, const std::string& digest,
                                   const std::string& prompt) {
    for (auto at = learner.asked.rbegin(); at != learner.asked.rend(); ++at)
        if (at->said.pack == digest && at->said.prompt == prompt) return &at->said;
    return nullptr;
}

bool allHeard(const packs::Prompt& prompt, const record::AskBack* round) {
    if (!round) return false;
    return std::all_of(prompt.points.begin(), prompt.points.end(), [&](const auto& point) {
        return !point.essential ||
               std::count(round->heard.begin(), round->heard.end(), point.id) > 0;
    });
}

}  // namespace

std::vector<const record::Visit*> demonstrations(const record::Record& record,
                                                 const base::LearnerId& learner,
                                                 const procedure::Taught& taught) {
    std::vector<const record::Visit*> found = record.visitsOf(learner);
    std::erase_if(found, [&](const record::Visit* visit) {
        return visit->opened.way != practice::Way::ReturnDemonstration ||
               visit->opened.on == practice::On::TalkedThrough ||
               visit->opened.pack.digest != taught.digest || !isWhole(*visit);
    });
    return found;
}

std::vector<int> criticalSteps(const packs::Pack& pack, const std::string& competency) {
    std::vector<int> steps;
    int number = 0;
    for (const packs::Competency& one : pack.competencies)
        for (const packs::Step& step : one.steps) {
            if (step.critical && (competency.empty() || one.id == competency))
                steps.push_back(number);
            ++number;
        }
    return steps;
}

std::vector<int> notUnprompted(const record::Visit& visit, const std::vector<int>& steps) {
    std::vector<int> missing;
    for (const int step : steps)
        if (!wentUnprompted(visit.state, step)) missing.push_back(step);
    if (missing.empty() && wayBackWasHelped(visit.state)) {
        // Named by the step each way back was for.
        for (const practice::LapseRecord& lapse : visit.state.lapses)
            for (const int step : steps)
                if (lapse.isLearners() &&
                    visit.state.steps.at(static_cast<std::size_t>(step)).step == lapse.step)
                    missing.push_back(step);
    }
    return missing;
}

int applying(const record::Visit& visit, const std::vector<int>& steps) {
    return static_cast<int>(std::count_if(steps.begin(), steps.end(), [&](int step) {
        const auto& record = visit.state.steps.at(static_cast<std::size_t>(step));
        return record.mark != practice::Mark::DoesNotApply;
    }));
}

int unpromptedRow(const std::vector<const record::Visit*>& visits, const std::vector<int>& steps) {
    int row = 0;
    for (auto at = visits.rbegin(); at != visits.rend(); ++at, ++row)
        if (!notUnprompted(**at, steps).empty()) break;
    return row;
}

std::vector<std::string> promptsOpen(const record::Learner& learner,
                                     const procedure::Taught& taught,
                                     const std::string& competency) {
    std::vector<std::string> open;
    for (const packs::Prompt& prompt : taught.pack.prompts) {
        if (!competency.empty() && prompt.competency != competency) continue;
        if (!allHeard(prompt, newestRound(learner, taught.digest, prompt.id)))
            open.push_back(prompt.id);
    }
    return open;
}

std::string dayOf(const record::Visit& visit) {
    return base::dateAt(visit.origin.atMs, visit.origin.offsetMinutes);
}

}  // namespace readiness
