// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A lapse is withdrawn when part of the way back from it is done already: what was done was done
// all the same. The rules are those of the pack language; nothing clinical is checked here.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/practice/sitting.h"

namespace practice {
namespace {

using sitting::Sitting;

Sitting atStep(const std::string& step) {
    Sitting visit("weekly-dressing-upper-arm");
    visit.open();
    visit.goTo(step);
    return visit;
}

void withdraw(Sitting& visit, std::size_t lapse) {
    visit.must(TakeBack{.entry = visit.state.lapses.at(lapse).entry});
}

std::vector<std::string> planOf(const Sitting& visit) {
    std::vector<std::string> ids;
    if (!visit.state.wayBack) return ids;
    const WayBack& back = *visit.state.wayBack;
    for (std::size_t i = back.done; i < back.operators.size(); ++i)
        ids.push_back(visit.taught.model.operators.at(back.operators[i]).id);
    return ids;
}

/// The step in hand fits, and all that remains can be done from here with every guard kept.
void expectWayOn(const Sitting& visit) {
    const procedure::Model& model = visit.taught.model;
    procedure::Conditions holds = visit.state.holds;
    if (const auto& back = visit.state.wayBack)
        for (std::size_t i = back->done; i < back->operators.size(); ++i) {
            const procedure::Operator& next = model.operators.at(back->operators[i]);
            EXPECT_TRUE(procedure::fits(next, holds)) << next.id;
            holds = procedure::apply(next, holds);
        }
    EXPECT_TRUE(procedure::isWayOpen(model, visit.state.remaining, holds));
    EXPECT_EQ(replay(visit.taught, visit.events), visit.state);
}

TEST(Withdrawal, GlovesThatCameOffOnTheWayBackAreStillOff) {
    Sitting visit = atStep("wipe-line");
    ASSERT_TRUE(visit.holds("gloves-sterile"));
    visit.must(Sitting::lapse({"glove-torn"}));
    ASSERT_EQ(visit.hand(), "drop-gloves");
    visit.doStep();
    withdraw(visit, 0);
    EXPECT_FALSE(visit.holds("gloves-sterile"));
    ASSERT_TRUE(visit.state.wayBack.has_value());
    EXPECT_EQ(planOf(visit), (std::vector<std::string>{"rub-again", "sterile-gloves-on"}));
    expectWayOn(visit);
    visit.goBack();
    EXPECT_EQ(visit.hand(), "wipe-line");
    EXPECT_TRUE(visit.holds("gloves-sterile"));
    EXPECT_TRUE(visit.state.lapses.front().withdrawn);
    visit.doStep();
    EXPECT_EQ(visit.help("wipe-line"), Help::Unprompted);
}

TEST(Withdrawal, WhatWasDoneOnTheWayBackStaysOnRecordBesideTheStepItRepeated) {
    Sitting visit = atStep("wipe-line");
    const StepRecord before = visit.record("scrub-skin");
    visit.must(Sitting::lapse({"skin-touched"}));
    ASSERT_EQ(visit.hand(), "scrub-skin");
    visit.must(GiveCue{{.step = "scrub-skin"}});
    visit.doStep();
    ASSERT_FALSE(visit.state.wayBack.has_value());
    withdraw(visit, 0);
    EXPECT_EQ(visit.record("scrub-skin"), before);
    ASSERT_EQ(visit.state.waysBack.size(), 1U);
    EXPECT_EQ(visit.state.waysBack.front().mark, Mark::Seen);
    EXPECT_EQ(visit.state.waysBack.front().cues, 1);
    EXPECT_EQ(visit.state.waysBack.front().phases.size(), 2U);
    EXPECT_FALSE(visit.state.wayBack.has_value());
    expectWayOn(visit);
}

TEST(Withdrawal, OnTheWayBackAnInterruptedStepIsStillDoneWhole) {
    Sitting visit = atStep("scrub-skin");
    visit.begin();
    visit.pass(15'000);
    visit.end();
    ASSERT_EQ(phaseToDo(visit.taught.pack, visit.state)->id, "along");
    visit.must(Sitting::lapse({"glove-torn"}));
    visit.doStep();
    withdraw(visit, 0);
    expectWayOn(visit);
    visit.goBack();
    ASSERT_EQ(visit.hand(), "scrub-skin");
    EXPECT_EQ(phaseToDo(visit.taught.pack, visit.state)->id, "across");
}

TEST(Withdrawal, BeforeTheWayBackWasBegunTheStepGoesOnWhereItWas) {
    Sitting visit = atStep("scrub-skin");
    visit.begin();
    visit.pass(5'000);
    visit.must(Sitting::lapse({"glove-torn"}));
    visit.pass(2'000);
    withdraw(visit, 0);
    ASSERT_NE(runningPhase(visit.state), nullptr);
    visit.pass(8'000);
    visit.end();
    EXPECT_EQ(recordInHand(visit.state)->phases.back().measuredMs, 15'000);
    expectWayOn(visit);
}

TEST(Withdrawal, OfTheFirstOfTwoLeavesTheWayBackFromTheSecond) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"mask-slipped"}));
    visit.must(Sitting::lapse({"skin-touched"}));
    withdraw(visit, 0);
    EXPECT_EQ(planOf(visit), std::vector<std::string>{"scrub-skin"});
    EXPECT_EQ(visit.state.wayBack->lapse, 1U);
    EXPECT_FALSE(visit.state.lapses[1].withdrawn);
    expectWayOn(visit);
}

TEST(Withdrawal, OfTheSecondOfTwoLeavesTheWayBackFromTheFirst) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched"}));
    visit.must(Sitting::lapse({"glove-torn"}));
    ASSERT_EQ(visit.hand(), "drop-gloves");
    visit.doStep();
    withdraw(visit, 1);
    ASSERT_TRUE(visit.state.wayBack.has_value());
    const std::vector<std::string> plan = planOf(visit);
    for (const char* step : {"rub-again", "sterile-gloves-on", "scrub-skin"})
        EXPECT_TRUE(std::ranges::count(plan, step)) << step;
    expectWayOn(visit);
    visit.goBack();
    EXPECT_EQ(visit.hand(), "wipe-line");
}

TEST(Withdrawal, OfSeveralSeenAsOneWithdrawsThemTogether) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched", "glove-torn"}));
    ASSERT_EQ(visit.hand(), "drop-gloves");
    visit.doStep();
    withdraw(visit, 0);
    EXPECT_TRUE(visit.holds("skin-scrubbed"));
    EXPECT_EQ(planOf(visit), (std::vector<std::string>{"rub-again", "sterile-gloves-on"}));
    expectWayOn(visit);
}

void withdrawPart(Sitting& visit, std::optional<std::string> lapse) {
    visit.must(WithdrawLapse{.entry = visit.state.lapses.back().entry, .lapse = std::move(lapse)});
}

TEST(Withdrawal, OneOfSeveralSeenAsOneLeavesTheOthersAtTheirMoment) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched", "glove-torn"}));
    const std::int64_t at = visit.state.lapses.back().atMs;
    ASSERT_EQ(visit.hand(), "drop-gloves");
    visit.pass(5'000);
    withdrawPart(visit, "glove-torn");
    ASSERT_EQ(visit.state.lapses.size(), 2U);
    EXPECT_TRUE(visit.state.lapses[0].withdrawn);
    EXPECT_EQ(visit.state.lapses[0].lapses, std::vector<std::string>{"glove-torn"});
    EXPECT_FALSE(visit.state.lapses[1].withdrawn);
    EXPECT_EQ(visit.state.lapses[1].lapses, std::vector<std::string>{"skin-touched"});
    EXPECT_EQ(visit.state.lapses[1].atMs, at);
    EXPECT_TRUE(visit.holds("gloves-sterile"));
    EXPECT_FALSE(visit.holds("skin-scrubbed"));
    EXPECT_EQ(planOf(visit), std::vector<std::string>{"scrub-skin"});
    expectWayOn(visit);
}

TEST(Withdrawal, OfOneOfSeveralKeepsWhatWasDoneOnTheWayBack) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched", "glove-torn"}));
    visit.doStep();  // the gloves came off
    withdrawPart(visit, "skin-touched");
    EXPECT_TRUE(visit.holds("skin-scrubbed"));
    EXPECT_FALSE(visit.holds("gloves-sterile"));
    EXPECT_EQ(planOf(visit), (std::vector<std::string>{"rub-again", "sterile-gloves-on"}));
    expectWayOn(visit);
    visit.goBack();
    EXPECT_EQ(visit.hand(), "wipe-line");
}

