// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/references.h"

#include <functional>

#include "packs/idset.h"
#include "packs/openquestion.h"

namespace packs {
namespace {

using EachStep = std::function<void(const Step&, const std::string& pointer)>;

void forEachStep(const Pack& pack, const EachStep& each) {
    for (std::size_t i = 0; i < pack.competencies.size(); ++i) {
        const std::string list = pointerTo(pointerTo("/competencies", i), "steps");
        for (std::size_t j = 0; j < pack.competencies[i].steps.size(); ++j)
            each(pack.competencies[i].steps[j], pointerTo(list, j));
    }
    for (std::size_t j = 0; j < pack.recoveries.size(); ++j)
        each(pack.recoveries[j], pointerTo("/recoveries", j));
}

/// Two lists that may not name the same condition.
void keepApart(Marker& marker, const std::vector<std::string>& first,
               const std::vector<std::string>& second, const std::string& pointer,
               const char* sentence) {
    const char* remedy = "Take the condition out of one of the two lists.";
    for (std::size_t i = 0; i < second.size(); ++i)
        if (std::ranges::find(first, second[i]) != first.end())
            marker.mark(pointerTo(pointer, i), sentence, remedy);
}

void checkStepConditions(Marker& marker, const IdSet& conditions, const Step& step,
                         const std::string& at) {
    conditions.referAll(step.needs, at + "/needs");
    conditions.referAll(step.forbids, at + "/forbids");
    conditions.referAll(step.gives, at + "/gives");
    conditions.referAll(step.ends, at + "/ends");
    keepApart(marker, step.needs, step.forbids, at + "/forbids",
              "A step can't forbid what it needs.");
    keepApart(marker, step.gives, step.ends, at + "/ends", "A step can't end what it gives.");
}

void checkPhases(Marker& marker, const Step& step, const std::string& at) {
    IdSet ids(marker, "phase");
    ids.defineAll(step.phases, at + "/phases");
    for (std::size_t i = 0; i < step.phases.size(); ++i) {
        const Phase& phase = step.phases[i];
        const std::string place = pointerTo(at + "/phases", i);
        if (phase.targetSeconds < phase.minSeconds)
            marker.mark(place + "/target_s", "The time asked is shorter than the least time.",
                        "Write seconds so that min_s, target_s and max_s rise or stay the same.");
        if (phase.maxSeconds && *phase.maxSeconds < phase.targetSeconds)
            marker.mark(place + "/max_s", "The longest time is shorter than the time asked.",
                        "Write a longer one, or take max_s out.");
    }
}

void checkUses(Marker& marker, const Pack& pack, const IdSet& supplies, const Step& step,
               const std::string& at) {
    std::set<std::string> used;
    for (std::size_t i = 0; i < step.uses.size(); ++i) {
        const std::string place = pointerTo(at + "/uses", i) + "/supply";
        const std::string& id = step.uses[i].supply;
        supplies.refer(id, place);
        if (!id.empty() && !used.insert(id).second)
            marker.mark(place, "This supply stands here a second time.",
                        "Take it out, and write the sum as n of the first.");
        const Supply* supply = find(pack.supplies, id);
        const bool isSwapped =
            supply && supply->instead && supply->instead->kind == Instead::Kind::Supply;
        // Another bottle has other seconds, so the times of the step would no longer be its own.
        if (!step.phases.empty() && isSwapped)
            marker.mark(place, "A supply of a timed step can be replaced only by another pack.",
                        "Name that pack in \"instead\" of the supply; other bottles have other "
                        "seconds.");
    }
}

void checkSteps(Marker& marker, const Pack& pack, const IdSet& sources, const IdSet& supplies,
                const IdSet& lapses) {
    IdSet measures(marker, "measure");
    for (const Measure& measure : pack.measures) measures.know(measure.id);
    forEachStep(pack, [&](const Step& step, const std::string& at) {
        checkPhases(marker, step, at);
        checkUses(marker, pack, supplies, step, at);
        lapses.referAll(step.lapses, at + "/lapses");
        sources.refer(step.source, at + "/source");
        if (step.measure) measures.refer(step.measure->id, at + "/measure/id");
        for (std::size_t i = 0; i < step.phases.size(); ++i)
            sources.refer(step.phases[i].source, pointerTo(at + "/phases", i) + "/source");
    });
}

void checkSupplies(Marker& marker, const Pack& pack, IdSet& supplies) {
    supplies.defineAll(pack.supplies, "/supplies");
    for (std::size_t i = 0; i < pack.supplies.size(); ++i) {
        const Supply& supply = pack.supplies[i];
        if (!supply.instead || supply.instead->kind != Instead::Kind::Supply) continue;
        const std::string place = pointerTo("/supplies", i) + "/instead/supply";
        supplies.refer(supply.instead->id, place);
        if (supply.instead->id == supply.id)
            marker.mark(place, "A supply can't be taken instead of itself.",
                        "Name another supply, or take \"instead\" out.");
    }
}

template <class Item>
void referSources(const IdSet& sources, const std::vector<Item>& items,
                  const std::string& pointer) {
    for (std::size_t i = 0; i < items.size(); ++i)
        sources.refer(items[i].source, pointerTo(pointer, i) + "/source");
}

void checkLanguages(Marker& marker, const Pack& pack) {
    for (const auto& [language, translation] : pack.translations)
        if (std::ranges::find(pack.languages, language) == pack.languages.end())
            marker.mark(pointerTo("/translations", language),
                        "The pack has no language " + inQuotes(language) + ".",
                        "Add it to /languages with every text, or take it out here.");
}

void checkRest(Marker& marker, const Pack& pack, const IdSet& sources, const IdSet& drills,
               const IdSet& lapses) {
    IdSet(marker, "word").defineAll(pack.words, "/words");
    IdSet(marker, "measure").defineAll(pack.measures, "/measures");
    IdSet(marker, "caution").defineAll(pack.cautions, "/cautions");
    referSources(sources, pack.drills, "/drills");
    referSources(sources, pack.lapses, "/lapses");
    referSources(sources, pack.measures, "/measures");
    referSources(sources, pack.cautions, "/cautions");
    for (std::size_t i = 0; i < pack.lapses.size(); ++i)
        drills.refer(pack.lapses[i].card, pointerTo("/lapses", i) + "/card");
    if (pack.away) lapses.refer(pack.away->lapse, "/away/lapse");
    if (pack.schedule) {
        IdSet(marker, "dressing").defineAll(pack.schedule->dressings, "/schedule/dressings");
        IdSet(marker, "reason").defineAll(pack.schedule->changeNowIf, "/schedule/change_now_if");
        sources.refer(pack.schedule->source, "/schedule/source");
    }
    if (pack.readiness) {
        drills.referAll(pack.readiness->drills, "/readiness/drills");
        sources.refer(pack.readiness->source, "/readiness/source");
    }
    const Applies& applies = pack.applies;
    if (applies.monthsFrom && applies.monthsTo && *applies.monthsTo < *applies.monthsFrom)
        marker.mark("/applies/months_to", "The ages end before they begin.",
                    "Write months so that months_to is not below months_from.");
}

/// What is found at a step is listed there: else nobody could say it.
void checkFindings(Marker& marker, const Pack& pack) {
    for (std::size_t i = 0; i < pack.lapses.size(); ++i)
        for (std::size_t k = 0; k < pack.lapses[i].foundAt.size(); ++k) {
            const Step* step = findStep(pack, pack.lapses[i].foundAt[k]).step;
            if (step && std::ranges::count(step->lapses, pack.lapses[i].id) > 0) continue;
            marker.mark(pointerTo(pointerTo("/lapses", i) + "/found_at", k),
                        "There is no step " + inQuotes(pack.lapses[i].foundAt[k]) +
                            " that lists this lapse.",
                        "Name a step that has it among its lapses, or take it out here.");
        }
}

void checkPrompts(Marker& marker, const Pack& pack, const IdSet& sources) {
    IdSet prompts(marker, "prompt");
    IdSet competencies(marker, "competency");
    for (const Competency& competency : pack.competencies) competencies.know(competency.id);
    prompts.defineAll(pack.prompts, "/prompts");
    for (std::size_t i = 0; i < pack.prompts.size(); ++i) {
        const Prompt& prompt = pack.prompts[i];
        const std::string at = pointerTo("/prompts", i);
        competencies.refer(prompt.competency, at + "/competency");
        sources.refer(prompt.source, at + "/source");
        IdSet(marker, "point").defineAll(prompt.points, at + "/points");
        for (const auto& [language, question] : prompt.ask)
            if (isClosedQuestion(question, language))
                marker.mark(pointerTo(at + "/ask", language),
                            "This can be answered by yes or no; ask so that the learner tells it.",
                            "Begin with what, how, when, why or which.");
    }
}

}  // namespace

void checkProcedureReferences(const Pack& pack, const Node& root, Faults& faults) {
    Marker marker(root, faults);
    IdSet conditions(marker, "condition");
    IdSet steps(marker, "step");
    conditions.defineAll(pack.conditions, "/conditions");
    IdSet(marker, "guard").defineAll(pack.guards, "/guards");
    IdSet(marker, "competency").defineAll(pack.competencies, "/competencies");
    IdSet(marker, "lapse").defineAll(pack.lapses, "/lapses");
    if (pack.conditions.size() > 64)
        marker.mark("/conditions", "A pack has at most 64 conditions.",
                    "Take out what no step, guard or goal looks at.");
    conditions.referAll(pack.start, "/start");
    conditions.referAll(pack.goal, "/goal");
    for (std::size_t i = 0; i < pack.guards.size(); ++i) {
        conditions.referAll(pack.guards[i].whileAll, pointerTo("/guards", i) + "/while");
        conditions.referAll(pack.guards[i].holds, pointerTo("/guards", i) + "/holds");
    }
    for (std::size_t i = 0; i < pack.lapses.size(); ++i) {
        conditions.referAll(pack.lapses[i].breaks, pointerTo("/lapses", i) + "/breaks");
        conditions.referAll(pack.lapses[i].sets, pointerTo("/lapses", i) + "/sets");
    }
    std::size_t operators = 0;
    forEachStep(pack, [&](const Step& step, const std::string& at) {
        steps.define(step.id, at + "/id");
        checkStepConditions(marker, conditions, step, at);
        if (++operators == 513)
            marker.mark(at, "A pack has at most 512 steps and recoveries.",
                        "Divide the procedure into several packs.");
    });
}

namespace {

/// A lane speaks of its own conditions only: what else holds is said by the other lanes.
void checkLanes(Marker& marker, const Pack& pack) {
    for (std::size_t i = 0; i < pack.lanes.size(); ++i) {
        const LaneRule& rule = pack.lanes[i];
        const std::string at = pointerTo("/lanes", i) + "/while";
        for (std::size_t k = 0; k < rule.whileAll.size(); ++k) {
            const Condition* known = findCondition(pack, rule.whileAll[k]);
            if (known == nullptr || known->lane != rule.lane)
                marker.mark(
                    pointerTo(at, k),
                    "There is no condition " + inQuotes(rule.whileAll[k]) + " in this lane.",
                    "Correct the id, or write the rule for the lane of that condition.");
        }
    }
}

}  // namespace

void checkReferences(const Pack& pack, const Node& root, Faults& faults) {
    checkProcedureReferences(pack, root, faults);
    Marker marker(root, faults);
    checkLanes(marker, pack);
    IdSet sources(marker, "source");
    IdSet supplies(marker, "supply");
    IdSet drills(marker, "drill");
    IdSet lapses(marker, "lapse");
    for (const Lapse& lapse : pack.lapses) lapses.know(lapse.id);
    sources.defineAll(pack.sources, "/sources");
    drills.defineAll(pack.drills, "/drills");
    checkSupplies(marker, pack, supplies);
    checkLanguages(marker, pack);
    checkSteps(marker, pack, sources, supplies, lapses);
    checkRest(marker, pack, sources, drills, lapses);
    checkFindings(marker, pack);
    checkPrompts(marker, pack, sources);
}

}  // namespace packs
