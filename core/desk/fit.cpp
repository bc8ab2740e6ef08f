// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fit.h"

#include <algorithm>

#include "base/date.h"

namespace desk {
namespace {

using base::Code;
using base::Error;

bool allows(const std::vector<std::string>& words, const std::string& word) {
    return words.empty() || std::count(words.begin(), words.end(), word) > 0;
}

bool allowsLearner(const packs::Applies& applies, bool isPatient) {
    const auto kind = isPatient ? packs::LearnerKind::Patient : packs::LearnerKind::Carer;
    return applies.learner.empty() ||
           std::count(applies.learner.begin(), applies.learner.end(), kind) > 0;
}

bool isAllergic(const record::Record& record, const std::string& allergen) {
    if (!record.allergies) return false;
    const auto& known = record.allergies->said.allergies;
    return std::any_of(known.begin(), known.end(),
                       [&](const record::Allergy& one) { return one.allergen == allergen; });
}

/// A supply the patient must avoid rules the pack out, unless another supply takes its place.
void addAllergies(std::vector<Error>& reasons, const packs::Pack& pack,
                  const record::Record& record) {
    for (const packs::Supply& supply : pack.supplies)
        for (const std::string& allergen : supply.avoid) {
            const bool replaced =
                supply.instead && supply.instead->kind == packs::Instead::Kind::Supply;
            if (!replaced && isAllergic(record, allergen))
                reasons.push_back({Code::PackAllergy, {supply.id, allergen}});
        }
}

int demands(const packs::Applies& applies) {
    return !applies.line.empty() + !applies.securement.empty() + !applies.dressing.empty() +
           !applies.antiseptic.empty() + applies.monthsFrom.has_value();
}

}  // namespace

std::vector<Error> whyNot(const packs::Pack& pack, const Setting& setting) {
    std::vector<Error> reasons;
    const packs::Applies& applies = pack.applies;
    if (!allows(applies.line, setting.line.said.kind))
        reasons.push_back({Code::PackLine, {setting.line.said.kind}});
    if (!allows(applies.securement, setting.kit.securement))
        reasons.push_back({Code::PackSecurement, {setting.kit.securement}});
    if (!allows(applies.dressing, setting.kit.dressing))
        reasons.push_back({Code::PackDressing, {setting.kit.dressing}});
    if (!allows(applies.antiseptic, setting.kit.antiseptic))
        reasons.push_back({Code::PackAntiseptic, {setting.kit.antiseptic}});
    if (!allowsLearner(applies, setting.learner.said.isPatient))
        reasons.push_back({Code::PackLearner, {}});
    const int months = base::ageInMonths(setting.record.patient.born, setting.today);
    if (months < applies.monthsFrom.value_or(0) || months > applies.monthsTo.value_or(months))
        reasons.push_back({Code::PackAge, {std::to_string(months)}});
    addAllergies(reasons, pack, setting.record);
    return reasons;
}

procedure::TaughtPtr bestFit(const procedure::Shelf& shelf, const Setting& setting) {
    procedure::TaughtPtr best;
    for (const procedure::TaughtPtr& taught : shelf.current()) {
        if (!whyNot(taught->pack, setting).empty()) continue;
        if (!best || demands(taught->pack.applies) > demands(best->pack.applies)) best = taught;
    }
    return best;
}

}  // namespace desk
