// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "readiness/readiness.h"

/// Who may sign what: nobody signs what another saw.
namespace readiness {

struct SeenByAnother {
    std::string competency;
    base::StaffId teacher;  ///< who saw it and can sign it
};

/// Handed over in its middle: nobody saw all of it, so it has to be shown once more.
struct SeenBySeveral {
    std::string competency;
    std::vector<base::StaffId> teachers;  ///< each saw some of it, in the order of the steps
};

struct Signable {
    std::vector<std::string> competencies;  ///< met, seen by this person, not signed since
    std::vector<SeenByAnother> others;      ///< met, but seen by another
    std::vector<SeenBySeveral> shared;      ///< met, but nobody saw all of it
};

Signable signableBy(const base::StaffId& teacher, const record::Record& record,
                    const base::LearnerId& learner, const procedure::Taught& taught,
                    const Readiness& readiness);

}  // namespace readiness
