// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The way back from every lapse at every step that lists it, seen during and after the step, with
// and without a helper, in the pack for the weekly change.
#include <benchmark/benchmark.h>

#include "bench/recovery/dijkstra.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "compose.h"

namespace bench {
namespace {

constexpr const char* weekly = "weekly-dressing-upper-arm";

struct Asked {
    procedure::TaughtPtr taught;
    std::vector<procedure::Question> questions;
};

void askAt(Asked& asked, int step, const procedure::ModelLapse& lapse,
           const std::vector<procedure::Conditions>& states) {
    if (lapse.action == packs::Action::StopAndCall) return;
    for (const int doneSteps : {step, step + 1})
        for (const auto company : {procedure::Company::WithHelper, procedure::Company::Alone})
            asked.questions.push_back(procedure::questionAt(
                asked.taught->model, procedure::afterLapse(lapse, states[std::size_t(doneSteps)]),
                doneSteps + 1, company));
}

Asked askAll() {
    Asked asked;
    const auto shelf = app::compiledShelf();
    if (!shelf) return asked;
    for (const auto& taught : (*shelf)->current())
        if (taught->pack.id == weekly) asked.taught = taught;
    if (!asked.taught) return asked;
    const procedure::Model& model = asked.taught->model;
    const auto states = procedure::nominalStates(model);
    for (int step = 0; step < model.stepCount; ++step)
        for (const int lapse : model.operators[std::size_t(step)].lapses)
            askAt(asked, step, model.lapses[std::size_t(lapse)], states);
    return asked;
}

const Asked& allQuestions() {
    static const Asked asked = askAll();
    return asked;
}

bool agree(const procedure::PlanAnswer& ours, const std::optional<LeastCost>& theirs) {
    if (!theirs) return ours.outcome == procedure::PlanOutcome::None;
    return ours.outcome == procedure::PlanOutcome::Found &&
           LeastCost{ours.plan.strain, ours.plan.seconds, int(ours.plan.operators.size())} ==
               *theirs;
}

template <class Answer>
void answerAll(benchmark::State& state, Answer answer) {
    const Asked& asked = allQuestions();
    if (asked.questions.empty()) return state.SkipWithError("no question to ask");
    for (const auto& question : asked.questions)
        if (!agree(procedure::findPlan(asked.taught->model, question),
                   dijkstra(asked.taught->model, question)))
            return state.SkipWithError("the two do not agree");
    for (auto _ : state) {
        const Watch watch;
        for (const auto& question : asked.questions)
            benchmark::DoNotOptimize(answer(asked.taught->model, question));
        addTo(state, watch.took(), double(asked.questions.size()));
    }
    state.counters["rows"] = double(asked.questions.size());
}

void bySearch(benchmark::State& state) {
    answerAll(state, [](const auto& model, const auto& question) {
        return procedure::findPlan(model, question);
    });
}

void byDijkstra(benchmark::State& state) {
    answerAll(state,
              [](const auto& model, const auto& question) { return dijkstra(model, question); });
}

}  // namespace

void addRecoveries() {
    benchmark::RegisterBenchmark("recovery/search", bySearch)
        ->UseManualTime()
        ->Iterations(2)
        ->Unit(benchmark::kMicrosecond);
    benchmark::RegisterBenchmark("recovery/dijkstra", byDijkstra)
        ->UseManualTime()
        ->Iterations(2)
        ->Unit(benchmark::kMicrosecond);
}

}  // namespace bench
