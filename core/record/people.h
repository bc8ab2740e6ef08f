// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"

/// Who there is: the staff, the patient, the line, the learners. Each struct is at once the data of
/// a Command and of the entry it becomes. Dates are YYYY-MM-DD.
namespace record {

enum class Role { Teacher, Educator, Auditor };
enum class Arm { Left, Right };

struct AddStaff {
    static constexpr const char* type = "staff-added";
    base::StaffId staff;
    std::string name, initials;
    Role role = Role::Teacher;
    bool operator==(const AddStaff&) const = default;
    template <class V>
    void fields(V& v) {
        v("staff", staff), v("name", name), v("initials", initials), v("role", role);
    }
};

/// The unit's own words on the papers: whom to call.
struct SetUnit {
    static constexpr const char* type = "unit-set";
    std::string name;
    std::string emergency;  ///< number for "call an ambulance"
    std::string teamNow;    ///< number that is answered day and night
    std::string teamToday;  ///< number for the same day
    std::string policy;     ///< name of the local policy that comes first
    bool operator==(const SetUnit&) const = default;
    template <class V>
    void fields(V& v) {
        v("name", name), v("emergency", emergency), v("team_now", teamNow);
        v("team_today", teamToday), v("policy", policy);
    }
};

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

struct AddLine {
    static constexpr const char* type = "line-added";
    base::LineId line;
    std::string kind;  ///< word of shared/codes
    Arm arm = Arm::Right;
    std::string inserted;
    int outsideMm = 0;           ///< outside length at insertion, millimetres
    std::optional<int> marks;    ///< marks in view at insertion
    std::optional<int> girthMm;  ///< arm girth at insertion, millimetres
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

struct AddLearner {
    static constexpr const char* type = "learner-added";
    base::LearnerId learner;
    bool isPatient = false;  ///< the patient learns; name and language are then the patient's
    std::string name;
    std::string relationship;  ///< word of shared/codes
    std::string language;      ///< BCP 47: the language to teach in
    std::string phone;
    bool operator==(const AddLearner&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("is_patient", isPatient), v("name", name);
        v("relationship", relationship), v("language", language), v("phone", phone);
    }
};

/// Whether this person may be taught, and told about the patient.
struct AskConsent {
    static constexpr const char* type = "consent-asked";
    base::LearnerId learner;
    bool toTeach = false, toTell = false;
    std::string givenBy;  ///< "patient" or who decides for the patient
    bool operator==(const AskConsent&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("to_teach", toTeach), v("to_tell", toTell), v("given_by", givenBy);
    }
};

struct Need {
    std::string need;  ///< word of shared/codes: sight, hands, reading, language, fear …
    std::string help;  ///< what is done about it
    bool operator==(const Need&) const = default;
    template <class V>
    void fields(V& v) {
        v("need", need), v("help", help);
    }
};

struct AskNeeds {
    static constexpr const char* type = "needs-asked";
    base::LearnerId learner;
    std::vector<Need> needs;  ///< empty: asked, none found
    std::string home;         ///< who else is at home
    bool interpreterNeeded = false;
    std::string fears;  ///< in the learner's own words
    bool operator==(const AskNeeds&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("needs", needs), v("home", home);
        v("interpreter_needed", interpreterNeeded), v("fears", fears);
    }
};

}  // namespace record

namespace base {

template <>
struct Names<record::Role> {
    static constexpr std::array<std::pair<record::Role, const char*>, 3> all{{
        {record::Role::Teacher, "teacher"},
        {record::Role::Educator, "educator"},
        {record::Role::Auditor, "auditor"},
    }};
};
template <>
struct Names<record::Arm> {
    static constexpr std::array<std::pair<record::Arm, const char*>, 2> all{{
        {record::Arm::Left, "left"},
        {record::Arm::Right, "right"},
    }};
};

}  // namespace base
