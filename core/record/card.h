// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "ledger/ledger.h"
#include "record/record.h"

namespace record {

/// The version of everything derived: raised when cards or keys would come out differently.
constexpr int foldVersion = 4;

/// A dressing that was changed, on which line.
struct Changed {
    std::string on;              ///< YYYY-MM-DD
    std::string dressing, line;  ///< words of shared/codes
    bool operator==(const Changed&) const = default;
    template <class V>
    void fields(V& v) {
        v("on", on), v("dressing", dressing), v("line", line);
    }
};

/// When the dressing of one line is to be changed next.
struct LineDue {
    base::LineId line;
    std::string arm, kind;           ///< "" of a line the record does not have
    std::optional<std::string> due;  ///< YYYY-MM-DD
    /// The newest change, where no pack that was taught says how long that dressing may stay.
    std::optional<Changed> changed;
    bool operator==(const LineDue&) const = default;
    template <class V>
    void fields(V& v) {
        v("line", line), v("arm", arm), v("kind", kind), v("due", due), v("changed", changed);
    }
};

/// One learner in the list of learners.
struct Card {
    base::LearnerId learner;
    base::PatientId patient;
    std::string patientName, born, number;
    std::string learnerName, relationship;
    std::string arm;  ///< of the newest line in use; "" when there is none
    int visits = 0;
    int signedCompetencies = 0, competencies = 0;
    std::optional<std::string> packTitle;
    std::optional<std::string> due;        ///< the soonest of `lines` that is known, YYYY-MM-DD
    std::vector<LineDue> lines;            ///< those in use
    std::optional<std::string> lastVisit;  ///< YYYY-MM-DD, local where it happened
    bool visitOpen = false;
    bool operator==(const Card&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("patient", patient), v("patient_name", patientName);
        v("born", born), v("number", number), v("learner_name", learnerName);
        v("relationship", relationship), v("arm", arm), v("visits", visits);
        v("signed", signedCompetencies), v("competencies", competencies);
        v("pack_title", packTitle), v("due", due), v("lines", lines);
        v("last_visit", lastVisit), v("visit_open", visitOpen);
    }
};

/// When the next change of each line in use is due, the soonest first: as the card says, else by
/// the packs that can be taught now on such a line, of several the soonest. Kept in no row, since
/// packs change and rows must not. A line of which no day or no pack is known is left out.
std::vector<LineDue> duesOf(const Card& card, const procedure::Shelf& shelf);
/// The same of the patient of a record, whoever is taught.
std::vector<LineDue> duesOf(const Record& record, const procedure::Shelf& shelf);
/// The soonest of them.
std::optional<std::string> dueOf(const Record& record, const procedure::Shelf& shelf);
/// Of one line, as far as the record and one pack say; none once it was removed.
std::optional<std::string> dueOf(const Record& record, const Line& line, const packs::Pack& pack);
/// The rows derived from one record: a card for each learner, and whether a visit is open.
ledger::Derived derive(const Record& record);
/// Words of a name or number as they are searched for: accents, case and punctuation folded, by
/// ICU "Any-Latin; Latin-ASCII; Lower"; also the form with ue for ü and its like, and for what was
/// written with ue the one without. What is invisible (control and direction characters, joiners)
/// is left out.
std::vector<std::string> searchKeys(const std::string& text);
/// What a person typed, as words to look for.
std::vector<std::string> searchWords(const std::string& typed);

}  // namespace record
