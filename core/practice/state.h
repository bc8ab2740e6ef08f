// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "practice/lapserecord.h"
#include "practice/steprecord.h"
#include "practice/words.h"
#include "procedure/model.h"

/// Where a visit stands. A plain value, folded from its events; times in milliseconds.
namespace practice {

struct DoneOperator {
    int op = 0;
    std::int64_t atMs = 0;
    base::CommandId entry;
    procedure::Conditions before, after;
    bool wayBack = false;
    bool changedNothing = false;  ///< left out or does not apply: it gave and ended nothing
    /// Somebody saw it as it was done. What is said of the step later leaves that as it was.
    bool wasSeen = false;
    bool operator==(const DoneOperator&) const = default;
};

/// The set of conditions changed at this moment; the lanes are drawn from these.
struct Change {
    enum class Cause { Start, Step, WayBack, Lapse };
    std::int64_t atMs = 0;
    procedure::Conditions holds;
    Cause cause = Cause::Start;
    std::size_t lapse = 0;  ///< for Cause::Lapse, index into State::lapses
    bool operator==(const Change&) const = default;
};

struct Reading {
    std::string measure;
    Moment moment = Moment::Found;
    std::optional<int> mm, marks;
    std::string step;  ///< whose point it was; empty: taken beside the steps
    std::int64_t atMs = 0;
    base::StaffId by;
    bool operator==(const Reading&) const = default;
};

/// A measure that could not be taken at a step, and why.
struct NotMeasured {
    std::string step, measure;
    Moment moment = Moment::Found;
    std::string why;
    std::int64_t atMs = 0;
    base::StaffId by;
    bool operator==(const NotMeasured&) const = default;
};

struct Note {
    std::string step, text;
    std::int64_t atMs = 0;
    base::StaffId by;
    bool operator==(const Note&) const = default;
};

enum class Ending { Open, Closed, Stopped };

struct State {
    procedure::Conditions holds;
    std::vector<int> remaining;        ///< steps still to be done, in order
    std::vector<StepRecord> steps;     ///< one for each step of the pack, in its order
    std::vector<StepRecord> waysBack;  ///< operators of ways back that were done, in their order
    std::vector<DoneOperator> done;
    std::vector<LapseRecord> lapses;
    std::optional<WayBack> wayBack;
    std::vector<Change> trail;
    std::vector<Reading> readings;
    std::vector<NotMeasured> notMeasured;
    std::vector<Note> notes;
    std::vector<base::StaffId> teachers;  ///< in the order they taught; the last one teaches now
    std::optional<std::int64_t> pausedWallMs, pausedBootMs;  ///< set while paused
    std::string pausedBootId;
    bool isOnPatient = false;
    bool takenOver = false;
    /// Taken over where no way back is known: what follows goes by the teacher's judgement.
    bool planLost = false;
    bool suspendNoticed = false;  ///< the visit was left for a while, or the machine slept
    Ending ending = Ending::Open;
    std::int64_t lastWallMs = 0, lastBootMs = 0;  ///< of the newest event
    std::string lastBootId;
    std::int64_t openedMs = 0, endedMs = 0;
    /// Marks that can still be taken back, oldest first.
    std::vector<base::CommandId> marks;
    /// Those of them that say a step or a phase was done: each rests on the one before, so that
    /// only the newest can be taken back.
    std::vector<base::CommandId> stepMarks;

    bool isPaused() const { return pausedWallMs.has_value(); }
    bool operator==(const State&) const = default;
};

/// The operator in hand: the next of the way back, else the next step; none when all is done, or
/// when there is no way back.
std::optional<int> inHand(const State& state);
/// Its record, where phases, cues and help go.
const StepRecord* recordInHand(const State& state);
StepRecord* recordInHand(State& state);
/// The phase that runs, if one does.
const PhaseRun* runningPhase(const State& state);
/// The first phase of the operator in hand that has not yet been done; none when all have.
const packs::Phase* phaseToDo(const packs::Pack& pack, const State& state);
/// How it went. A lapse that the learner did not catch alone makes a step Cued at best.
Help helpOf(const StepRecord& step, const State& state);
/// So long a running phase has run at `now`, pauses left out. Across a restart the wall clock
/// stands in for the boot clock.
std::int64_t runningMs(const PhaseRun& run, const State& state, std::int64_t wallMs,
                       std::int64_t bootMs, const std::string& bootId);

}  // namespace practice
