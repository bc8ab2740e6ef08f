// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "procedure/taught.h"
#include "readiness/readiness.h"
#include "support/paths.h"

namespace readiness {

/// A record made by hand in which every rule is met; the numbers asked for are invented.
class Assess : public testing::Test {
  protected:
    Assess() : taught(smallPack()) {
        taught.pack.readiness = packs::Readiness{.unpromptedInARow = 2,
                                                 .observedAtLeast = 2,
                                                 .onPatientAtLeast = 1,
                                                 .onDaysAtLeast = 2,
                                                 .drills = {"sore-hands"},
                                                 .homeKitSeen = true,
                                                 .teachBackRounds = 3,
                                                 .validDays = 180};
        record.learners.push_back({.said = {.learner = learner, .name = "Amara"}});
        person().consent = {{.learner = learner, .toTeach = true}, {}};
        person().needs = {{.learner = learner}, {}};
        record.allergies.emplace();
        for (const packs::Prompt& prompt : taught.pack.prompts) hear(prompt);
        person().drills.push_back({{.learner = learner,
                                    .pack = taught.digest,
                                    .drill = "sore-hands",
                                    .result = record::DrillResult::Unprompted},
                                   {}});
        demonstrate("2026-11-22T10:00:00.000Z");
        demonstrate("2026-11-23T10:00:00.000Z");
    }

    static procedure::Taught smallPack() {
        std::ifstream file(support::sourceDir() + "/shared/packs/clean-hands.json");
        std::ostringstream bytes;
        bytes << file.rdbuf();
        return **procedure::readTaught(bytes.str());
    }
    record::Learner& person() { return record.learners.front(); }
    record::Visit& first() { return record.visits.front(); }
    record::Visit& last() { return record.visits.back(); }

    void hear(const packs::Prompt& prompt) {
        record::AskBack asked{.learner = learner, .pack = taught.digest, .prompt = prompt.id};
        for (const packs::Point& point : prompt.points)
            if (point.essential) asked.heard.push_back(point.id);
        person().asked.push_back({asked, {}});
    }
    /// A flawless one, on the patient, with the kit used at home.
    void demonstrate(const std::string& at, int offsetMinutes = 0) {
        record::Visit visit;
        visit.id = base::VisitId::random();
        visit.opened.way = practice::Way::ReturnDemonstration;
        visit.opened.on = practice::On::Patient;
        visit.opened.learner = learner;
        visit.opened.pack.digest = taught.digest;
        visit.opened.kit.homeKit = true;
        visit.origin = {.atMs = *base::parseIsoUtc(at), .offsetMinutes = offsetMinutes};
        for (int op = 0; op < taught.model.stepCount; ++op) {
            practice::StepRecord step{.op = op, .step = taught.model.operators[op].id};
            step.mark = practice::Mark::Seen;
            step.seenBy = teacher;
            visit.state.steps.push_back(step);
        }
        visit.state.ending = practice::Ending::Closed;
        record.visits.push_back(std::move(visit));
    }
    practice::StepRecord& step(record::Visit& visit, const std::string& id) {
        return *std::ranges::find(visit.state.steps, id, &practice::StepRecord::step);
    }
    Readiness result() const { return assess(record, learner, taught, now); }
    Finding find(Rule rule) const {
        const Readiness all = result();
        return *std::ranges::find(all.findings, rule, &Finding::rule);
    }
    std::vector<Rule> unmet() const {
        std::vector<Rule> rules;
        for (const Finding& one : result().findings)
            if (!one.met) rules.push_back(one.rule);
        EXPECT_EQ(result().ready && rules.empty(), result().ready);
        return rules;
    }
    using Rules = std::vector<Rule>;
    using Args = std::vector<std::string>;

    procedure::Taught taught;
    record::Record record;
    base::LearnerId learner = base::LearnerId::random();
    base::StaffId teacher = base::StaffId::random();
    base::Instant now{.wallMs = *base::parseIsoUtc("2026-11-24T14:00:00.000Z"), .zone = "UTC"};
};

}  // namespace readiness
