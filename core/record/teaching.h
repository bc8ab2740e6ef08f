// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"
#include "practice/words.h"

/// Teach-back, sign-off, decisions, papers and corrections. Each struct is at once the data of a
/// Command and of the entry it becomes.
namespace record {

enum class DrillResult { Unprompted, Cued, NotYet };
enum class AcknowledgedBy { Signed, Voice, Declined, NotPermitted, NotAble };
enum class PaperKind { Chart, Certificate, GoingHomeWithHelp, ChartNote };

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

/// The learner's side of a sign-off.
struct Acknowledgement {
    AcknowledgedBy how = AcknowledgedBy::Signed;
    std::string note;                    ///< why, when declined, not permitted or not able
    std::optional<std::string> drawing;  ///< digest of the drawn signature's blob
    bool operator==(const Acknowledgement&) const = default;
    template <class V>
    void fields(V& v) {
        v("how", how), v("note", note), v("drawing", drawing);
    }
};

/// One signing act for the competencies that are met, on the ground of the body's `basis`.
struct SignOff {
    static constexpr const char* type = "signed-off";
    base::LearnerId learner;
    practice::PackRef pack;
    std::vector<std::string> competencies;
    std::string statement;  ///< the very words that were signed
    Acknowledgement acknowledgement;
    bool operator==(const SignOff&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("pack", pack), v("competencies", competencies);
        v("statement", statement), v("acknowledgement", acknowledgement);
    }
};

/// The learner goes home while the rules say not yet: who does what until then.
struct DecideHelp {
    static constexpr const char* type = "help-decided";
    base::LearnerId learner;
    std::string why, decidedBy, told, nextChangeBy, nextChangeOn, call;
    bool operator==(const DecideHelp&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("why", why), v("decided_by", decidedBy), v("told", told);
        v("next_change_by", nextChangeBy), v("next_change_on", nextChangeOn), v("call", call);
    }
};

struct IssuePaper {
    static constexpr const char* type = "paper-issued";
    base::LearnerId learner;
    PaperKind kind = PaperKind::Chart;
    std::string digest;  ///< SHA-256 of the data the paper shows, hex
    bool operator==(const IssuePaper&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("kind", kind), v("digest", digest);
    }
};

/// Something to add to an earlier entry, which stays as it is.
struct AddAddendum {
    static constexpr const char* type = "addendum-added";
    base::CommandId to;
    std::string text;
    bool operator==(const AddAddendum&) const = default;
    template <class V>
    void fields(V& v) {
        v("to", to), v("text", text);
    }
};

/// Written later than it happened: the body's `at` is when it happened, the envelope's wall when
/// it was written.
struct AddLateEntry {
    static constexpr const char* type = "late-entry-added";
    std::optional<base::LearnerId> learner;
    std::string text, reason;
    bool operator==(const AddLateEntry&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("text", text), v("reason", reason);
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
template <>
struct Names<record::AcknowledgedBy> {
    static constexpr std::array<std::pair<record::AcknowledgedBy, const char*>, 5> all{{
        {record::AcknowledgedBy::Signed, "signed"},
        {record::AcknowledgedBy::Voice, "voice"},
        {record::AcknowledgedBy::Declined, "declined"},
        {record::AcknowledgedBy::NotPermitted, "not-permitted"},
        {record::AcknowledgedBy::NotAble, "not-able"},
    }};
};
template <>
struct Names<record::PaperKind> {
    static constexpr std::array<std::pair<record::PaperKind, const char*>, 4> all{{
        {record::PaperKind::Chart, "chart"},
        {record::PaperKind::Certificate, "certificate"},
        {record::PaperKind::GoingHomeWithHelp, "going-home-with-help"},
        {record::PaperKind::ChartNote, "chart-note"},
    }};
};

}  // namespace base
