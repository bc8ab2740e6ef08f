// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "readiness/readiness.h"

/// What the rules of readiness ask of the visits.
namespace readiness {

/// The learner's whole return demonstrations with this pack, oldest first: from memory, done to the
/// end by the learner, on the patient or a practice arm. A visit talked through shows no hands.
std::vector<const record::Visit*> demonstrations(const record::Record& record,
                                                 const base::LearnerId& learner,
                                                 const procedure::Taught& taught);
/// The critical steps of the pack (of one competency, if named), by their place in the pack.
std::vector<int> criticalSteps(const packs::Pack& pack, const std::string& competency = {});
/// Those of `steps` that did not go unprompted in this visit; what does not apply counts as gone.
std::vector<int> notUnprompted(const record::Visit& visit, const std::vector<int>& steps);
/// How many of `steps` apply in this visit: one that does not is counted nowhere.
int applying(const record::Visit& visit, const std::vector<int>& steps);
/// How many of the newest demonstrations in a row had all of `steps` unprompted.
int unpromptedRow(const std::vector<const record::Visit*>& visits, const std::vector<int>& steps);
/// The prompts (of one competency, if named) whose essential points were not all heard in the
/// newest round.
std::vector<std::string> promptsOpen(const record::Learner& learner,
                                     const procedure::Taught& taught,
                                     const std::string& competency = {});
/// The local date of a visit.
std::string dayOf(const record::Visit& visit);

}  // namespace readiness
