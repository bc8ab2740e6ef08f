// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Times, intervals and numbers of the weekly dressing change against what is published. Each check
// names its source; "secondary" means that the value was read in a text that quotes the source,
// "from memory" that it still has to be compared with the document.
#include <gtest/gtest.h>

#include "clinicalpack.h"

namespace clinical {
namespace {

using packs::PhaseKind;

int leastSeconds(const packs::Step& step, PhaseKind kind) {
    int sum = 0;
    for (const packs::Phase& phase : step.phases)
        if (phase.kind == kind) sum += phase.minSeconds;
    return sum;
}

int targetOfWhole(const packs::Step& step) {
    int sum = step.handsOnSeconds;
    for (const packs::Phase& phase : step.phases) sum += phase.targetSeconds;
    return sum;
}

std::vector<packs::Phase> phasesOf(PhaseKind kind) {
    std::vector<packs::Phase> found;
    for (const packs::StepPlace& place : packs::stepsInOrder(weekly().pack))
        for (const packs::Phase& phase : place.step->phases)
            if (phase.kind == kind) found.push_back(phase);
    return found;
}

int daysOf(const std::string& dressing) {
    return packs::find(weekly().pack.schedule->dressings, dressing)->days;
}

bool cautionSays(const std::string& words) {
    return std::ranges::any_of(weekly().pack.cautions, [&](const packs::Caution& caution) {
        return says(caution.text, words);
    });
}

// INS Standards 2024, Standard 39 (secondary: a summary page that quotes it); CDC 2011 agrees
// (from memory).
TEST(ClinicalInterval, DressingsAreDueBySevenAndTwoDays) {
    EXPECT_EQ(daysOf("transparent"), 7);
    EXPECT_EQ(daysOf("gauze"), 2);
    EXPECT_EQ(daysOf("gauze-under"), 2) << "gauze under a film counts as gauze";
}

// INS Standards 2024, Standard 39 (secondary); CDC 2011 (from memory).
TEST(ClinicalInterval, DampLooseSoiledOrSoreIsDueAtOnce) {
    Ids ids;
    for (const auto& item : weekly().pack.schedule->changeNowIf) ids.push_back(item.id);
    for (const char* id : {"damp", "loose", "soiled", "skin"}) EXPECT_TRUE(isIn(id, ids)) << id;
    EXPECT_EQ(weekly().pack.schedule->source, "ins-2024");
}

// CDC 2011: more than 0.5 % chlorhexidine with alcohol (secondary: the sentence was seen quoted).
TEST(ClinicalAntiseptic, IsChlorhexidineAboveHalfAPercentInAlcohol) {
    EXPECT_EQ(weekly().pack.applies.antiseptic, Ids{"chlorhexidine-alcohol"});
    const auto& label = packs::find(weekly().pack.supplies, "applicator")->label;
    EXPECT_TRUE(says(label, "chlorhexidine 2 %"));
    EXPECT_TRUE(says(label, "in alcohol"));
}

// CDC 2011: with chlorhexidine contraindicated another antiseptic (secondary). Other bottles have
// other seconds, so this pack offers none and does not start.
TEST(ClinicalAntiseptic, AnAllergyToItLeavesThisPack) {
    const packs::Supply& applicator = *packs::find(weekly().pack.supplies, "applicator");
    EXPECT_TRUE(isIn("chlorhexidine", applicator.avoid));
    EXPECT_TRUE(isIn("alcohol", applicator.avoid));
    EXPECT_FALSE(applicator.instead.has_value());
}

// US drug label, 2 % chlorhexidine in 70 % isopropyl alcohol, DailyMed set id 0587e96b-623e-4397-
// 9195-bc5c696df53b (read): dry skin, 30 s of back-and-forth strokes. The halves across and along
// are common practice, no source.
TEST(ClinicalScrub, LastsThirtySecondsInTwoDirections) {
    const packs::Step& scrub = weekly().step("scrub-skin");
    EXPECT_GE(leastSeconds(scrub, PhaseKind::Scrub), 30);
    ASSERT_EQ(scrub.phases.size(), 2U);
    EXPECT_EQ(scrub.phases[0].motion, packs::Motion::Across);
    EXPECT_EQ(scrub.phases[1].motion, packs::Motion::Along);
    EXPECT_TRUE(scrub.continuous);
    EXPECT_EQ(scrub.phases[0].source, "label");
}

// The same label (read): about 30 s to dry; a common-practice addition: no shine left.
TEST(ClinicalScrub, DriesThirtySecondsAndUntilDry) {
    const packs::Step& dry = weekly().step("let-dry");
    EXPECT_GE(leastSeconds(dry, PhaseKind::Wait), 30);
    ASSERT_TRUE(dry.phases.at(0).until.has_value());
    EXPECT_TRUE(says(*dry.phases[0].until, "shine"));
}

// Common practice, no source: barrier film dries 30 s to 60 s.
TEST(ClinicalScrub, FilmDriesThirtyToSixtySeconds) {
    const packs::Phase& dry = weekly().step("film-dries").phases.at(0);
    EXPECT_GE(dry.minSeconds, 30);
    EXPECT_LE(dry.targetSeconds, 60);
    EXPECT_EQ(packs::findSource(weekly().pack, *dry.source)->standing,
              packs::Standing::CommonPractice);
}

// WHO hand hygiene guidelines 2009, Figure II.1: rub 20 to 30 s (secondary, and from memory).
TEST(ClinicalHands, EveryRubLastsTwentyToThirtySeconds) {
    const auto rubs = phasesOf(PhaseKind::Rub);
    EXPECT_EQ(rubs.size(), 3U);
    for (const packs::Phase& rub : rubs) {
        EXPECT_GE(rub.minSeconds, 20);
        EXPECT_LE(rub.targetSeconds, 30);
        EXPECT_TRUE(rub.until.has_value()) << "until dry";
    }
}

// WHO 2009, Figure II.2: 40 to 60 s for the whole wash (secondary, and from memory); CDC advice to
// the public: 20 s or more of rubbing (secondary).
TEST(ClinicalHands, WashingTakesFortyToSixtySecondsInAll) {
    const int whole =
        targetOfWhole(weekly().step("soap-wash")) + targetOfWhole(weekly().step("towel-dry"));
    EXPECT_GE(whole, 40);
    EXPECT_LE(whole, 60);
    EXPECT_GE(leastSeconds(weekly().step("soap-wash"), PhaseKind::Wash), 20);
}

// A public policy text of unproven quality gives 15 s as the least for any hand cleaning.
TEST(ClinicalHands, NoHandPhaseIsUnderFifteenSeconds) {
    for (const PhaseKind kind : {PhaseKind::Rub, PhaseKind::Wash})
        for (const packs::Phase& phase : phasesOf(kind)) EXPECT_GE(phase.minSeconds, 15);
}

// A public policy text: compare with the length at insertion, not only with the last one. The
// limit of three marks is common practice; the number is local policy, and the pack says so.
TEST(ClinicalMeasure, OneRuleForALineThatMoved) {
    const packs::Measure& length = *packs::find(weekly().pack.measures, "outside-length");
    EXPECT_TRUE(length.baseline);
    EXPECT_EQ(length.unit, "mm");
    EXPECT_EQ(length.way, packs::Way::Either);
    ASSERT_TRUE(length.callAt && length.markMm);
    EXPECT_EQ(*length.callAt, 3 * *length.markMm);
    EXPECT_FALSE(length.tellAt.has_value());
    EXPECT_EQ(packs::findSource(weekly().pack, length.source)->standing,
              packs::Standing::LocalPolicy);
}

// A public policy text: 3 cm more round the arm is linked to a clot.
TEST(ClinicalMeasure, AnArmThickerByThirtyMillimetresIsACall) {
    const packs::Measure& girth = *packs::find(weekly().pack.measures, "arm-girth");
    EXPECT_EQ(girth.way, packs::Way::More);
    EXPECT_TRUE(girth.baseline);
    EXPECT_EQ(girth.callAt, 30);
}

// CDC 2011 (from memory) and a public policy text: no ointment, never under water, shower covered.
TEST(ClinicalRule, CautionsKeepWaterBladesAndCuffsAway) {
    EXPECT_TRUE(cautionSays("No cream or ointment on the site"));
    EXPECT_TRUE(cautionSays("Never put the line under water"));
    EXPECT_TRUE(cautionSays("Shower only with a waterproof cover"));
    EXPECT_TRUE(cautionSays("No blood pressure cuff"));
    EXPECT_TRUE(cautionSays("No scissors, pins or razor"));
    EXPECT_TRUE(cautionSays("Never push a line in"));
    EXPECT_TRUE(cautionSays("No flame until it is dry")) << "the drug label, read";
}

// A public policy text, and secondary texts for the number: fever of 38.0 degrees Celsius.
TEST(ClinicalEmergency, FeverIsThirtyEightAndACallNow) {
    EXPECT_TRUE(says(weekly().drill("fever-redness").when, "38.0 degrees"));
    EXPECT_EQ(weekly().drill("fever-redness").call, packs::Call::TeamNow);
}

// A public policy text on air in a line: clamp first, then left side and head low, then help.
TEST(ClinicalEmergency, BreathlessnessClampsThenTurnsThenCalls) {
    const packs::Drill& drill = weekly().drill("breathless");
    EXPECT_EQ(drill.call, packs::Call::Emergency);
    ASSERT_GE(drill.doTexts.size(), 3U);
    EXPECT_TRUE(says(drill.doTexts[0], "clamp"));
    EXPECT_TRUE(says(drill.doTexts[1], "left side, head low"));
    EXPECT_TRUE(says(drill.doTexts[2], "emergency number"));
}

// A public policy text on damage to a line.
TEST(ClinicalEmergency, ABrokenLineIsClampedBetweenBreakAndBody) {
    const auto& steps = weekly().drill("line-broken").doTexts;
    EXPECT_TRUE(std::ranges::any_of(steps, [](const packs::Text& text) {
        return says(text, "between the break and the body");
    }));
}

// A public policy text gives pressure and lying flat for a planned removal; that it also serves
// when a line falls out is this pack's own extension.
TEST(ClinicalEmergency, ALineThatCameOutIsPressedAndNeverPushed) {
    const auto& steps = weekly().drill("line-pulled").doTexts;
    EXPECT_TRUE(says(steps.at(0), "Never push it in"));
    EXPECT_TRUE(std::ranges::any_of(steps, [](const packs::Text& text) {
        return says(text, "gauze on the site and lie flat");
    }));
}

}  // namespace
}  // namespace clinical
