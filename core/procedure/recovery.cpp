// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/recovery.h"

#include <algorithm>

#include "procedure/remaining.h"
#include "procedure/search.h"

namespace procedure {

Question questionAt(const Model& model, Conditions state, int nextStep, Company company,
                    std::span<const int> alsoRepeatable) {
    Question question;
    question.state = state;
    for (int index = nextStep - 1; index < model.stepCount; ++index)
        question.remaining.push_back(index);
    for (int index = 0; index < static_cast<int>(model.operators.size()); ++index) {
        const Operator& op = model.operators[static_cast<std::size_t>(index)];
        const bool isRepeatable =
            op.isRepeatable || std::ranges::find(alsoRepeatable, index) != alsoRepeatable.end();
        const bool isOffered = model.isRecovery(index) || (index < nextStep - 1 && isRepeatable);
        if (!isOffered || (company == Company::Alone && op.by == packs::By::Helper)) continue;
        question.operators.push_back(index);
    }
    return question;
}

PlanAnswer findPlan(const Model& model, const Question& question, std::size_t limit) {
    return Search(model, question, limit).run();
}

PlanAnswer answerLapse(const Model& model, packs::Action action, const Question& question,
                       std::size_t limit) {
    if (action == packs::Action::StopAndCall) {
        PlanAnswer answer;
        answer.outcome = PlanOutcome::NotSought;
        return answer;
    }
    return findPlan(model, question, limit);
}

bool isWayOpen(const Model& model, std::span<const int> remaining, Conditions state) {
    return Remaining(model, remaining).isOpenFrom(state);
}

}  // namespace procedure
