// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/fields.h"
#include "practice/events.h"
#include "practice/state.h"
#include "render/lanes.h"
#include "render/papers/papercourse.h"
#include "render/papers/stamp.h"

/// One visit as papers show it: ids are words, people are names. Times in milliseconds.
namespace render {

struct PaperPhase {
    std::string id, label;
    std::int64_t minMs = 0, targetMs = 0, measuredMs = 0, begunMs = 0;
    practice::PhaseEnd end = practice::PhaseEnd::Done;
    template <class V>
    void fields(V& v) {
        v("id", id), v("label", label), v("min_ms", minMs), v("target_ms", targetMs);
        v("measured_ms", measuredMs), v("begun_ms", begunMs), v("end", end);
    }
};

struct PaperStep {
    int number = 0;  ///< 0 for an operator of a way back
    std::string id, text;
    practice::Help help = practice::Help::NothingRecorded;
    int cues = 0;
    bool byTeacher = false;
    bool byJudgement = false;  ///< by the teacher's judgement: the plan did not cover it
    std::string seenBy;
    std::vector<std::string> lapses;  ///< letters
    bool isLapsed = false;            ///< one of them is the learner's
    std::vector<PaperPhase> phases;
    template <class V>
    void fields(V& v) {
        v("number", number), v("id", id), v("text", text), v("help", help), v("cues", cues);
        v("by_teacher", byTeacher), v("by_judgement", byJudgement), v("seen_by", seenBy);
        v("lapses", lapses), v("lapsed", isLapsed), v("phases", phases);
    }
};

struct PaperLapse {
    std::string letter;
    std::vector<std::string> what;  ///< sentences of the pack, or what was seen
    bool isLeftOut = false;         ///< `what` names the step that was left out
    bool isCritical = false;
    std::vector<std::string> touched;
    std::string step, happenedAfter;
    packs::Action action = packs::Action::Recover;
    practice::Caught caught = practice::Caught::No;
    bool withdrawn = false, solved = false, byAbsence = false;
    bool found = false;  ///< on the patient, before the learner did anything
    std::vector<std::string> wayBack;
    /// Due by the pack after what was seen on the patient; whether it was made, nobody recorded.
    std::optional<packs::Call> call;
    std::string seenBy;
    std::int64_t atMs = 0;
    bool isLearners() const { return !withdrawn && !byAbsence && !found; }
    template <class V>
    void fields(V& v) {
        v("letter", letter), v("what", what), v("left_out", isLeftOut);
        v("critical", isCritical), v("touched", touched), v("step", step);
        v("happened_after", happenedAfter), v("action", action), v("caught", caught);
        v("withdrawn", withdrawn), v("solved", solved), v("by_absence", byAbsence);
        v("found", found);
        v("way_back", wayBack), v("call", call);
        v("seen_by", seenBy), v("at_ms", atMs);
    }
};

struct PaperReading {
    std::string label;
    practice::Moment moment = practice::Moment::Found;
    std::optional<int> mm, marks, baselineMm, baselineMarks;  ///< baseline: at insertion
    std::optional<int> changeMm;                              ///< since then; more is positive
    std::optional<int> callAtMm;                              ///< where the limit is reached
    bool isOfLine = false;                                    ///< a length of the line itself
    std::string by;
    std::int64_t atMs = 0;
    template <class V>
    void fields(V& v) {
        v("label", label), v("moment", moment), v("mm", mm), v("marks", marks);
        v("baseline_mm", baselineMm), v("baseline_marks", baselineMarks);
        v("change_mm", changeMm), v("call_at_mm", callAtMm), v("is_of_line", isOfLine);
        v("by", by), v("at_ms", atMs);
    }
};

struct PaperNote {
    std::string step, text, by;
    std::int64_t atMs = 0;
    template <class V>
    void fields(V& v) {
        v("step", step), v("text", text), v("by", by), v("at_ms", atMs);
    }
};

/// So many conditions held from this moment on.
struct PaperChange {
    std::int64_t atMs = 0;
    std::vector<std::string> holds;
    template <class V>
    void fields(V& v) {
        v("at_ms", atMs), v("holds", holds);
    }
};

struct PaperVisit {
    Stamp opened;
    std::int64_t endedMs = 0;
    practice::Ending ending = practice::Ending::Open;
    practice::OpenVisit said;
    bool isSigned = false;   ///< a return demonstration that counts and that a signature is for
    bool packAtHand = true;  ///< else nothing but the opening can be shown
    std::vector<std::string> teachers, watchers;
    std::vector<PaperTurn> turns;
    bool takenOver = false, suspendNoticed = false;
    std::vector<PaperStep> steps, waysBack;
    std::vector<PaperChange> trail;
    LanesData lanes;  ///< drawn from the trail and the steps, so it is not said twice in fields()
    std::vector<PaperLapse> lapses;
    std::vector<PaperReading> readings;
    std::vector<PaperMissing> missing;
    std::vector<PaperNote> notes;
    std::optional<practice::RecordChange> change;
    std::string dressing;  ///< the change's dressing in words
    std::optional<Stamp> changed;
    std::optional<practice::StopVisit> stopped;
    template <class V>
    void fields(V& v) {
        v("opened", opened), v("ended_ms", endedMs), v("ending", ending), v("said", said);
        v("signed", isSigned), v("pack_at_hand", packAtHand), v("teachers", teachers),
            v("watchers", watchers);
        v("turns", turns), v("taken_over", takenOver), v("suspend_noticed", suspendNoticed),
            v("steps", steps);
        v("ways_back", waysBack), v("trail", trail), v("lapses", lapses);
        v("readings", readings), v("missing", missing);
        v("notes", notes), v("change", change), v("dressing", dressing), v("changed", changed);
        v("stopped", stopped);
    }
};

}  // namespace render
