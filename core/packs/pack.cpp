// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/pack.h"

namespace packs {

const std::string& text(const Pack& pack, const Text& texts, const std::string& language) {
    static const std::string noLanguage;
    return text(texts, language, pack.languages.empty() ? noLanguage : pack.languages.front());
}

std::vector<StepPlace> stepsInOrder(const Pack& pack) {
    std::vector<StepPlace> places;
    for (const Competency& competency : pack.competencies)
        for (const Step& step : competency.steps)
            places.push_back({&step, &competency, static_cast<int>(places.size()) + 1});
    return places;
}

StepPlace findStep(const Pack& pack, const std::string& id) {
    for (const StepPlace& place : stepsInOrder(pack))
        if (place.step->id == id) return place;
    return {find(pack.recoveries, id), nullptr, 0};
}

}  // namespace packs
