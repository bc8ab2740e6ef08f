// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "readiness/readiness.h"

#include <algorithm>
#include <set>

#include "base/date.h"
#include "readiness/demonstrations.h"
#include "readiness/sincesigning.h"

namespace readiness {
namespace {

using Visits = std::vector<const record::Visit*>;

Finding counted(Rule rule, int seen, int asked) {
    return {rule, seen >= asked, {std::to_string(seen), std::to_string(asked)}};
}

/// All that the rules look at, gathered once.
struct Case {
    const record::Record& record;
    const record::Learner& learner;
    const procedure::Taught& taught;
    packs::Readiness asked;
    Visits shown;
    std::string today;
};

std::vector<std::string> idsOf(const packs::Pack& pack, const std::vector<int>& steps) {
    const auto places = packs::stepsInOrder(pack);
    std::vector<std::string> ids;
    for (const int step : steps) ids.push_back(places.at(static_cast<std::size_t>(step)).step->id);
    return ids;
}

Finding consentGiven(const Case& c) {
    const bool own = c.learner.said.isPatient;
    return {Rule::Consent, own || (c.learner.consent && c.learner.consent->said.toTeach), {}};
}

Finding onDays(const Case& c) {
    std::set<std::string> days;
    for (const record::Visit* visit : c.shown) days.insert(dayOf(*visit));
    return counted(Rule::OnDays, static_cast<int>(days.size()), c.asked.onDaysAtLeast);
}

Finding onPatient(const Case& c) {
    const auto count = std::count_if(c.shown.begin(), c.shown.end(), [](const auto* visit) {
        return visit->opened.on == practice::On::Patient;
    });
    return counted(Rule::OnPatient, static_cast<int>(count), c.asked.onPatientAtLeast);
}

Ground groundOf(const Case& c) { return c.shown.empty() ? Ground::NothingYet : Ground::Seen; }

Finding criticalShown(const Case& c) {
    const std::vector<int> steps = criticalSteps(c.taught.pack);
    const auto missing = c.shown.empty() ? steps : notUnprompted(*c.shown.back(), steps);
    return {Rule::CriticalSteps, missing.empty(), idsOf(c.taught.pack, missing), groundOf(c)};
}

/// Of all questions, or of those of one competency.
Finding taughtBack(const Case& c, const std::string& competency) {
    auto open = promptsOpen(c.learner, c.taught, competency);
    const bool wasAsked = std::all_of(open.begin(), open.end(), [&](const std::string& prompt) {
        return std::any_of(c.learner.asked.begin(), c.learner.asked.end(), [&](const auto& asked) {
            return asked.said.pack == c.taught.digest && asked.said.prompt == prompt;
        });
    });
    const bool isMet = open.empty();
    return {Rule::TeachBack, isMet, std::move(open), wasAsked ? Ground::Seen : Ground::NothingYet};
}

Finding drillsDone(const Case& c) {
    std::vector<std::string> open;
    for (const std::string& drill : c.asked.drills) {
        const bool done =
            std::any_of(c.learner.drills.begin(), c.learner.drills.end(), [&](const auto& stated) {
                return stated.said.drill == drill && stated.said.pack == c.taught.digest &&
                       stated.said.result == record::DrillResult::Unprompted;
            });
        if (!done) open.push_back(drill);
    }
    return {Rule::Drills, open.empty(), open};
}

Finding homeKitSeen(const Case& c) {
    const bool seen = std::any_of(c.shown.begin(), c.shown.end(),
                                  [](const auto* visit) { return visit->opened.kit.homeKit; });
    if (!c.asked.homeKitSeen) return {Rule::HomeKit, true, {}, Ground::NotAsked};
    return {Rule::HomeKit, seen, {}};
}

Finding stillValid(const Case& c) {
    if (c.asked.validDays == 0) return {Rule::StillValid, true, {}, Ground::NotAsked};
    if (c.shown.empty()) return {Rule::StillValid, true, {}, Ground::NothingYet};
    const int days = base::daysBetween(dayOf(*c.shown.back()), c.today);
    return {Rule::StillValid,
            days <= c.asked.validDays,
            {std::to_string(days), std::to_string(c.asked.validDays)}};
}

Finding nothingUnsettled(const Case& c) {
    const auto unknown = c.record.blocking(c.learner.said.learner).size();
    const bool open = c.record.openVisit() != nullptr;
    return {Rule::Unsettled, unknown == 0 && !open, {std::to_string(unknown + (open ? 1 : 0))}};
}

std::vector<Finding> findings(const Case& c) {
    const int row = unpromptedRow(c.shown, criticalSteps(c.taught.pack));
    return {consentGiven(c),
            {Rule::NeedsAsked, c.learner.needs.has_value(), {}},
            {Rule::AllergiesAsked, c.record.allergies.has_value(), {}},
            counted(Rule::Observed, static_cast<int>(c.shown.size()), c.asked.observedAtLeast),
            onPatient(c),
            onDays(c),
            counted(Rule::UnpromptedRow, row, c.asked.unpromptedInARow),
            criticalShown(c),
            taughtBack(c, {}),
            drillsDone(c),
            homeKitSeen(c),
            stillValid(c),
            nothingUnsettled(c)};
}

/// Every step of the competency was at least seen done in the newest demonstration.
std::vector<std::string> leftOpen(const Case& c, const packs::Competency& competency) {
    std::vector<std::string> open;
    for (const packs::Step& step : competency.steps) {
        const int number = packs::findStep(c.taught.pack, step.id).number;
        const practice::State& state = c.shown.back()->state;
        const auto help =
            practice::helpOf(state.steps.at(static_cast<std::size_t>(number - 1)), state);
        if (help == practice::Help::NotDone || help == practice::Help::NothingRecorded)
            open.push_back(step.id);
    }
    return open;
}

std::vector<Finding> missingFor(const Case& c, const packs::Competency& competency) {
    std::vector<Finding> missing;
    const int asked = std::max(1, c.asked.unpromptedInARow);
    const auto steps = criticalSteps(c.taught.pack, competency.id);
    const Finding row = counted(Rule::UnpromptedRow, unpromptedRow(c.shown, steps), asked);
    if (!row.met) missing.push_back(row);
    if (!c.shown.empty()) {
        auto open = leftOpen(c, competency);
        for (std::string& id : idsOf(c.taught.pack, notUnprompted(*c.shown.back(), steps)))
            if (!std::count(open.begin(), open.end(), id)) open.push_back(std::move(id));
        if (!open.empty()) missing.push_back({Rule::CriticalSteps, false, open});
    }
    Finding prompts = taughtBack(c, competency.id);
    if (!prompts.met) missing.push_back(std::move(prompts));
    return missing;
}

CompetencyState competencyState(const Case& c, const packs::Competency& competency) {
    CompetencyState state{.competency = competency.id};
    state.missing = missingFor(c, competency);
    state.met = state.missing.empty() ? Met::Yes : Met::NotYet;
    const auto* signature = signatureFor(c.record, c.learner, c.taught, competency);
    if (!signature) return state;
    state.isSigned = true;
    state.signature = signature->origin;
    state.newSinceSigning = isNewSince(*signature, c.record, c.learner, c.taught, competency);
    return state;
}

Evidence evidenceOf(const Case& c) {
    int seen = 0;
    int unprompted = 0;
    const std::vector<int> steps = criticalSteps(c.taught.pack);
    for (const record::Visit* visit : c.shown) {
        const int all = applying(*visit, steps);
        const auto missing = static_cast<int>(notUnprompted(*visit, steps).size());
        seen += all;
        unprompted += all - std::min(all, missing);
    }
    return wilson(unprompted, seen);
}

}  // namespace

bool Readiness::allSigned() const {
    return !competencies.empty() &&
           std::all_of(competencies.begin(), competencies.end(),
                       [](const CompetencyState& one) { return one.isSigned; });
}

Readiness assess(const record::Record& record, const base::LearnerId& learner,
                 const procedure::Taught& taught, const base::Instant& now) {
    Readiness result;
    const record::Learner* person = record.learner(learner);
    if (!person) return result;
    const Case c{.record = record,
                 .learner = *person,
                 .taught = taught,
                 .asked = taught.pack.readiness.value_or(packs::Readiness{.observedAtLeast = 1}),
                 .shown = demonstrations(record, learner, taught),
                 .today = base::today(now)};
    result.findings = findings(c);
    for (const packs::Competency& one : taught.pack.competencies)
        result.competencies.push_back(competencyState(c, one));
    result.evidence = evidenceOf(c);
    result.ready = std::all_of(result.findings.begin(), result.findings.end(),
                               [](const Finding& finding) { return finding.met; }) &&
                   std::all_of(result.competencies.begin(), result.competencies.end(),
                               [](const CompetencyState& one) { return one.met == Met::Yes; });
    return result;
}

}  // namespace readiness
