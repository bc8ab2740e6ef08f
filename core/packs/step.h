// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "packs/stepmeasure.h"
#include "packs/text.h"

namespace packs {

/// Which band of the picture of asepsis a condition is drawn in.
enum class Lane { Hands, Face, Field, Site, Skin, Line, Cover, Record };
enum class PhaseKind { Wash, Rub, Scrub, Wait };
enum class Motion { Across, Along, Circles, Peel, Press };
/// Who may do a step.
enum class By { Learner, Helper, Either };
enum class Severity { Critical, Minor };
/// What a lapse asks for; in rising gravity.
enum class Action { Recover, FinishAndCall, StopAndCall };

struct Condition {
    std::string id;
    Text label;
    Lane lane = Lane::Record;
    bool clean = false;  ///< a touch can spoil it

    bool operator==(const Condition&) const = default;
};

/// What a lane is said to be: protected, or standing open.
enum class Shows { Safe, Open };

/// What a lane shows while all of `whileAll` hold, which are conditions of that lane. The first
/// rule of a lane that fits decides; a lane without rules is never shown as safe.
struct LaneRule {
    Lane lane = Lane::Record;
    Shows shows = Shows::Open;
    std::vector<std::string> whileAll;  ///< "while", at least one

    bool operator==(const LaneRule&) const = default;
};

/// While all of `whileAll` hold, all of `holds` must.
struct Guard {
    std::string id;
    std::vector<std::string> whileAll;  ///< "while"
    std::vector<std::string> holds;
    Text why;

    bool operator==(const Guard&) const = default;
};

struct Phase {
    std::string id;
    Text label;
    PhaseKind kind = PhaseKind::Wait;
    int minSeconds = 1;
    int targetSeconds = 1;
    std::optional<int> maxSeconds;
    std::optional<Motion> motion;
    std::optional<Text> until;  ///< it ends when the observer says that this is so
    std::optional<std::string> source;

    bool operator==(const Phase&) const = default;
};

struct Picture {
    std::string focus;
    std::optional<Motion> motion;

    bool operator==(const Picture&) const = default;
};

struct Use {
    std::string supply;
    int count = 1;  ///< "n", opened new each time the step is done

    bool operator==(const Use&) const = default;
};

/// A step of a competency, or a recovery: an operator that is used only to get back from a lapse.
struct Step {
    std::string id;
    Text doText;  ///< "do"
    Text why;
    Text observe;
    std::optional<Picture> picture;
    std::optional<std::string> source;
    std::vector<std::string> needs, forbids, gives, ends;
    int handsOnSeconds = 1;  ///< usual seconds of handling, 1 or more
    std::vector<Phase> phases;
    bool continuous = false;  ///< a pause voids the phase in hand
    bool critical = false;    ///< decides readiness
    bool repeatable = false;  ///< may be done again to recover
    int strain = 0;           ///< 0..9, what it costs skin, line or patient beyond time
    By by = By::Either;
    std::vector<Use> uses;
    std::optional<StepMeasure> measure;
    std::optional<Text> skip;  ///< when it may be marked "does not apply"
    std::vector<std::string> lapses;

    bool operator==(const Step&) const = default;
};

struct Competency {
    std::string id;
    Text title;
    Text why;
    bool critical = false;
    std::vector<Step> steps;

    bool operator==(const Competency&) const = default;
};

struct Lapse {
    std::string id;
    Text label;
    std::vector<std::string> breaks, sets;
    /// "found_at": steps at which it is what the patient came with, and nobody's lapse.
    std::vector<std::string> foundAt;
    Severity severity = Severity::Critical;
    Action action = Action::Recover;
    Text say;
    std::optional<std::string> card;  ///< id of a drill
    std::optional<std::string> source;

    bool operator==(const Lapse&) const = default;
};

/// A visit left longer than this while a clean condition holds takes this lapse.
struct Away {
    int afterSeconds = 0;
    std::string lapse;

    bool operator==(const Away&) const = default;
};

}  // namespace packs
