// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"

/// Those who learn, whether they may, and what they need.
namespace record {

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
