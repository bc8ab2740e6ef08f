// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/clock.h"
#include "record/record.h"

/// Rules are functions of the record; each gives a finding with its reason and what is missing.
/// Figures inform; the nurse signs.
namespace readiness {

enum class Rule {
    Consent,     ///< the learner may be taught
    NeedsAsked,  ///< needs and barriers were asked
    AllergiesAsked,
    Observed,       ///< args: seen, asked: return demonstrations observed
    OnPatient,      ///< args: seen, asked
    OnDays,         ///< args: seen, asked: different days
    UnpromptedRow,  ///< args: seen, asked: last demonstrations with every critical step unprompted
    CriticalSteps,  ///< args: ids of the critical steps not yet seen unprompted in the last one
    TeachBack,      ///< args: ids of the prompts whose essential points were not all heard
    Drills,         ///< args: ids of the drills not yet done
    HomeKit,        ///< seen with the kit that will be used at home
    StillValid,     ///< args: days since the last demonstration, valid days
    Unsettled,      ///< args: number of entries this program does not know, or an open visit
};

/// What a finding looked at.
enum class Ground {
    Seen,
    NothingYet,  ///< no demonstration that could be judged, or a question that nobody asked
    NotAsked     ///< the pack does not ask for it
};

struct Finding {
    Rule rule;
    bool met = false;
    std::vector<std::string> args;
    Ground ground = Ground::Seen;
    bool operator==(const Finding&) const = default;
};

/// How often the critical steps went without cue or lapse, over all return demonstrations.
struct Evidence {
    int unprompted = 0, observed = 0;
    double low = 0, high = 1;  ///< Wilson score interval, 95 %
};

enum class Met { Yes, NotYet };

struct CompetencyState {
    std::string competency;
    Met met = Met::NotYet;
    bool isSigned = false;
    record::Origin signature = {};  ///< of the sign-off that holds, where it is signed
    bool newSinceSigning = false;   ///< something that concerns it was written after the signature
    std::vector<Finding> missing;   ///< why not yet: UnpromptedRow, TeachBack …
};

struct Readiness {
    bool ready = false;
    std::vector<Finding> findings;  ///< every rule, met or not, in the order above
    std::vector<CompetencyState> competencies;
    Evidence evidence;
    bool allSigned() const;
};

/// `taught` is the pack the learner is taught by now. Dates are told by `now`'s offset.
Readiness assess(const record::Record& record, const base::LearnerId& learner,
                 const procedure::Taught& taught, const base::Instant& now);

/// Wilson score interval without continuity correction, z = 1.959963984540054.
Evidence wilson(int successes, int trials);

}  // namespace readiness
