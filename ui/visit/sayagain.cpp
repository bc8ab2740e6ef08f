// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/sayagain.h"

#include <algorithm>

namespace ui {

namespace {

bool isUntouched(const practice::WayBack& back) {
    if (back.done > 0) return false;
    return std::ranges::all_of(back.steps, [](const practice::StepRecord& step) {
        return step.phases.empty() && step.cues == 0 && !step.handsOn;
    });
}

bool needsHelper(const Moment& moment) {
    const auto& operators = moment.taught().model.operators;
    return std::ranges::any_of(moment.state().wayBack->operators, [&](int op) {
        return operators.at(static_cast<std::size_t>(op)).by == packs::By::Helper;
    });
}

}  // namespace

std::optional<record::Payload> lapseToSayAgain(const Moment& moment, HelperAtHand helper) {
    const practice::LapseRecord* lapse = moment.lapseInHand();
    if (lapse == nullptr || lapse->byAbsence || lapse->withdrawn ||
        lapse->caught != practice::Caught::No || !isUntouched(*moment.state().wayBack))
        return std::nullopt;
    const bool isAlone = helper == HelperAtHand::No;
    if (isAlone && !needsHelper(moment)) return std::nullopt;
    for (const practice::Event& event : moment.visit().events) {
        if (event.id != lapse->entry) continue;
        if (const auto* seen = std::get_if<practice::SeeLapse>(&event.said)) {
            practice::SeeLapse again = *seen;
            if (again.alone == isAlone) return std::nullopt;
            again.alone = isAlone;
            // What was withdrawn of it alone is not said again.
            again.lapses = lapse->lapses;
            if (!lapse->isBesides()) again.other.reset();
            return again;
        }
        if (const auto* missed = std::get_if<practice::MissStep>(&event.said)) {
            practice::MissStep again = *missed;
            if (again.alone == isAlone) return std::nullopt;
            again.alone = isAlone;
            return again;
        }
    }
    return std::nullopt;
}

}  // namespace ui
