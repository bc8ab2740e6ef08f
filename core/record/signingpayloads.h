// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/fields.h"
#include "base/id.h"
#include "practice/words.h"

/// Sign-off, going home with help, and the papers that were given out.
namespace record {

enum class AcknowledgedBy { Signed, Voice, Declined, NotPermitted, NotAble };
enum class PaperKind { Chart, Certificate, GoingHomeWithHelp, ChartNote, Steps };

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

/// Who interpreted between teacher and learner in what a sign-off rests on.
struct InterpretedBy {
    practice::Interpreter who;
    std::string purpose;  ///< an OID, see seal::codeOf()
    bool operator==(const InterpretedBy&) const = default;
    template <class V>
    void fields(V& v) {
        v("who", who), v("purpose", purpose);
    }
};

/// One signing act for the competencies that are met, on the ground of the body's `basis`: of every
/// entry before it.
struct SignOff {
    static constexpr const char* type = "signed-off";
    static constexpr int version = 2;  ///< 1 had the first five alone
    static constexpr int firstWithRoot = 2;
    base::LearnerId learner;
    practice::PackRef pack;
    std::vector<std::string> competencies;
    std::string statement;  ///< the very words that were signed
    Acknowledgement acknowledgement;
    /// What the learner's side is, an OID; "" when they did not sign, or nobody said.
    std::string learnerPurpose = {};
    std::vector<InterpretedBy> interpreters = {};
    /// The root over the entries it rests on, 64 hex digits: none of them can be another one
    /// afterwards. "" says nothing of it.
    std::string root = {};
    bool operator==(const SignOff&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("pack", pack), v("competencies", competencies);
        v("statement", statement), v("acknowledgement", acknowledgement);
        v("learner_purpose", learnerPurpose), v("interpreters", interpreters), v("root", root);
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

/// What a paper was made of. With it and the record everybody with a key can gather the data it
/// shows once more, and hold the digest against it.
struct PaperGround {
    int form = 0;                   ///< of the data and of the rules that it is gathered by
    std::uint64_t size = 0;         ///< of the ledger then: its entries before this one
    practice::PackRef pack;         ///< that the paper is about
    std::int64_t printedMs = 0;     ///< what the paper calls now
    int offsetMinutes = 0;          ///< local time minus UTC then
    std::string language;           ///< BCP 47, of the words of the pack
    std::string sentences;          ///< BCP 47, asked for its sentences and dates
    std::string version;            ///< of the program
    bool isDemonstration = false;   ///< invented people
    bool isSimulatedClock = false;  ///< the times are made up
    int unknown = 0;                ///< entries of the record that the program could not read
    bool operator==(const PaperGround&) const = default;
    template <class V>
    void fields(V& v) {
        v("form", form), v("size", size), v("pack", pack), v("printed_ms", printedMs);
        v("offset", offsetMinutes), v("language", language), v("sentences", sentences);
        v("version", version), v("demonstration", isDemonstration);
        v("simulated_clock", isSimulatedClock), v("unknown", unknown);
    }
};

struct IssuePaper {
    static constexpr const char* type = "paper-issued";
    /// 1 knew no "steps"; 2 did not say what it was made of; 3 was not signed
    static constexpr int version = 4;
    static constexpr int firstSigned = 4;
    base::LearnerId learner;
    PaperKind kind = PaperKind::Chart;
    std::string digest;                 ///< SHA-256 of the data the paper shows, hex
    std::optional<PaperGround> ground;  ///< none in what is older than version 3
    bool operator==(const IssuePaper&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("kind", kind), v("digest", digest), v("ground", ground);
    }
};

}  // namespace record

namespace base {

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
    static constexpr std::array<std::pair<record::PaperKind, const char*>, 5> all{{
        {record::PaperKind::Chart, "chart"},
        {record::PaperKind::Certificate, "certificate"},
        {record::PaperKind::GoingHomeWithHelp, "going-home-with-help"},
        {record::PaperKind::ChartNote, "chart-note"},
        {record::PaperKind::Steps, "steps"},
    }};
};

}  // namespace base
