// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"

/// What the learner said and did when asked: open questions and drills.
namespace record {

enum class DrillResult { Unprompted, Cued, NotYet };

/// One round of one open question: what was heard in the learner's own words.
struct AskBack {
    static constexpr const char* type = "asked-back";
    base::LearnerId learner;
    std::string pack;  ///< digest
    std::string prompt;
    std::vector<std::string> heard;  ///< ids of the points
    std::string words;               ///< the learner's own words, when written down
    std::string saidDifferently;     ///< how it was taught again before this round
    bool operator==(const AskBack&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("pack", pack), v("prompt", prompt), v("heard", heard);
        v("words", words), v("said_differently", saidDifferently);
    }
};

/// After the pack's number of rounds: another plan for this question.
struct MakePlan {
    static constexpr const char* type = "plan-made";
    base::LearnerId learner;
    std::string pack, prompt, plan;
    bool operator==(const MakePlan&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("pack", pack), v("prompt", prompt), v("plan", plan);
    }
};

struct DoDrill {
    static constexpr const char* type = "drill-done";
    base::LearnerId learner;
    std::string pack, drill;
    DrillResult result = DrillResult::NotYet;
    bool operator==(const DoDrill&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("pack", pack), v("drill", drill), v("result", result);
    }
};

}  // namespace record

namespace base {

template <>
struct Names<record::DrillResult> {
    static constexpr std::array<std::pair<record::DrillResult, const char*>, 3> all{{
        {record::DrillResult::Unprompted, "unprompted"},
        {record::DrillResult::Cued, "cued"},
        {record::DrillResult::NotYet, "not-yet"},
    }};
};

}  // namespace base
