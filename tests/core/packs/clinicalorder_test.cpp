// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Orders and rules of the weekly dressing change. An order is proven by the model: without the
// earlier step no sequence of steps and ways back, however often repeated, lets the later one fit.
// "Policy text" is a public text on lines of unproven quality; secondary and from memory as marked.
#include <gtest/gtest.h>

#include "clinicalpack.h"
#include "procedure/lapsequestion.h"

namespace clinical {
namespace {

using packs::Action;

const Ids rubs{"rub-hands", "rub-again", "rub-last"};

// Policy text, and the WHO rule on gloves (secondary).
TEST(ClinicalOrder, HandsAreCleanBeforeCleanGloves) {
    EXPECT_TRUE(weekly().alwaysAfter("clean-gloves-on", rubs));
    EXPECT_TRUE(weekly().alwaysAfter("clean-gloves-on", {"soap-wash"}));
}

// Secondary: skill texts. Masks are on before the site and before the field are open.
TEST(ClinicalOrder, MasksComeBeforeSiteAndField) {
    for (const char* step : {"peel-low", "open-field"}) {
        EXPECT_TRUE(weekly().alwaysAfter(step, {"mask-on", "helper-mask"})) << step;
        EXPECT_TRUE(weekly().alwaysAfter(step, {"turn-faces"})) << step;
    }
}

// Secondary, with the WHO rule that hands are cleaned after gloves: off, rub, sterile on.
TEST(ClinicalOrder, GlovesOffThenRubThenSterileGloves) {
    const auto gloved = weekly().stateAfter("measure-length");
    EXPECT_TRUE(weekly().couldReach(gloved, "sterile-gloves-on", {}));
    EXPECT_FALSE(weekly().couldReach(gloved, "sterile-gloves-on", rubs));
    EXPECT_TRUE(isIn("gloves-on", weekly().step("rub-again").forbids));
    EXPECT_TRUE(isIn("gloves-on", weekly().step("sterile-gloves-on").forbids));
}

// Secondary: the old dressing is off, with clean gloves, before sterile gloves go on.
TEST(ClinicalOrder, RemovalComesBeforeSterileGloves) {
    EXPECT_TRUE(weekly().alwaysAfter("peel-low", {"clean-gloves-on"}));
    EXPECT_TRUE(weekly().alwaysAfter("sterile-gloves-on", {"peel-low", "lift-cover"}));
    EXPECT_TRUE(weekly().alwaysAfter("sterile-gloves-on", {"gloves-off"}));
}

// Secondary: three texts on the direction; policy text on the angle.
TEST(ClinicalOrder, PeelingGoesLowTowardTheSite) {
    const packs::Step& peel = weekly().step("peel-low");
    EXPECT_TRUE(says(peel.doText, "low and slow, toward the site and the shoulder"));
    EXPECT_TRUE(says(weekly().step("loosen-edge").doText, "near the hub"));
    EXPECT_TRUE(isIn("line-steady", peel.needs));
    EXPECT_EQ(weekly().way("peel-low", "peeled-up", procedure::Seen::During)->plan,
              Ids{"loosen-edge"});
}

// Secondary: the site is looked at before the antiseptic.
TEST(ClinicalOrder, LookingComesBeforeScrubbing) {
    EXPECT_TRUE(weekly().alwaysAfter("scrub-skin", {"look-site"}));
}

// Policy text, INS (from memory): the outside length at every change, before it is covered.
TEST(ClinicalOrder, MeasuringComesBeforeTheDeviceAndTheDressing) {
    EXPECT_TRUE(weekly().alwaysAfter("open-device", {"measure-length", "measure-again"}));
    EXPECT_TRUE(weekly().alwaysAfter("lay-dressing", {"count-left", "measure-again"}));
}

// Policy text: scrub, dry, barrier film, dry, securement, dressing, label.
TEST(ClinicalOrder, FromScrubToLabel) {
    const Ids chain{"scrub-skin",   "let-dry",      "put-film",    "film-dries",
                    "stick-device", "close-device", "lay-dressing"};
    for (std::size_t later = 1; later < chain.size(); ++later)
        for (std::size_t earlier = 0; earlier < later; ++earlier)
            EXPECT_TRUE(weekly().alwaysAfter(chain[later], {chain[earlier]}))
                << chain[earlier] << " before " << chain[later];
    EXPECT_TRUE(weekly().alwaysAfter("stick-label", {"lay-dressing"}));
}

// The drug label (read): nothing goes on wet skin, also after a second scrub.
TEST(ClinicalOrder, AfterASecondScrubItDriesAgain) {
    const Ids way = weekly().wayBack("close-device", "skin-touched");
    EXPECT_TRUE(inOrder(way, {"scrub-skin", "let-dry", "put-film", "film-dries"}));
}

// Common practice, no source: a strip or the helper's hand holds the line before the device is
// opened, and one of them holds it until the new device is closed.
TEST(ClinicalOrder, TheLineIsHeldFromDeviceToDevice) {
    EXPECT_TRUE(weekly().alwaysAfter("open-device", {"hold-line", "hold-now"}));
    EXPECT_TRUE(weekly().alwaysAfter("let-go", {"close-device"}));
    const auto* guard = packs::find(weekly().pack.guards, "line-is-held");
    ASSERT_NE(guard, nullptr);
    EXPECT_EQ(guard->whileAll, Ids{"device-open"});
    EXPECT_EQ(guard->holds, Ids{"line-held"});
    const auto held = weekly().conditions({"line-held"});
    const auto open = weekly().conditions({"device-open"});
    bool wasOpen = false;
    for (const auto& state : procedure::nominalStates(weekly().model)) {
        wasOpen = wasOpen || state.contains(open);
        EXPECT_TRUE(!state.contains(open) || state.contains(held));
    }
    EXPECT_TRUE(wasOpen);
}

// Common practice, no source: with nothing holding the line, holding it is the first thing done.
TEST(ClinicalRule, ALineThatIsNotHeldIsHeldFirstThenMeasured) {
    int seen = 0;
    for (const procedure::WayBack& way : weekly().report.ways) {
        if (way.lapse != "not-held") continue;
        ++seen;
        ASSERT_FALSE(way.plan.empty());
        EXPECT_EQ(way.plan.front(), "hold-now") << way.step;
        EXPECT_TRUE(isIn("measure-again", way.plan)) << way.step;
    }
    EXPECT_GT(seen, 20);
}

// Common practice, no source: a line that was loose is held and measured; that spoils nothing, so
// the device and the dressing that went on since stay on.
TEST(ClinicalRule, ALooseLineSeenLateLeavesTheDressingOn) {
    const auto number = [](const char* id) { return packs::findStep(weekly().pack, id).number; };
    procedure::LapseQuestion question;
    question.step = number("lay-dressing");
    question.happened = number("open-device");
    question.lapses = {weekly().model.lapseIndex("not-held").value()};
    const auto answer = procedure::answerQuestion(weekly().model, question);
    ASSERT_EQ(answer.plan.outcome, procedure::PlanOutcome::Found);
    Ids way;
    for (const int index : answer.plan.plan.operators)
        way.push_back(weekly().model.operators[static_cast<std::size_t>(index)].id);
    EXPECT_EQ(way, (Ids{"hold-now", "measure-again"}));
}

// The drug label (read) and the policy text: no fanning, blowing, blotting or wiping.
TEST(ClinicalRule, BlowingItDryMeansScrubbingAgain) {
    EXPECT_EQ(weekly().wayBack("let-dry", "blown-dry"),
              (Ids{"scrub-skin", "wipe-line", "let-dry"}));
    EXPECT_TRUE(says(weekly().step("let-dry").observe, "No blowing, fanning, blotting or wiping"));
}

// Secondary: the cleaned area is as large as the dressing.
TEST(ClinicalRule, ATooSmallAreaIsScrubbedAgain) {
    EXPECT_EQ(weekly().wayBack("scrub-skin", "area-small"), Ids{"scrub-skin"});
}

// CDC 2011 (from memory): the site is not felt again after the antiseptic.
TEST(ClinicalRule, TouchedSkinIsScrubbedAndDriedAgain) {
    EXPECT_EQ(weekly().wayBack("let-dry", "skin-touched"), (Ids{"scrub-skin", "let-dry"}));
}

// WHO (secondary): hands that look dirty need soap and water; rub is not enough.
TEST(ClinicalRule, DirtyHandsAreWashedNotRubbed) {
    EXPECT_EQ(weekly().wayBack("rub-hands", "hands-soiled"),
              (Ids{"soap-wash", "towel-dry", "rub-hands"}));
}

// Policy text on key parts: stop and replace. That the gloves follow is local policy.
TEST(ClinicalRule, SpoiledGlovesAndFieldAreReplaced) {
    EXPECT_EQ(weekly().wayBack("scrub-skin", "glove-touched"),
              (Ids{"drop-gloves", "rub-again", "sterile-gloves-on"}));
    EXPECT_TRUE(
        inOrder(weekly().wayBack("scrub-skin", "field-touched"),
                {"take-off-field", "rub-again", "open-field", "set-out", "sterile-gloves-on"}));
    EXPECT_EQ(weekly().wayBack("ready-dressing", "dressing-touched"), Ids{"ready-dressing"});
}

// Policy text: never push a line back, do not use it until the tip is known. Common practice: the
// change in hand is finished.
TEST(ClinicalRule, AMovedLineIsFinishedNotUsedAndReported) {
    for (const char* id : {"line-moved", "pushed-in"}) {
        EXPECT_EQ(packs::findLapse(weekly().pack, id)->action, Action::FinishAndCall) << id;
        EXPECT_TRUE(isIn("do-not-use", weekly().wayBack("count-left", id))) << id;
    }
    EXPECT_EQ(weekly().wayBack("measure-length", "line-moved"), Ids{"do-not-use"});
    EXPECT_TRUE(says(weekly().step("do-not-use").doText, "do not use the line"));
}

// Policy text: an adhesive device is renewed at every change; an anchor under the skin stays in.
TEST(ClinicalRule, TheDeviceIsRenewedAndAnAnchorIsAnotherPack) {
    EXPECT_EQ(weekly().pack.applies.securement, Ids{"adhesive-device"});
    EXPECT_TRUE(isIn("device-right", weekly().pack.goal));
    EXPECT_TRUE(isIn("device-old-on", weekly().step("open-device").ends));
    EXPECT_EQ(packs::find(weekly().pack.supplies, "device")->perChange, 1);
}

// Policy text: the label carries the date and is never over the site; tape is sterile.
TEST(ClinicalRule, LabelAndTape) {
    EXPECT_TRUE(says(weekly().step("write-label").observe, "Date done, date due within 7 days"));
    EXPECT_TRUE(says(weekly().step("stick-label").doText, "never over the site"));
    EXPECT_EQ(weekly().wayBack("stick-label", "label-over-site"),
              (Ids{"write-label", "stick-label"}));
    EXPECT_TRUE(says(packs::find(weekly().pack.supplies, "strip")->label, "Sterile"));
}

// From memory, and only where a line has clamps: a clamp is closed while the line is idle.
TEST(ClinicalRule, ClampsAreClosedBeforeTheSiteIsOpen) {
    EXPECT_TRUE(
        weekly().alwaysAfter("peel-low", {"look-clamps", "close-clamp", "close-clamp-gloved"}));
    EXPECT_EQ(packs::findLapse(weekly().pack, "cap-off")->action, Action::StopAndCall);
}

}  // namespace
}  // namespace clinical
