// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/check.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using procedure::FindingLevel;

packs::Step stepOf(const char* id, std::vector<std::string> needs, std::vector<std::string> gives) {
    packs::Step step;
    step.id = id;
    step.needs = std::move(needs);
    step.gives = std::move(gives);
    step.repeatable = true;
    return step;
}

/// Wash, then lay; a touch spoils the hands.
packs::Pack soundPack() {
    packs::Pack pack;
    for (const char* id : {"hands", "field", "extra"}) {
        packs::Condition condition;
        condition.id = id;
        condition.clean = true;
        pack.conditions.push_back(condition);
    }
    pack.goal = {"field"};
    packs::Competency competency;
    competency.steps = {stepOf("wash", {}, {"hands"}), stepOf("lay", {"hands"}, {"field"})};
    competency.steps[0].lapses = {"touch"};
    competency.steps[0].phases.push_back({.minSeconds = 20, .targetSeconds = 30});
    pack.competencies = {competency};
    packs::Lapse lapse;
    lapse.id = "touch";
    lapse.breaks = {"hands"};
    pack.lapses = {lapse};
    return pack;
}

packs::Step& stepIn(packs::Pack& pack, std::size_t index) {
    return pack.competencies[0].steps[index];
}

bool finds(const packs::Pack& pack, FindingLevel level, const char* pointer, const char* words,
           const procedure::CheckLimits& limits = {}) {
    const auto report = procedure::check(pack, limits);
    for (const procedure::Finding& finding : report.findings)
        EXPECT_EQ(finding.remedy.ends_with('.'), finding.level == FindingLevel::Error)
            << finding.sentence;
    return std::ranges::any_of(report.findings, [&](const procedure::Finding& finding) {
        return finding.level == level && finding.pointer == pointer &&
               finding.sentence.find(words) != std::string::npos;
    });
}

TEST(PackCheck, SoundPackHasWaysBackAndTimes) {
    const auto report = procedure::check(soundPack());
    EXPECT_FALSE(report.isRefused());
    EXPECT_EQ(report.leastSeconds, 22);
    EXPECT_EQ(report.usualSeconds, 32);
    ASSERT_EQ(report.ways.size(), 4U);
    EXPECT_TRUE(report.ways[0].plan.empty());
    EXPECT_EQ(report.ways[2].seen, procedure::Seen::After);
    EXPECT_EQ(report.ways[2].plan, std::vector<std::string>{"wash"});
    EXPECT_EQ(report.ways[2].seconds, 21);
}

TEST(PackCheck, EveryStepFitsInItsTurn) {
    packs::Pack pack = soundPack();
    stepIn(pack, 1).needs = {"extra"};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/competencies/0/steps/1/needs", "\"extra\""));
    stepIn(pack, 1).needs = {};
    stepIn(pack, 1).forbids = {"hands"};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/competencies/0/steps/1/forbids", "\"hands\""));
}

TEST(PackCheck, GuardsAreKeptFromTheStartToTheEnd) {
    packs::Pack pack = soundPack();
    packs::Guard guard;
    guard.whileAll = {"field"};
    guard.holds = {"extra"};
    pack.guards = {guard};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/guards/0", "After the step \"lay\""));
    pack.start = {"field"};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/guards/0", "At the start"));
}

TEST(PackCheck, EndContainsTheGoal) {
    packs::Pack pack = soundPack();
    pack.goal = {"extra"};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/goal", "\"extra\""));
}

TEST(PackCheck, PackWithoutStepsIsRefused) {
    packs::Pack pack = soundPack();
    pack.competencies.clear();
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/competencies", "at least one step"));
}

TEST(PackCheck, LapseWithoutAWayBackIsAnErrorUnlessItStops) {
    packs::Pack pack = soundPack();
    stepIn(pack, 0).repeatable = false;
    const char* place = "/competencies/0/steps/0/lapses/0";
    EXPECT_TRUE(finds(pack, FindingLevel::Error, place, "no way back"));
    pack.lapses[0].action = packs::Action::FinishAndCall;
    EXPECT_TRUE(finds(pack, FindingLevel::Error, place, "no way back"));
    pack.lapses[0].action = packs::Action::StopAndCall;
    EXPECT_FALSE(procedure::check(pack).isRefused());
}

TEST(PackCheck, WayBackOnlyWithAHelperIsNamed) {
    packs::Pack pack = soundPack();
    stepIn(pack, 0).by = packs::By::Helper;
    EXPECT_FALSE(procedure::check(pack).isRefused());
    EXPECT_TRUE(finds(pack, FindingLevel::Advice, "/competencies/0/steps/0/lapses/0",
                      "only with a helper"));
}

TEST(PackCheck, LapseThatChangesNothingThereIsAnError) {
    packs::Pack pack = soundPack();
    pack.lapses[0].breaks = {"extra"};
    EXPECT_TRUE(
        finds(pack, FindingLevel::Error, "/competencies/0/steps/0/lapses/0", "changes nothing"));
}

TEST(PackCheck, SkipOnlyWhereNothingLaterMinds) {
    packs::Pack pack = soundPack();
    stepIn(pack, 0).skip = packs::Text{{"en", "when clean"}};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/competencies/0/steps/0/skip", "\"hands\""));
    stepIn(pack, 0).skip.reset();
    pack.competencies[0].steps.push_back(stepOf("tell", {}, {"extra"}));
    stepIn(pack, 2).skip = packs::Text{{"en", "when alone"}};
    EXPECT_FALSE(procedure::check(pack).isRefused());
}

TEST(PackCheck, SearchesBeyondTheLimitsRefuseThePack) {
    const procedure::CheckLimits tiny{
        .statesOfQuestion = 1, .statesOfCheck = 1'000, .statesAdvised = 100};
    EXPECT_TRUE(finds(soundPack(), FindingLevel::Error, "/competencies/0/steps/0/lapses/0",
                      "too large", tiny));
    packs::Pack pack = soundPack();
    stepIn(pack, 1).lapses = {"touch"};
    const procedure::CheckLimits few{
        .statesOfQuestion = 100, .statesOfCheck = 1, .statesAdvised = 100};
    EXPECT_TRUE(finds(pack, FindingLevel::Error, "/lapses", "too large", few));
    const procedure::CheckLimits advised{
        .statesOfQuestion = 100, .statesOfCheck = 1'000, .statesAdvised = 1};
    EXPECT_TRUE(finds(pack, FindingLevel::Advice, "/competencies/0/steps/0/lapses/0",
                      "keep it under 1", advised));
}

}  // namespace
