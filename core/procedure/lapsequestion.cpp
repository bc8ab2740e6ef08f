// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/lapsequestion.h"

namespace procedure {
namespace {

ModelLapse lapseAsked(const Model& model, const LapseQuestion& question,
                      const std::vector<Conditions>& states) {
    if (question.leftOut)
        return leftOut(model.operators.at(static_cast<std::size_t>(*question.leftOut)),
                       states.at(static_cast<std::size_t>(*question.leftOut)));
    std::vector<ModelLapse> lapses;
    for (const int index : question.lapses)
        lapses.push_back(model.lapses.at(static_cast<std::size_t>(index)));
    return together(lapses);
}

}  // namespace

LapseAnswer answerQuestion(const Model& model, const LapseQuestion& question, std::size_t limit) {
    const std::vector<Conditions> states = nominalStates(model);
    const ModelLapse lapse = lapseAsked(model, question, states);
    const bool isAfter = question.seen == Seen::After;
    const int doneSteps = isAfter ? question.step + 1 : question.step;
    const int happened = question.leftOut.value_or(question.happened.value_or(question.step));
    std::vector<int> doneSince;
    for (int step = happened + 1; step < doneSteps; ++step) doneSince.push_back(step);
    const Conditions state =
        noticedLate(model, lapse, doneSince, states.at(static_cast<std::size_t>(doneSteps)));
    std::vector<int> alsoRepeatable;
    if (question.leftOut) alsoRepeatable.push_back(*question.leftOut);
    const Question asked =
        questionAt(model, state, doneSteps + 1, question.company, alsoRepeatable);
    return {lapse.action, answerLapse(model, lapse.action, asked, limit)};
}

}  // namespace procedure
