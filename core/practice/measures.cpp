// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/measures.h"

#include <algorithm>

namespace practice {
namespace {

Moment momentOf(const packs::StepMeasure& measure) {
    return measure.when == packs::Taken::Left ? Moment::Left : Moment::Found;
}

const packs::StepMeasure* measureOf(const packs::Pack& pack, const std::string& step) {
    const packs::Step* found = packs::findStep(pack, step).step;
    return found && found->measure ? &*found->measure : nullptr;
}

/// Of the operator in hand and of the steps still to be done.
std::vector<StepRecord*> recordsToDo(State& state) {
    std::vector<StepRecord*> records;
    if (StepRecord* hand = recordInHand(state)) records.push_back(hand);
    for (const int op : state.remaining) {
        StepRecord* record = &state.steps.at(static_cast<std::size_t>(op));
        if (records.empty() || records.front() != record) records.push_back(record);
    }
    return records;
}

/// Of a state that is looked at, or of one that is changed.
template <class AnyState>
auto recordToDo(AnyState& state, const std::string& step) -> decltype(recordInHand(state)) {
    const auto hand = recordInHand(state);
    if (hand && hand->step == step) return hand;
    for (const int op : state.remaining) {
        auto* record = &state.steps.at(static_cast<std::size_t>(op));
        if (record->step == step) return record;
    }
    return nullptr;
}

bool isOf(const packs::StepMeasure* measure, const TakeMeasure& said) {
    return measure && measure->id == said.measure && momentOf(*measure) == said.moment;
}

std::string stepOf(const packs::Pack& pack, const State& state, const TakeMeasure& said) {
    if (said.step) return *said.step;
    const StepRecord* hand = recordInHand(state);
    return hand && isOf(measureOf(pack, hand->step), said) ? hand->step : std::string();
}

}  // namespace

bool owesMeasure(const packs::Pack& pack, const State& state, const std::string& step) {
    if (!state.isOnPatient || !measureOf(pack, step)) return false;
    const StepRecord* record = recordToDo(state, step);
    return record && record->measured == Measured::No;
}

std::vector<MeasureOfStep> measuresOf(const packs::Pack& pack, const State& state) {
    std::vector<MeasureOfStep> all;
    if (!state.isOnPatient) return all;
    for (const StepRecord& record : state.steps) {
        const packs::StepMeasure* measure = measureOf(pack, record.step);
        if (!measure) continue;
        MeasureOfStep one{.step = record.step,
                          .measure = measure->id,
                          .moment = momentOf(*measure),
                          .measured = record.measured};
        const bool isRead = std::ranges::any_of(state.readings, [&](const Reading& reading) {
            return reading.measure == one.measure && reading.moment == one.moment;
        });
        if (one.measured == Measured::No && isRead) one.measured = Measured::Taken;
        for (const NotMeasured& missed : state.notMeasured)
            if (one.measured == Measured::CouldNot && missed.step == one.step) one.why = missed.why;
        all.push_back(std::move(one));
    }
    return all;
}

void takeMeasure(const packs::Pack& pack, State& state, const Event& event,
                 const TakeMeasure& said) {
    const std::string at = stepOf(pack, state, said);
    state.readings.push_back({.measure = said.measure,
                              .moment = said.moment,
                              .mm = said.mm,
                              .marks = said.marks,
                              .step = at,
                              .atMs = event.wallMs,
                              .by = event.by});
    // Millimetres answer for every step that asks for the same; a count of marks for its own.
    for (StepRecord* record : recordsToDo(state))
        if (isOf(measureOf(pack, record->step), said) && (said.mm || record->step == at))
            record->measured = Measured::Taken;
}

void missMeasure(const packs::Pack& pack, State& state, const Event& event,
                 const MissMeasure& said) {
    const packs::StepMeasure* measure = measureOf(pack, said.step);
    if (!measure) return;
    state.notMeasured.push_back({.step = said.step,
                                 .measure = measure->id,
                                 .moment = momentOf(*measure),
                                 .why = said.why,
                                 .atMs = event.wallMs,
                                 .by = event.by});
    if (StepRecord* record = recordToDo(state, said.step)) record->measured = Measured::CouldNot;
}

void forgetMeasures(State& state) {
    for (StepRecord* record : recordsToDo(state)) record->measured = Measured::No;
}

}  // namespace practice
