// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "packs/kit.h"
#include "packs/step.h"
#include "packs/teaching.h"

namespace packs {

/// One procedure as a hospital teaches it: the whole of a pack file of format 1, as plain values.
/// A pack that came out of the reader keeps every rule of shape and every reference.
struct Pack {
    std::string id;
    std::string version;  ///< MAJOR.MINOR.PATCH
    Text title;
    std::vector<std::string> languages;  ///< at least one; the first is the fallback
    std::map<std::string, Translation> translations;
    std::vector<Source> sources;
    Applies applies;
    std::vector<Condition> conditions;
    std::vector<std::string> start, goal;
    std::vector<Guard> guards;
    std::vector<LaneRule> lanes;
    std::vector<Competency> competencies;
    std::vector<Step> recoveries;
    std::vector<Lapse> lapses;
    std::optional<Away> away;
    std::vector<Word> words;
    std::vector<Prompt> prompts;
    std::vector<Drill> drills;
    std::vector<Supply> supplies;
    std::optional<Schedule> schedule;
    std::vector<Measure> measures;
    std::vector<Caution> cautions;
    std::optional<Readiness> readiness;

    bool operator==(const Pack&) const = default;
};

/// The text in `language`, else in the pack's first language.
const std::string& text(const Pack& pack, const Text& texts, const std::string& language);

/// Where a step stands in its pack. `number` counts from 1 through all competencies; a recovery
/// has none (0) and no competency.
struct StepPlace {
    const Step* step = nullptr;
    const Competency* competency = nullptr;
    int number = 0;
};

/// All steps in teaching order; the n-th has number n.
std::vector<StepPlace> stepsInOrder(const Pack& pack);
/// A step or a recovery by its id; `step` is null where there is none.
StepPlace findStep(const Pack& pack, const std::string& id);

/// The item with this id in a list of the pack, or null.
template <class Item>
const Item* find(const std::vector<Item>& items, const std::string& id) {
    for (const Item& item : items)
        if (item.id == id) return &item;
    return nullptr;
}

inline const Lapse* findLapse(const Pack& pack, const std::string& id) {
    return find(pack.lapses, id);
}
inline const Condition* findCondition(const Pack& pack, const std::string& id) {
    return find(pack.conditions, id);
}
inline const Competency* findCompetency(const Pack& pack, const std::string& id) {
    return find(pack.competencies, id);
}
inline const Source* findSource(const Pack& pack, const std::string& id) {
    return find(pack.sources, id);
}

}  // namespace packs
