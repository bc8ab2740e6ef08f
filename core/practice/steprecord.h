// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"

namespace practice {

enum class PhaseEnd { Running, Done, StoppedShort, Voided };

/// One run of a timed phase. What was asked and what was measured are both kept.
struct PhaseRun {
    std::string phase;
    std::int64_t begunWallMs = 0;
    std::int64_t begunBootMs = 0;
    std::string bootId;
    std::int64_t pausedMs = 0;    ///< does not count
    std::int64_t measuredMs = 0;  ///< once it has ended; 0 where nobody can tell when
    std::int64_t minMs = 0, targetMs = 0;
    PhaseEnd end = PhaseEnd::Running;
    bool operator==(const PhaseRun&) const = default;
};

enum class Mark { None, Seen, NotDone, NotSeen, DoesNotApply };

/// How it went, in one word; silence is NothingRecorded, never "well done".
enum class Help {
    NothingRecorded,
    Unprompted,
    Cued,
    HandsOn,
    NotDone,
    NotSeen,
    DoesNotApply,
    ByTeacher,  ///< the teacher did it: shown, or taken over
};

/// Whether the measure that is the point of a step is known.
enum class Measured { No, Taken, CouldNot };

/// What was recorded for one step, or for one operator of a way back.
struct StepRecord {
    int op = 0;  ///< index into the model's operators
    std::string step;
    Mark mark = Mark::None;
    int cues = 0;
    bool handsOn = false;
    /// Marked by the teacher's judgement after a take-over: the plan did not cover it.
    bool byJudgement = false;
    bool byTeacher = false;  ///< done after the teacher took over, or shown by the teacher
    /// Of a way back that a lapse of the learner made necessary.
    bool afterLapse = false;
    Measured measured = Measured::No;  ///< of a step that has a measure, since it is to be done
    std::vector<PhaseRun> phases;
    std::vector<std::size_t> lapses;  ///< indices into State::lapses, withdrawn ones too
    std::optional<base::StaffId> seenBy;
    std::optional<base::CommandId> entry;  ///< the mark
    std::int64_t atMs = 0;                 ///< when it was marked
    bool operator==(const StepRecord&) const = default;
};

}  // namespace practice
