// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"

/// The patient, what the patient must avoid, and the line. Dates are YYYY-MM-DD.
namespace record {

enum class Arm { Left, Right };

struct Allergy {
    std::string allergen;  ///< word of shared/codes, or "other"
    std::string reaction;  ///< in the patient's own words
    bool operator==(const Allergy&) const = default;
    template <class V>
    void fields(V& v) {
        v("allergen", allergen), v("reaction", reaction);
    }
};

struct AddPatient {
    static constexpr const char* type = "patient-added";
    std::string name;  ///< as it is written; never split
    std::string born;
    std::string number;    ///< record number: the second identifier
    std::string language;  ///< BCP 47
    bool operator==(const AddPatient&) const = default;
    template <class V>
    void fields(V& v) {
        v("name", name), v("born", born), v("number", number), v("language", language);
    }
};

/// Asked before supplies are chosen; an empty list means "asked, none known".
struct AskAllergies {
    static constexpr const char* type = "allergies-asked";
    std::vector<Allergy> allergies;
    bool operator==(const AskAllergies&) const = default;
    template <class V>
    void fields(V& v) {
        v("allergies", allergies);
    }
};

/// Whether a line of this kind has a part outside of the skin, whose length can be measured. All
/// of a port lies under it (common practice, no source).
inline bool hasLengthOutside(const std::string& kind) { return kind != "port"; }

struct AddLine {
    static constexpr const char* type = "line-added";
    static constexpr int version = 2;  ///< 1 had a length outside of every line
    base::LineId line;
    std::string kind;  ///< word of shared/codes
    Arm arm = Arm::Right;
    std::string inserted;
    std::optional<int> outsideMm;  ///< at insertion, millimetres, see hasLengthOutside()
    std::optional<int> marks;      ///< marks in view at insertion
    std::optional<int> girthMm;    ///< arm girth at insertion, millimetres
    std::optional<int> lumens;
    std::string dressing, securement, antiseptic;  ///< what lies on it now; words of shared/codes
    std::optional<std::string> lastChange;
    bool operator==(const AddLine&) const = default;
    template <class V>
    void fields(V& v) {
        v("line", line), v("kind", kind), v("arm", arm), v("inserted", inserted);
        v("outside_mm", outsideMm), v("marks", marks), v("girth_mm", girthMm), v("lumens", lumens);
        v("dressing", dressing), v("securement", securement), v("antiseptic", antiseptic);
        v("last_change", lastChange);
    }
};

/// A line was written down wrong: how it reads right, all of it. What was written before stays.
struct CorrectLine {
    static constexpr const char* type = "line-corrected";  ///< a new version with each of AddLine
    AddLine now;
    std::string why;
    bool operator==(const CorrectLine&) const = default;
    template <class V>
    void fields(V& v) {
        v("now", now), v("why", why);
    }
};

struct RemoveLine {
    static constexpr const char* type = "line-removed";
    base::LineId line;
    std::string on;   ///< the day it was taken out
    std::string why;  ///< may be empty
    bool operator==(const RemoveLine&) const = default;
    template <class V>
    void fields(V& v) {
        v("line", line), v("on", on), v("why", why);
    }
};

/// It was said of the wrong line that it was removed.
struct KeepLine {
    static constexpr const char* type = "line-kept";
    base::LineId line;
    std::string why;  ///< may be empty
    bool operator==(const KeepLine&) const = default;
    template <class V>
    void fields(V& v) {
        v("line", line), v("why", why);
    }
};

}  // namespace record

namespace base {

template <>
struct Names<record::Arm> {
    static constexpr std::array<std::pair<record::Arm, const char*>, 2> all{{
        {record::Arm::Left, "left"},
        {record::Arm::Right, "right"},
    }};
};

}  // namespace base
