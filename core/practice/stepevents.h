// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "practice/eventshapes.h"

/// What is said about the step in hand and its timed phases.
namespace practice {

struct BeginPhase {
    static constexpr const char* type = "phase-begun";
    std::string step, phase;
    bool operator==(const BeginPhase&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step), v("phase", phase);
    }
};

/// The desk fills in what was measured and asked; a caller leaves them out.
struct EndPhase {
    static constexpr const char* type = "phase-ended";
    std::string step, phase;
    std::optional<std::int64_t> measuredMs, minMs, targetMs;
    std::optional<bool> stoppedShort;
    bool operator==(const EndPhase&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step), v("phase", phase), v("measured_ms", measuredMs), v("min_ms", minMs);
        v("target_ms", targetMs), v("stopped_short", stoppedShort);
    }
};

struct GiveCue : AboutStep {
    static constexpr const char* type = "cue-given";
};
struct HandsOn : AboutStep {
    static constexpr const char* type = "hands-on";
};
/// A step, or an operator of the way back, was seen done.
struct SeeStep : AboutStep {
    static constexpr const char* type = "step-seen";
};
/// It was done, but the teacher did not see it.
struct OverlookStep : AboutStep {
    static constexpr const char* type = "step-not-seen";
};
struct SkipStep : AboutStep {
    static constexpr const char* type = "step-does-not-apply";
};

struct SeeRest {
    static constexpr const char* type = "rest-seen";
    std::vector<std::string> steps;  ///< neither critical nor timed, all of one competency
    bool operator==(const SeeRest&) const = default;
    template <class V>
    void fields(V& v) {
        v("steps", steps);
    }
};

/// The learner left the step out.
struct MissStep {
    static constexpr const char* type = "step-not-done";
    std::string step;
    bool alone = false;  ///< no helper is there for the way back
    bool operator==(const MissStep&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step), v("alone", alone);
    }
};

}  // namespace practice
