// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"
#include "practice/words.h"

/// What a teacher says during a visit. Each struct is at once the data of a Command and the data of
/// the entry it becomes; the visit, the person who saw it and the time are in the envelope.
/// Steps, phases, lapses, conditions and measures are named by their ids in the pack.
namespace practice {

struct OpenVisit {
    static constexpr const char* type = "visit-opened";
    base::LineId line;
    PackRef pack;
    Way way = Way::Guided;
    On on = On::Patient;
    base::LearnerId learner;                ///< who is taught; does the steps unless way is Show
    std::vector<base::LearnerId> watchers;  ///< others who are there to learn
    std::vector<std::string> identifiers;   ///< two of "name", "born", "number"
    bool checkedWithPatient = false;
    Kit kit;
    std::optional<Interpreter> interpreter;
    bool clockForLearner = false;  ///< in a return demonstration: the guide used at home has one
    std::optional<int> minutes;    ///< how long there is for it
    bool operator==(const OpenVisit&) const = default;
    template <class V>
    void fields(V& v) {
        v("line", line), v("pack", pack), v("way", way), v("on", on), v("learner", learner);
        v("watchers", watchers), v("identifiers", identifiers);
        v("checked_with_patient", checkedWithPatient), v("kit", kit);
        v("interpreter", interpreter), v("clock_for_learner", clockForLearner);
        v("minutes", minutes);
    }
};

/// Naming just the step it is about: the shape of several entries.
struct AboutStep {
    std::string step;
    bool operator==(const AboutStep&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step);
    }
};

/// Nothing to add to the envelope: the shape of several entries.
struct Bare {
    bool operator==(const Bare&) const = default;
    template <class V>
    void fields(V&) {}
};

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

struct Pause : Bare {
    static constexpr const char* type = "paused";
};
struct Resume : Bare {
    static constexpr const char* type = "resumed";
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

/// Something the pack does not list: what was touched is asked.
struct OtherLapse {
    std::string what;
    std::vector<std::string> touched;  ///< clean conditions that no longer hold
    bool operator==(const OtherLapse&) const = default;
    template <class V>
    void fields(V& v) {
        v("what", what), v("touched", touched);
    }
};

struct SeeLapse {
    static constexpr const char* type = "lapse-seen";
    std::vector<std::string> lapses;  ///< several seen at one moment are one
    std::optional<OtherLapse> other;
    std::optional<std::string> happened;  ///< noticed late: it happened after this step
    bool alone = false;                   ///< no helper is there for the way back
    bool operator==(const SeeLapse&) const = default;
    template <class V>
    void fields(V& v) {
        v("lapses", lapses), v("other", other), v("happened", happened), v("alone", alone);
    }
};

/// The learner noticed the lapse and puts it right without being told.
struct CatchAlone : Bare {
    static constexpr const char* type = "caught-alone";
};
/// The way back was shown or said to the learner: a cue.
struct ShowWayBack : Bare {
    static constexpr const char* type = "way-back-shown";
};

/// Takes back one earlier mark of this visit: it stays in the ledger and is shown struck through.
struct TakeBack {
    static constexpr const char* type = "taken-back";
    base::CommandId entry;
    bool operator==(const TakeBack&) const = default;
    template <class V>
    void fields(V& v) {
        v("entry", entry);
    }
};

struct TakeOver {
    static constexpr const char* type = "teacher-took-over";
    std::string why;
    bool operator==(const TakeOver&) const = default;
    template <class V>
    void fields(V& v) {
        v("why", why);
    }
};

struct HandOver {
    static constexpr const char* type = "handed-over";
    base::StaffId to;
    bool operator==(const HandOver&) const = default;
    template <class V>
    void fields(V& v) {
        v("to", to);
    }
};

struct WriteNote {
    static constexpr const char* type = "noted";
    std::optional<std::string> step;
    std::string text;
    bool operator==(const WriteNote&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step), v("text", text);
    }
};

/// A measure of the pack, as found or as left. Whole millimetres; marks are one way to measure.
struct TakeMeasure {
    static constexpr const char* type = "measured";
    std::string measure;
    Moment moment = Moment::Found;
    std::optional<int> mm;
    std::optional<int> marks;
    bool operator==(const TakeMeasure&) const = default;
    template <class V>
    void fields(V& v) {
        v("measure", measure), v("moment", moment), v("mm", mm), v("marks", marks);
    }
};

/// The dressing change itself, done on the patient.
struct RecordChange {
    static constexpr const char* type = "dressing-changed";
    std::string dressing;            ///< id in the pack's schedule
    std::optional<std::string> due;  ///< YYYY-MM-DD; the desk fills it in from the schedule
    std::string initials;
    std::string site;       ///< what the site looked like
    std::string tolerance;  ///< how the patient bore it
    bool operator==(const RecordChange&) const = default;
    template <class V>
    void fields(V& v) {
        v("dressing", dressing), v("due", due), v("initials", initials), v("site", site);
        v("tolerance", tolerance);
    }
};

/// The visit ends before its time; what was recorded stays.
struct StopVisit {
    static constexpr const char* type = "visit-stopped";
    StopReason why = StopReason::Other;
    std::string note;
    bool siteCovered = false;
    bool lineHeld = false;
    bool operator==(const StopVisit&) const = default;
    template <class V>
    void fields(V& v) {
        v("why", why), v("note", note), v("site_covered", siteCovered), v("line_held", lineHeld);
    }
};

struct CloseVisit : Bare {
    static constexpr const char* type = "visit-closed";
};

/// The visit was left, or the program ended, and it goes on now. Whether asepsis is lost is
/// decided by the pack's `away`.
struct ComeBack {
    static constexpr const char* type = "came-back";
    BackBy by = BackBy::Restart;
    std::optional<std::int64_t> awayMs;  ///< filled in by the desk when the clocks can tell
    bool operator==(const ComeBack&) const = default;
    template <class V>
    void fields(V& v) {
        v("by", by), v("away_ms", awayMs);
    }
};

}  // namespace practice