TEST(Withdrawal, WhatThePackDoesNotListIsWithdrawnAloneToo) {
    Sitting visit = atStep("wipe-line");
    SeeLapse said = Sitting::lapse({"skin-touched"});
    said.other = OtherLapse{.what = "a sleeve", .touched = {"gloves-sterile"}};
    visit.must(said);
    ASSERT_FALSE(visit.holds("gloves-sterile"));
    withdrawPart(visit, std::nullopt);
    EXPECT_TRUE(visit.holds("gloves-sterile"));
    EXPECT_EQ(visit.state.lapses[0].other, "a sleeve");
    EXPECT_TRUE(visit.state.lapses[0].withdrawn);
    EXPECT_EQ(visit.state.lapses[1].other, "");
    expectWayOn(visit);
}

TEST(Withdrawal, TheLastOfSeveralGoesAsAWholeAndNoneGoesTwice) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched", "glove-torn"}));
    const base::CommandId entry = visit.state.lapses.back().entry;
    const auto part = [&](const char* lapse) { return WithdrawLapse{entry, std::string(lapse)}; };
    EXPECT_EQ(visit.say(part("mask-slipped")), base::Code::NothingToTakeBack);
    EXPECT_EQ(visit.say(WithdrawLapse{entry, std::nullopt}), base::Code::NothingToTakeBack);
    withdrawPart(visit, "glove-torn");
    EXPECT_EQ(visit.say(part("glove-torn")), base::Code::NothingToTakeBack);
    EXPECT_EQ(visit.say(part("skin-touched")), base::Code::NothingToTakeBack);
    visit.must(TakeBack{.entry = entry});
    ASSERT_EQ(visit.state.lapses.size(), 2U);
    EXPECT_TRUE(visit.state.lapses[1].withdrawn);
    EXPECT_TRUE(visit.holds("skin-scrubbed"));
    EXPECT_EQ(visit.say(part("skin-touched")), base::Code::NothingToTakeBack);
    expectWayOn(visit);
}

