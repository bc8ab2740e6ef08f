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
    base::StaffId teacher;  ///< who saw (some of) it and can sign it
};

struct Signable {
    std::vector<std::string> competencies;  ///< met, seen by this person, not signed since
    std::vector<SeenByAnother> others;      ///< met, but seen by another
};

Signable signableBy(const base::StaffId& teacher, const record::Record& record,
                    const base::LearnerId& learner, const procedure::Taught& taught,
                    const Readiness& readiness);

}  // namespace readiness
