// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/record.h"

#include <algorithm>

namespace record {

const Learner* Record::learner(const base::LearnerId& learnerId) const {
    for (const Learner& one : learners)
        if (one.said.learner == learnerId) return &one;
    return nullptr;
}

const Line* Record::line(const base::LineId& lineId) const {
    for (const Line& one : lines)
        if (one.said.line == lineId) return &one;
    return nullptr;
}

std::vector<const Line*> Record::linesInUse() const {
    std::vector<const Line*> found;
    for (const Line& one : lines)
        if (one.isInUse) found.push_back(&one);
    return found;
}

const Line* Record::lineFor(const base::LearnerId& learnerId) const {
    const auto taught = visitsOf(learnerId);
    for (auto at = taught.rbegin(); at != taught.rend(); ++at)
        if (const Line* one = line((*at)->opened.line); one && one->isInUse) return one;
    if (const auto inUse = linesInUse(); !inUse.empty()) return inUse.back();
    return lines.empty() ? nullptr : &lines.back();
}

const Visit* Record::visit(const base::VisitId& visitId) const {
    for (const Visit& one : visits)
        if (one.id == visitId) return &one;
    return nullptr;
}

const Stated<MarkWrongChart>* Record::wrongChart(const base::CommandId& entry) const {
    for (const auto& mark : wrongCharts)
        if (mark.said.to == entry) return &mark;
    return nullptr;
}

std::vector<const Visit*> Record::visitsOf(const base::LearnerId& learnerId) const {
    std::vector<const Visit*> found;
    for (const Visit& one : visits)
        if (one.opened.learner == learnerId && !wrongChart(one.origin.entry)) found.push_back(&one);
    return found;
}

std::vector<practice::Interpreter> Record::interpretersOf(const base::LearnerId& learnerId,
                                                          const practice::PackRef& pack) const {
    std::vector<practice::Interpreter> found;
    for (const Visit* one : visitsOf(learnerId)) {
        const auto& who = one->opened.interpreter;
        if (who && one->opened.pack == pack &&
            std::find(found.begin(), found.end(), *who) == found.end())
            found.push_back(*who);
    }
    return found;
}

std::vector<const Unknown*> Record::blocking(const base::LearnerId& learnerId) const {
    const auto isAt = [&](const Unknown& one) {
        const Visit* at = one.visit ? visit(*one.visit) : nullptr;
        if (!at) return true;
        const auto& watchers = at->opened.watchers;
        return at->opened.learner == learnerId ||
               std::find(watchers.begin(), watchers.end(), learnerId) != watchers.end();
    };
    const auto concerns = [&](const Unknown& one) {
        bool namesSomebody = false;
        for (const Learner& other : learners) {
            const std::string& named = other.said.learner.text();
            if (std::find(one.about.begin(), one.about.end(), named) == one.about.end()) continue;
            if (other.said.learner == learnerId) return true;
            namesSomebody = true;
        }
        return !namesSomebody && isAt(one);
    };
    std::vector<const Unknown*> found;
    for (const Unknown& one : unknown)
        if (one.must && concerns(one)) found.push_back(&one);
    return found;
}

const Visit* Record::openVisit() const {
    for (const Visit& one : visits)
        if (one.isOpen()) return &one;
    return nullptr;
}

const Staff* House::person(const base::StaffId& id) const {
    for (const Staff& one : staff)
        if (one.said.staff == id) return &one;
    return nullptr;
}

bool House::isErased(const base::PatientId& patient) const {
    return std::any_of(erased.begin(), erased.end(), [&](const Stated<ErasePatient>& one) {
        return one.said.patient == patient;
    });
}

}  // namespace record
