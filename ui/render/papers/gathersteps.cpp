// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/gather.h"

namespace render {
namespace {

/// The learner's language where the pack has it and it is another than the hospital's.
std::string otherLanguage(const Gathering& from, const std::string& learners) {
    const auto& all = from.taught.pack.languages;
    const bool isIn = std::ranges::find(all, learners) != all.end();
    return isIn && learners != from.context.language ? learners : std::string();
}

}  // namespace

PaperSteps gatherSteps(const Gathering& from, const std::string& learnersLanguage) {
    const packs::Pack& pack = from.taught.pack;
    PaperSteps shown{.language = otherLanguage(from, learnersLanguage)};
    shown.isLacking = shown.language.empty() && learnersLanguage != from.context.language;
    const auto pair = [&](const packs::Text& text) {
        return PaperPair{from.words(text), shown.language.empty()
                                               ? std::string()
                                               : packs::text(pack, text, shown.language)};
    };
    shown.title = pair(pack.title);
    for (const packs::Competency& one : pack.competencies) {
        PaperStepsPart part{.title = pair(one.title)};
        for (const packs::Step& step : one.steps) {
            PaperHomeStep home{.text = pair(step.doText)};
            for (const packs::Phase& phase : step.phases)
                home.phases.push_back(
                    {pair(phase.label), phase.minSeconds, phase.targetSeconds, phase.maxSeconds,
                     phase.until ? std::optional(pair(*phase.until)) : std::nullopt});
            part.steps.push_back(home);
        }
        shown.parts.push_back(part);
    }
    for (const packs::Caution& caution : pack.cautions)
        shown.cautions.push_back({caution.level, pair(caution.text)});
    std::ranges::stable_sort(shown.cautions, {}, &PaperCautionPair::level);
    return shown;
}

}  // namespace render