TEST(Withdrawal, WhatWasCaughtStaysWithTheLapseThatWasCaught) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched"}));
    visit.must(Sitting::lapse({"glove-torn"}));
    visit.must(CatchAlone{});
    withdraw(visit, 1);
    EXPECT_EQ(visit.state.lapses[0].caught, Caught::No);
    EXPECT_EQ(visit.say(CatchAlone{}), std::nullopt);
    EXPECT_EQ(visit.state.lapses[0].caught, Caught::Alone);
    expectWayOn(visit);
}

TEST(Withdrawal, NobodyCatchesALapseThatWasNone) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"glove-torn"}));
    visit.doStep();
    withdraw(visit, 0);
    ASSERT_TRUE(visit.state.wayBack.has_value());
    EXPECT_EQ(visit.say(CatchAlone{}), base::Code::NoLapse);
    EXPECT_EQ(visit.say(ShowWayBack{}), base::Code::NoLapse);
}

TEST(Withdrawal, AStepSaidToBeLeftOutAndDoneMeanwhileIsDone) {
    Sitting visit = atStep("soap-wash");
    visit.must(MissStep{.step = "soap-wash"});
    ASSERT_EQ(visit.hand(), "soap-wash");
    visit.doStep();
    ASSERT_FALSE(visit.state.wayBack.has_value());
    withdraw(visit, 0);
    EXPECT_EQ(visit.record("soap-wash").mark, Mark::Seen);
    EXPECT_EQ(visit.hand(), "towel-dry");
    expectWayOn(visit);
}

TEST(Withdrawal, ATakeOverTakenBackLeavesAWayOn) {
    Sitting visit = atStep("peel-low");
    visit.must(Sitting::lapse({"line-out"}));
    visit.must(TakeOver{.why = "It was seen wrong."});
    visit.must(SeeStep{{.step = "peel-low"}});
    withdraw(visit, 0);
    expectWayOn(visit);
}

TEST(Withdrawal, WhatComesAfterTheEndTakesNothingBack) {
    Sitting visit = atStep("wipe-line");
    visit.must(Sitting::lapse({"skin-touched"}));
    visit.must(StopVisit{.why = StopReason::CalledAway});
    std::vector<Event> events = visit.events;
    events.push_back(events.back());
    events.back().id = base::CommandId::random();
    events.back().said = TakeBack{.entry = visit.state.lapses.front().entry};
    EXPECT_EQ(replay(visit.taught, events), visit.state);
}

/// As when what lay between them was taken back. Found by AnySequence, seed 13874515212441619916.
TEST(Withdrawal, OfTwoTimesAPhaseWasBegunTheLaterRuns) {
    Sitting visit = atStep("scrub-skin");
    visit.begin();
    std::vector<Event> events = visit.events;
    events.push_back(events.back());
    events.back().id = base::CommandId::random();
    const State again = replay(visit.taught, events);
    const auto& phases = std::ranges::find(again.steps, "scrub-skin", &StepRecord::step)->phases;
    ASSERT_EQ(phases.size(), 2U);
    EXPECT_EQ(phases[0].end, PhaseEnd::Voided);
    EXPECT_EQ(phases[1].end, PhaseEnd::Running);
}

}  // namespace
}  // namespace practice
