// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/check.h"

#include <algorithm>

#include "procedure/checkparts.h"

namespace procedure {
namespace {

std::vector<std::string> pointersOf(const packs::Pack& pack) {
    std::vector<std::string> pointers;
    for (std::size_t i = 0; i < pack.competencies.size(); ++i)
        for (std::size_t j = 0; j < pack.competencies[i].steps.size(); ++j)
            pointers.push_back("/competencies/" + std::to_string(i) + "/steps/" +
                               std::to_string(j));
    for (std::size_t j = 0; j < pack.recoveries.size(); ++j)
        pointers.push_back("/recoveries/" + std::to_string(j));
    return pointers;
}

std::string minutes(std::int64_t seconds) {
    return std::to_string(seconds / 60) + " min " + std::to_string(seconds % 60) + " s";
}

}  // namespace

CheckRun::CheckRun(const packs::Pack& checked, const CheckLimits& bounds)
    : pack(checked), model(compile(checked)), pointers(pointersOf(checked)), limits(bounds) {}

void CheckRun::error(std::string pointer, std::string sentence, std::string remedy) {
    report.findings.push_back(
        {FindingLevel::Error, std::move(pointer), std::move(sentence), std::move(remedy)});
}

void CheckRun::advise(std::string pointer, std::string sentence) {
    report.findings.push_back({FindingLevel::Advice, std::move(pointer), std::move(sentence)});
}

std::string CheckRun::names(Conditions conditions) const {
    std::string list;
    for (std::size_t i = 0; i < model.conditionIds.size(); ++i)
        if (conditions.has(static_cast<int>(i)))
            list += (list.empty() ? "\"" : ", \"") + model.conditionIds[i] + '"';
    return list;
}

bool CheckReport::isRefused() const {
    return std::ranges::any_of(
        findings, [](const Finding& finding) { return finding.level == FindingLevel::Error; });
}

void checkTimes(CheckRun& run) {
    for (int step = 0; step < run.model.stepCount; ++step) {
        run.report.leastSeconds += run.model.operators[step].seconds;
        run.report.usualSeconds += run.model.operators[step].usualSeconds;
    }
    run.advise("/competencies", "The whole takes " + minutes(run.report.leastSeconds) +
                                    " at the least and usually " +
                                    minutes(run.report.usualSeconds) + ".");
}

CheckReport check(const packs::Pack& pack, const CheckLimits& limits) {
    CheckRun run(pack, limits);
    checkNominalRun(run);
    checkSkips(run);
    if (run.report.isRefused())
        run.advise("/lapses", "Ways back were not looked for, since the run itself fails.");
    else
        checkLapses(run);
    checkTimes(run);
    return run.report;
}

}  // namespace procedure
