// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/paperdata.h"

/// Turning the record's ids into words and names, shared by the parts of gather().
namespace render {

struct Gathering {
    const record::Record& record;
    const procedure::Taught& taught;
    const record::House& house;
    const PaperContext& context;

    std::string words(const packs::Text& text) const;
    std::string nameOf(const base::StaffId& id) const;
    std::string learnerName(const base::LearnerId& id) const;
    Stamp stamp(const record::Origin& origin) const;
};

/// The words of a step, a recovery or anything else of a pack, in the hospital's language; the id
/// where the pack has none.
std::string stepWords(const packs::Pack& pack, const std::string& id, const std::string& language);
/// `learnersLanguage` is a BCP 47 tag.
PaperSteps gatherSteps(const Gathering& from, const std::string& learnersLanguage);
/// Whether it was taught to this learner, or shown while they watched.
bool wasAt(const record::Visit& visit, const base::LearnerId& learner);
PaperSignature gatherSignature(const Gathering& from, const record::Stated<record::SignOff>& act);
PaperRemark gatherLate(const Gathering& from, const record::Stated<record::AddLateEntry>& late);
/// In the order in which it was marked.
std::vector<PaperMarked> gatherMarked(const Gathering& from, const record::Learner& learner);
void gatherRemarks(const Gathering& from, const base::LearnerId& learner, PaperData& data);
/// Hand-overs, pauses, absences, and where the teacher took the steps over, in their order.
std::vector<PaperTurn> turnsOf(const Gathering& from, const record::Visit& visit);
/// On the patient: measures that steps ask for and nobody wrote down, each once.
std::vector<PaperMissing> missingIn(const Gathering& from, const record::Visit& visit);
PaperVisit gatherVisit(const Gathering& gathering, const record::Visit& visit);

}  // namespace render
