// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A lane is solid only while what protects there holds: old dressing off and skin being scrubbed is
// an open site, whatever else of the lane was done. Common practice, no source.
#include "visit/lanesview.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "gui/main/settled.h"
#include "gui/visit/visitdriver.h"
#include "packs/names.h"
#include "render/visitlanes.h"
#include "render/words.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

using packs::Lane;
using render::BarKind;

/// The bars of a lane of the open visit, as they are a moment from now.
std::vector<render::Bar> barsOf(VisitDriver& visit, Lane wanted) {
    const render::LaneWords words{
        [](Lane lane) { return QString::fromStdString(packs::name(lane)); },
        [](std::int64_t) { return QString(); }, [](std::int64_t) { return QString(); }};
    const std::int64_t now = visit.ward().clock().now().wallMs + 1;
    const auto data = render::lanesOf(visit.ward().taught(), visit.state(), words, now);
    for (const render::Lane& lane : data.lanes)
        if (lane.label == QString::fromStdString(packs::name(wanted))) return lane.bars;
    return {};
}

/// What it shows now; none: nothing at all.
std::optional<BarKind> laneNow(VisitDriver& visit, Lane wanted) {
    const auto bars = barsOf(visit, wanted);
    const std::int64_t now = visit.ward().clock().now().wallMs + 1;
    if (bars.empty() || bars.back().toMs != now) return std::nullopt;
    return bars.back().kind;
}

TEST(LanesView, WhileTheBareSkinIsScrubbedNeitherCoverNorSiteIsSolid) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    EXPECT_EQ(laneNow(visit, Lane::Cover), BarKind::Held) << "the old dressing is on";
    EXPECT_EQ(laneNow(visit, Lane::Line), BarKind::Held);
    EXPECT_EQ(laneNow(visit, Lane::Field), std::nullopt);
    visit.seeUntil("scrub-skin");
    EXPECT_EQ(laneNow(visit, Lane::Cover), std::nullopt);
    EXPECT_EQ(laneNow(visit, Lane::Site), BarKind::Open);
    EXPECT_EQ(laneNow(visit, Lane::Skin), std::nullopt) << "only the pad is off";
    EXPECT_EQ(laneNow(visit, Lane::Field), BarKind::Held);
    EXPECT_EQ(laneNow(visit, Lane::Face), BarKind::Held);
    EXPECT_EQ(laneNow(visit, Lane::Line), BarKind::Held) << "a strip or a hand";
    const auto* lanes = visit.find<ui::LanesView>(QStringLiteral("lanes"));
    EXPECT_TRUE(lanes->accessibleDescription().contains(QStringLiteral("open: Site uncovered")));
    EXPECT_TRUE(lanes->accessibleDescription().contains(QStringLiteral("Old dressing on, from")));
    visit.picture(QStringLiteral("visit-20-lanes-open"));
    visit.seeUntil("press-edges");
    EXPECT_EQ(laneNow(visit, Lane::Cover), BarKind::Held);
    EXPECT_EQ(laneNow(visit, Lane::Site), std::nullopt);
    EXPECT_EQ(laneNow(visit, Lane::Skin), BarKind::Held);
    EXPECT_EQ(laneNow(visit, Lane::Line), BarKind::Held);
}

// What nobody saw is taken as done, so that the visit goes on, and never drawn as if it was seen.
TEST(LanesView, WhatNobodySawIsNotSolid) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("mask-on");
    visit.press(Qt::Key_O);
    visit.seeStep();
    const auto* lanes = visit.find<ui::LanesView>(QStringLiteral("lanes"));
    EXPECT_EQ(laneNow(visit, Lane::Face), BarKind::Unseen)
        << lanes->accessibleDescription().toStdString();
    visit.seeUntil("rub-hands");
    visit.press(Qt::Key_O);
    EXPECT_EQ(laneNow(visit, Lane::Hands), BarKind::Unseen);
    EXPECT_TRUE(lanes->accessibleDescription().contains(QStringLiteral("not seen")));
    visit.picture(QStringLiteral("visit-21-lanes-unseen"));
    visit.seeStep();
    EXPECT_EQ(laneNow(visit, Lane::Hands), BarKind::Held) << "the gloves were seen";
    EXPECT_EQ(laneNow(visit, Lane::Face), BarKind::Unseen);
}

// That a step is said later to have been left out does not make it seen before that.
TEST(LanesView, WhatNobodySawStaysNotSolidWhenItIsSaidToBeLeftOut) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("mask-on");
    visit.press(Qt::Key_O);
    visit.seeStep();
    ASSERT_EQ(laneNow(visit, Lane::Face), BarKind::Unseen);
    visit.pass(30'000);
    visit.ward().must(practice::MissStep{.step = "mask-on"});
    visit.pass(30'000);
    const auto bars = barsOf(visit, Lane::Face);
    EXPECT_EQ(std::ranges::count(bars, BarKind::Unseen, &render::Bar::kind), 1);
    EXPECT_EQ(std::ranges::count(bars, BarKind::Held, &render::Bar::kind), 0);
}

// The page in a window of 1366 by 768: what nothing is in yet takes no room from the step in hand.
TEST(LanesView, OnlyLanesThatSomethingIsInHaveARow) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.page().resize(1366, 686);
    const auto* lanes = visit.find<ui::LanesView>(QStringLiteral("lanes"));
    gui::settle(visit.page());
    visit.picture(QStringLiteral("visit-23-lanes-begin"));
    const int atFirst = lanes->height();
    EXPECT_GT(atFirst, 0);
    EXPECT_LT(6 * atFirst, visit.page().height()) << "two of seven: " << atFirst;
    visit.pass(4000);
    visit.page().tick();
    gui::settle(visit.page());
    EXPECT_EQ(lanes->height(), atFirst) << "what held from the first moment on was there";
    // Read aloud they are all there.
    for (const Lane lane :
         {Lane::Hands, Lane::Face, Lane::Field, Lane::Site, Lane::Skin, Lane::Cover, Lane::Line})
        EXPECT_TRUE(lanes->accessibleDescription().contains(render::laneWords(lane)))
            << lanes->accessibleDescription().toStdString();
    int before = atFirst;
    for (const char* until : {"rub-hands", "scrub-skin", "press-edges"}) {
        visit.seeUntil(until);
        gui::settle(visit.page());
        EXPECT_EQ(lanes->height(), lanes->heightForWidth(lanes->width())) << until;
        EXPECT_GE(lanes->height(), before) << until;
        before = lanes->height();
    }
    EXPECT_GT(before, atFirst);
    visit.picture(QStringLiteral("visit-24-lanes-end"));
}

TEST(LanesView, TheFieldIsNotSolidBeforeItIsOpen) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeUntil("open-field");
    EXPECT_EQ(laneNow(visit, Lane::Field), std::nullopt);
    EXPECT_EQ(laneNow(visit, Lane::Cover), std::nullopt) << "the old dressing is in the waste";
    visit.seeUntil("set-out");
    EXPECT_EQ(laneNow(visit, Lane::Field), BarKind::Held);
}

}  // namespace
