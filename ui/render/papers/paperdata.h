// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "desk/recordview.h"
#include "procedure/shelf.h"
#include "readiness/readiness.h"
#include "record/record.h"
#include "render/lanes.h"
#include "render/papers/papermarked.h"
#include "render/papers/paperparts.h"
#include "render/papers/papersigned.h"
#include "render/papers/papersteps.h"

/// What a paper shows, gathered from the record, as plain values.
namespace render {

/// One more whenever PaperData has other fields, or the same record makes other data: verify then
/// says of older papers that they are of another form, and not that they are wrong. The words of
/// the sentences are not part of it.
constexpr int paperForm = 3;

struct PaperData {
    std::string kind;  ///< "chart" …, as entries spell it
    bool isDemonstration = true, isSimulatedClock = false;
    std::int64_t printedMs = 0;
    int offsetMinutes = 0;
    std::string language;   ///< BCP 47, of the words of the pack
    std::string sentences;  ///< BCP 47, asked for its sentences and dates
    std::string version;    ///< of the program
    std::uint64_t ledgerSize = 0;
    std::string ledgerRoot;

    record::AddPatient patient;
    std::optional<PaperAllergies> allergies;
    std::optional<record::AddLine> line;
    std::vector<PaperLineWas> lineWas;       ///< the oldest first
    std::optional<std::string> lineRemoved;  ///< YYYY-MM-DD
    record::AddLearner learner;
    std::optional<record::AskConsent> consent;
    std::optional<Stamp> consented;
    std::optional<record::AskNeeds> needs;
    std::optional<record::SetUnit> unit;
    PaperPack pack;
    std::vector<PaperVisit> visits;
    std::vector<PaperQuestion> questions;
    std::vector<PaperDrill> drills;
    PaperReadiness readiness;
    std::vector<PaperSignature> signatures;
    std::optional<record::DecideHelp> help;
    std::optional<Stamp> helpDecided;
    std::optional<std::string> dressingDue;  ///< YYYY-MM-DD, whoever changed it last
    std::optional<PaperChanged> lastChanged;
    std::vector<PaperRemark> addenda, lateEntries;
    std::vector<PaperMarked> wrongChart;
    std::vector<std::string> unknown;
    std::optional<PaperSteps> steps;  ///< only of the paper that shows them
    /// The ledger with the paper's own entry in it; none: it was not issued. What that entry has
    /// the digest of is all but this.
    std::optional<ledger::Head> issuedAs;

    template <class V>
    void fields(V& v) {
        v("kind", kind), v("demonstration", isDemonstration);
        v("simulated_clock", isSimulatedClock), v("printed_ms", printedMs);
        v("offset", offsetMinutes), v("language", language), v("sentences", sentences);
        v("version", version), v("ledger_size", ledgerSize);
        v("ledger_root", ledgerRoot), v("patient", patient), v("allergies", allergies);
        v("line", line), v("line_was", lineWas), v("line_removed", lineRemoved);
        v("learner", learner), v("consent", consent);
        v("consented", consented), v("needs", needs), v("unit", unit), v("pack", pack);
        v("visits", visits), v("questions", questions), v("drills", drills);
        v("readiness", readiness), v("signatures", signatures), v("help", help);
        v("help_decided", helpDecided), v("dressing_due", dressingDue);
        v("last_changed", lastChanged);
        v("addenda", addenda), v("late", lateEntries);
        v("wrong_chart", wrongChart);
        v("unknown", unknown), v("steps", steps);
    }
};

/// Where and when a paper is made.
struct PaperContext {
    desk::Ward ward = desk::Ward::Demonstration;
    bool isSimulatedClock = false;
    ledger::Head head;
    base::Instant now;
    std::string language = "en";   ///< the hospital's, for the words of the pack
    std::string sentences = "en";  ///< the reader's, for sentences and dates
    std::string version;           ///< of the program
    /// A drawn signature by its digest; "" where it is not at hand.
    std::function<std::string(const std::string& digest)> drawing = {};
};

/// Nothing when the record has no such learner.
std::optional<PaperData> gather(record::PaperKind kind, const record::Record& record,
                                const base::LearnerId& learner, const procedure::Taught& taught,
                                const readiness::Readiness& readiness, const record::House& house,
                                const PaperContext& context);

/// The data in the canonical JSON of RFC 8785, and its SHA-256 in hex: what `paper-issued` names.
std::string canonicalJson(const PaperData& data);
std::string digestOf(const PaperData& data);

}  // namespace render
