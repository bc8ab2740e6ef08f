// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What was recorded for a step, in one word, and what a clock says of a phase. Rules of our own, no
// source.
#include <gtest/gtest.h>

#include "core/practice/sitting.h"

namespace practice {
namespace {

struct HelpRow {
    const char* what;
    StepRecord step;
    Help help;
};

StepRecord recordWith(Mark mark, int cues = 0, bool handsOn = false, bool byTeacher = false) {
    StepRecord record;
    record.mark = mark;
    record.cues = cues;
    record.handsOn = handsOn;
    record.byTeacher = byTeacher;
    return record;
}

StepRecord timed(PhaseEnd end) {
    StepRecord record = recordWith(Mark::Seen);
    record.phases.push_back({.phase = "p", .bootId = "", .end = PhaseEnd::Done});
    record.phases.push_back({.phase = "p", .bootId = "", .end = end});
    return record;
}

StepRecord struckBy(std::vector<std::size_t> lapses) {
    StepRecord record = recordWith(Mark::Seen);
    record.lapses = std::move(lapses);
    return record;
}

TEST(HelpOf, IsOneWord) {
    State state;
    for (const Caught caught : {Caught::No, Caught::Alone, Caught::Shown}) {
        state.lapses.emplace_back();
        state.lapses.back().caught = caught;
    }
    state.lapses.emplace_back().withdrawn = true;
    state.lapses.emplace_back().byAbsence = true;
    const std::vector<HelpRow> rows{
        {"silence", recordWith(Mark::None), Help::NothingRecorded},
        {"silence, though a cue was given", recordWith(Mark::None, 1), Help::NothingRecorded},
        {"seen", recordWith(Mark::Seen), Help::Unprompted},
        {"one cue", recordWith(Mark::Seen, 1), Help::Cued},
        {"hands on", recordWith(Mark::Seen, 0, true), Help::HandsOn},
        {"hands on outweighs cues", recordWith(Mark::Seen, 3, true), Help::HandsOn},
        {"the teacher did it", recordWith(Mark::Seen, 3, true, true), Help::ByTeacher},
        {"left out", recordWith(Mark::NotDone, 2, true), Help::NotDone},
        {"not seen is never unprompted", recordWith(Mark::NotSeen), Help::NotSeen},
        {"does not apply", recordWith(Mark::DoesNotApply), Help::DoesNotApply},
        {"timed, done", timed(PhaseEnd::Done), Help::Unprompted},
        {"once stopped short", timed(PhaseEnd::StoppedShort), Help::Cued},
        {"once interrupted", timed(PhaseEnd::Voided), Help::Unprompted},
        {"a lapse", struckBy({0}), Help::Cued},
        {"caught alone", struckBy({1}), Help::Unprompted},
        {"shown the way back", struckBy({2}), Help::Cued},
        {"withdrawn", struckBy({3}), Help::Unprompted},
        {"the visit was left", struckBy({4}), Help::Unprompted},
        {"one of several", struckBy({1, 3, 0}), Help::Cued},
    };
    for (const HelpRow& row : rows) EXPECT_EQ(helpOf(row.step, state), row.help) << row.what;
}

struct ClockRow {
    const char* what;
    std::int64_t wallMs, bootMs;
    const char* bootId;
    std::int64_t ms;
};

PhaseRun runFrom(std::int64_t wallMs, std::int64_t bootMs) {
    PhaseRun run;
    run.begunWallMs = wallMs;
    run.begunBootMs = bootMs;
    run.bootId = "first";
    return run;
}

TEST(RunningMs, GoesByTheBootClockWhileTheMachineIsUp) {
    const PhaseRun run = runFrom(100'000, 1000);
    for (const ClockRow& row :
         {ClockRow{"just begun", 100'000, 1000, "first", 0},
          ClockRow{"half a minute", 130'000, 31'000, "first", 30'000},
          ClockRow{"the wall clock set back", 50'000, 31'000, "first", 30'000},
          ClockRow{"the wall clock set on", 9'000'000, 31'000, "first", 30'000},
          ClockRow{"after a restart", 145'000, 20, "second", 45'000},
          ClockRow{"restart and set back", 90'000, 20, "second", 0}})
        EXPECT_EQ(runningMs(run, State(), row.wallMs, row.bootMs, row.bootId), row.ms) << row.what;
}

TEST(RunningMs, LeavesPausesOut) {
    PhaseRun run = runFrom(100'000, 1000);
    run.pausedMs = 4000;
    EXPECT_EQ(runningMs(run, State(), 0, 31'000, "first"), 26'000);
    State paused;
    paused.pausedWallMs = 120'000;
    paused.pausedBootMs = 21'000;
    paused.pausedBootId = "first";
    EXPECT_EQ(runningMs(run, paused, 0, 31'000, "first"), 16'000);
    EXPECT_EQ(runningMs(run, paused, 0, 99'000, "first"), 16'000) << "it stands";
    EXPECT_EQ(runningMs(run, paused, 150'000, 20, "second"), 16'000) << "over a restart";
}

TEST(Completed, AnEndSaysWhatWasMeasuredAndWhatWasAsked) {
    for (const std::int64_t ms : {0, 19'999, 20'000, 20'001, 300'000}) {
        sitting::Sitting visit("clean-hands");
        visit.open();
        visit.goTo("soap-wash");
        visit.begin();
        visit.pass(ms);
        visit.end();
        const auto& said = std::get<EndPhase>(visit.events.back().said);
        EXPECT_EQ(said.measuredMs, ms);
        EXPECT_EQ(said.minMs, 20'000);
        EXPECT_EQ(said.targetMs, 30'000);
        EXPECT_EQ(said.stoppedShort, ms < 20'000);
        const PhaseRun& run = recordInHand(visit.state)->phases.back();
        EXPECT_EQ(run.end, ms < 20'000 ? PhaseEnd::StoppedShort : PhaseEnd::Done) << ms;
        EXPECT_EQ(run.measuredMs, ms);
    }
}

TEST(Completed, WhatTheClockCannotTellIsLeftOpen) {
    State state;
    state.lastBootMs = 1000, state.lastWallMs = 100'000, state.lastBootId = "first";
    const auto away = [&](std::int64_t wallMs, std::int64_t bootMs, const char* bootId) {
        const base::Instant now{.wallMs = wallMs, .bootMs = bootMs, .bootId = bootId, .zone = ""};
        return std::get<ComeBack>(completed(state, ComeBack{.awayMs = 7}, now)).awayMs;
    };
    EXPECT_EQ(away(5, 61'000, "first"), 60'000);
    EXPECT_EQ(away(160'000, 20, "second"), 60'000);
    EXPECT_EQ(away(90'000, 20, "second"), std::nullopt) << "set back over a restart";
}

}  // namespace
}  // namespace practice
