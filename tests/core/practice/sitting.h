// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "practice/measures.h"
#include "practice/practice.h"
#include "procedure/taught.h"
#include "support/paths.h"

namespace sitting {

/// One visit in memory, on a clock that is moved by hand: the state machine and nothing around it.
class Sitting {
  public:
    explicit Sitting(const std::string& pack, practice::On where = practice::On::Patient,
                     practice::Way how = practice::Way::ReturnDemonstration)
        : taught(*procedure::readTaught(bytesOf(pack)).value()), on(where), way(how) {}

    void open() {
        practice::OpenVisit said;
        said.way = way;
        said.on = on;
        opened = said;
        put(said);
    }
    /// Why it may not be said; when it may, it is.
    std::optional<base::Code> say(practice::Said said) {
        said = practice::completed(state, std::move(said), now);
        const auto may = practice::mayBeSaid(taught, opened, state, said);
        if (!may) return may.error().code;
        put(std::move(said));
        return std::nullopt;
    }
    /// Says it and expects that it may be said; its id.
    base::CommandId must(practice::Said said) {
        const auto refused = say(std::move(said));
        EXPECT_FALSE(refused.has_value()) << base::slug(refused.value_or(base::Code::Internal));
        return events.back().id;
    }
    void pass(std::int64_t ms) { now.wallMs += ms, now.bootMs += ms, now.monoMs += ms; }

    std::string hand() const { return practice::recordInHand(state)->step; }
    const practice::StepRecord& record(const std::string& step) const {
        return *std::ranges::find(state.steps, step, &practice::StepRecord::step);
    }
    practice::Help help(const std::string& step) const {
        return practice::helpOf(record(step), state);
    }
    bool holds(const std::string& condition) const {
        const auto& ids = taught.model.conditionIds;
        return state.holds.has(static_cast<int>(std::ranges::find(ids, condition) - ids.begin()));
    }
    void begin() {
        must(practice::BeginPhase{.step = hand(),
                                  .phase = practice::phaseToDo(taught.pack, state)->id});
    }
    void end() {
        must(practice::EndPhase{.step = hand(), .phase = practice::runningPhase(state)->phase});
    }
    void doPhases() {
        while (const packs::Phase* phase = practice::phaseToDo(taught.pack, state)) {
            begin();
            pass(std::int64_t{phase->targetSeconds} * 1000);
            end();
            if (testing::Test::HasFailure()) return;
        }
    }
    /// On the patient a step that has a measure passes with its figure.
    void measure() {
        const packs::Step& step = *packs::findStep(taught.pack, hand()).step;
        if (!practice::owesMeasure(taught.pack, state, step.id)) return;
        must(practice::TakeMeasure{.measure = step.measure->id,
                                   .moment = step.measure->when == packs::Taken::Left
                                                 ? practice::Moment::Left
                                                 : practice::Moment::Found,
                                   .mm = 40,
                                   .step = step.id});
    }
    void doStep() {
        doPhases();
        pass(5000);
        measure();
        must(practice::SeeStep{{.step = hand()}});
    }
    void goTo(const std::string& step) {
        while (practice::inHand(state) && hand() != step && !testing::Test::HasFailure()) doStep();
    }
    void goBack() {
        while (state.wayBack && !testing::Test::HasFailure()) doStep();
    }
    static practice::SeeLapse lapse(const std::vector<std::string>& ids) {
        practice::SeeLapse said;
        said.lapses = ids;
        return said;
    }

    procedure::Taught taught;
    practice::On on;
    practice::Way way;
    practice::OpenVisit opened;
    practice::State state;
    std::vector<practice::Event> events;
    base::StaffId teacher = base::StaffId::random();
    base::Instant now{.wallMs = 1'764'000'000'000, .bootMs = 1000, .bootId = "first", .zone = ""};

  private:
    static std::string bytesOf(const std::string& pack) {
        std::ifstream file(support::sourceDir() + "/shared/packs/" + pack + ".json");
        std::ostringstream bytes;
        bytes << file.rdbuf();
        return bytes.str();
    }
    void put(practice::Said said) {
        const practice::Event event{.id = base::CommandId::random(),
                                    .by = teacher,
                                    .wallMs = now.wallMs,
                                    .bootMs = now.bootMs,
                                    .bootId = now.bootId,
                                    .said = std::move(said)};
        state = practice::advance(taught, std::move(state), events, event);
        events.push_back(event);
    }
};

}  // namespace sitting
