// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"
#include "practice/eventshapes.h"
#include "practice/words.h"

/// The frame of a visit: how it opens, rests, passes to another and ends.
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

struct Pause : Bare {
    static constexpr const char* type = "paused";
};
struct Resume : Bare {
    static constexpr const char* type = "resumed";
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

/// The visit ends before its time; what was recorded stays.
struct StopVisit {
    static constexpr const char* type = "visit-stopped";
    static constexpr int version = 2;
    StopReason why = StopReason::Other;
    std::string note;
    std::optional<bool> siteCovered;  ///< none: not asked, or not answered
    std::optional<bool> lineHeld;
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
