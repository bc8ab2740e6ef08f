// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "practice/words.h"

/// What was found, measured and done on the patient.
namespace practice {

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
    static constexpr int version = 2;  ///< 1 named no step
    std::string measure;
    Moment moment = Moment::Found;
    std::optional<int> mm;
    std::optional<int> marks;
    std::optional<std::string> step;  ///< whose point it is; none: whatever was in hand
    bool operator==(const TakeMeasure&) const = default;
    template <class V>
    void fields(V& v) {
        v("measure", measure), v("moment", moment), v("mm", mm), v("marks", marks);
        v("step", step);
    }
};

/// The measure of a step could not be taken on the patient, and why.
struct MissMeasure {
    static constexpr const char* type = "measure-not-taken";
    std::string step, why;
    bool operator==(const MissMeasure&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step), v("why", why);
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

}  // namespace practice
