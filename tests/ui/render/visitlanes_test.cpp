// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/visitlanes.h"

#include <gtest/gtest.h>

namespace {

using packs::Lane;
using practice::Change;
using procedure::Conditions;
using render::Bar;
using render::BarKind;

procedure::Taught twoLanes() {
    procedure::Taught taught;
    taught.pack.conditions = {{.id = "washed", .lane = Lane::Hands, .clean = true},
                              {.id = "masked", .lane = Lane::Face}};
    taught.pack.lanes = {{Lane::Hands, packs::Shows::Safe, {"washed"}},
                         {Lane::Face, packs::Shows::Safe, {"masked"}}};
    packs::Step wash;
    wash.id = "wash";
    wash.gives = {"washed"};
    taught.pack.competencies.push_back({.id = "hands", .steps = {wash}});
    return taught;
}

render::LaneWords plainWords() {
    return {[](Lane lane) { return QString::number(static_cast<int>(lane)); },
            [](std::int64_t wallMs) { return QString::number(wallMs); },
            [](std::int64_t seconds) { return QStringLiteral("%1 s").arg(seconds); }};
}

Change change(std::int64_t atMs, std::uint64_t holds, Change::Cause cause) {
    return {.atMs = atMs, .holds = Conditions(holds), .cause = cause};
}

TEST(VisitLanes, HoldsFromTheStepOnIsHatchedWhereWonBack) {
    practice::State state;
    state.openedMs = 0;
    state.trail = {change(0, 0, Change::Cause::Start), change(10'000, 1, Change::Cause::Step),
                   change(20'000, 0, Change::Cause::Lapse),
                   change(50'000, 1, Change::Cause::WayBack)};
    state.lapses.push_back({.atMs = 20'000});
    const auto data = render::lanesOf(twoLanes(), state, plainWords(), 60'000);
    ASSERT_EQ(data.lanes.size(), 2U);
    const std::vector<Bar> expected{{10'000, 20'000, BarKind::Held},
                                    {20'000, 50'000, BarKind::WonBack},
                                    {50'000, 60'000, BarKind::Held}};
    EXPECT_EQ(data.lanes[0].bars, expected);
    EXPECT_TRUE(data.lanes[1].bars.empty());
    ASSERT_EQ(data.notches.size(), 1U);
    EXPECT_EQ(data.notches[0].letter, QStringLiteral("A"));
}

TEST(VisitLanes, StaysCutWhileNothingWonItBack) {
    practice::State state;
    state.trail = {change(0, 3, Change::Cause::Start), change(20'000, 2, Change::Cause::Lapse)};
    const auto data = render::lanesOf(twoLanes(), state, plainWords(), 60'000);
    EXPECT_EQ(data.lanes[0].bars.back(), (Bar{20'000, 60'000, BarKind::Cut}));
    EXPECT_EQ(data.lanes[1].bars, (std::vector<Bar>{{0, 60'000, BarKind::Held}}));
}

TEST(VisitLanes, MeasuresPhasesWithPausesLeftOut) {
    practice::State state;
    practice::StepRecord step{.step = "wash"};
    step.phases.push_back(
        {.begunWallMs = 1'000, .pausedMs = 4'000, .measuredMs = 31'000, .minMs = 40'000});
    state.steps = {step};
    state.lastWallMs = 90'000;
    const auto data = render::lanesOf(twoLanes(), state, plainWords(), std::nullopt);
    ASSERT_EQ(data.lanes[0].spans.size(), 1U);
    EXPECT_EQ(data.lanes[0].spans[0].label, QStringLiteral("31 s"));
    EXPECT_EQ(data.lanes[0].spans[0].toMs, 36'000);
    EXPECT_TRUE(data.lanes[0].spans[0].isShort);
    EXPECT_EQ(data.toMs, 90'000);
}

TEST(VisitLanes, LettersGoOnAfterZ) {
    EXPECT_EQ(render::lapseLetter(0), QStringLiteral("A"));
    EXPECT_EQ(render::lapseLetter(25), QStringLiteral("Z"));
    EXPECT_EQ(render::lapseLetter(26), QStringLiteral("AA"));
}

}  // namespace
