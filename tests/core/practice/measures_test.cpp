// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// On the patient a step whose point is a measure passes with its figure, or with the reason why
// there is none. The rule and the figures are our own, no source.
#include <gtest/gtest.h>

#include "core/practice/sitting.h"

namespace practice {
namespace {

using base::Code;
using sitting::Sitting;

const char* const dressing = "weekly-dressing-upper-arm";

TakeMeasure reading(const char* measure, Moment moment, std::optional<int> mm,
                    std::optional<int> marks = {}) {
    return {.measure = measure, .moment = moment, .mm = mm, .marks = marks};
}

/// What became of the measure of one step.
Measured measuredAt(const Sitting& visit, const std::string& step) {
    for (const MeasureOfStep& one : measuresOf(visit.taught.pack, visit.state))
        if (one.step == step) return one.measured;
    ADD_FAILURE() << step << " has no measure";
    return Measured::No;
}

TEST(Measures, OnThePatientNoneOfTheirStepsPassesWithoutTheFigure) {
    Sitting visit(dressing);
    visit.open();
    for (const char* step : {"measure-arm", "measure-length", "count-left"}) {
        visit.goTo(step);
        for (StepRecord& record : visit.state.steps) record.measured = Measured::No;
        EXPECT_EQ(visit.say(SeeStep{{.step = step}}), Code::MeasureMissing) << step;
        EXPECT_EQ(visit.say(OverlookStep{{.step = step}}), Code::MeasureMissing) << step;
        visit.doStep();
        EXPECT_EQ(visit.help(step), Help::Unprompted) << step;
        ASSERT_FALSE(visit.state.readings.empty()) << step;
        EXPECT_EQ(visit.state.readings.back().step, step);
    }
}

TEST(Measures, OffThePatientNothingIsAsked) {
    for (const On on : {On::PracticeArm, On::TalkedThrough}) {
        Sitting visit(dressing, on);
        visit.open();
        visit.goTo("measure-arm");
        EXPECT_EQ(visit.say(MissMeasure{.step = "measure-arm", .why = "no tape"}),
                  Code::NotOnPatient);
        visit.must(SeeStep{{.step = "measure-arm"}});
        EXPECT_TRUE(measuresOf(visit.taught.pack, visit.state).empty());
    }
}

TEST(Measures, WhyThereIsNoneIsKeptForTheChart) {
    Sitting visit(dressing);
    visit.open();
    visit.goTo("measure-arm");
    EXPECT_EQ(visit.say(MissMeasure{.step = "measure-arm", .why = ""}), Code::BadField);
    EXPECT_EQ(visit.say(MissMeasure{.step = "clean-table", .why = "x"}), Code::MeasureUnknown);
    visit.must(MissMeasure{.step = "measure-arm", .why = "A cast is on it."});
    EXPECT_EQ(visit.say(MissMeasure{.step = "measure-arm", .why = "x"}), Code::MeasureUnknown)
        << "said already";
    visit.must(SeeStep{{.step = "measure-arm"}});
    const auto all = measuresOf(visit.taught.pack, visit.state);
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(all.front(), (MeasureOfStep{.step = "measure-arm",
                                          .measure = "arm-girth",
                                          .measured = Measured::CouldNot,
                                          .why = "A cast is on it."}));
    EXPECT_EQ(all.back().step, "count-left");
    EXPECT_EQ(all.back().moment, Moment::Left);
    EXPECT_EQ(all.back().measured, Measured::No);
}

TEST(Measures, MillimetresAnswerForEveryStepThatAsksForThemACountForItsOwn) {
    for (const bool isCount : {true, false}) {
        Sitting visit(dressing);
        visit.open();
        visit.goTo("count-marks");
        visit.must(isCount ? reading("outside-length", Moment::Found, {}, 4)
                           : reading("outside-length", Moment::Found, 40, 4));
        visit.must(SeeStep{{.step = "count-marks"}});
        EXPECT_EQ(visit.say(SeeStep{{.step = "measure-length"}}),
                  isCount ? std::optional(Code::MeasureMissing) : std::nullopt);
        EXPECT_EQ(measuredAt(visit, "count-left"), Measured::No) << "as left is another";
    }
}

TEST(Measures, OfAnotherMomentOrAnotherMeasureAnswersForNone) {
    Sitting visit(dressing);
    visit.open();
    visit.goTo("measure-arm");
    visit.must(reading("outside-length", Moment::Found, 40));
    visit.must(reading("arm-girth", Moment::Left, 280));
    EXPECT_EQ(visit.say(SeeStep{{.step = "measure-arm"}}), Code::MeasureMissing);
    visit.must(reading("arm-girth", Moment::Found, 280));
    visit.must(SeeStep{{.step = "measure-arm"}});
}

TEST(Measures, TakenBackTheFigureIsOwedAgain) {
    Sitting visit(dressing);
    visit.open();
    visit.goTo("measure-arm");
    const auto said = visit.must(reading("arm-girth", Moment::Found, 280));
    visit.must(TakeBack{.entry = said});
    EXPECT_TRUE(visit.state.readings.empty());
    EXPECT_EQ(visit.say(SeeStep{{.step = "measure-arm"}}), Code::MeasureMissing);
}

TEST(Measures, AfterALapseWhatIsStillToBeDoneIsMeasuredAnew) {
    Sitting visit(dressing);
    visit.open();
    visit.goTo("measure-length");
    visit.must(reading("outside-length", Moment::Found, 40));
    visit.must(Sitting::lapse({"line-tugged"}));
    visit.goBack();
    EXPECT_EQ(visit.say(SeeStep{{.step = "measure-length"}}), Code::MeasureMissing);
    visit.doStep();
    visit.must(Sitting::lapse({"line-tugged"}));  // measured, and spoiled again
    ASSERT_TRUE(visit.state.wayBack.has_value());
    while (visit.state.wayBack && visit.hand() != "measure-length" &&
           visit.hand() != "measure-again")
        visit.doStep();
    ASSERT_TRUE(visit.state.wayBack.has_value());
    EXPECT_EQ(visit.say(SeeStep{{.step = visit.hand()}}), Code::MeasureMissing)
        << "the way back asks too";
}

TEST(Measures, TheRestOfAPartStopsBeforeOneThatIsOwed) {
    for (const On on : {On::Patient, On::PracticeArm}) {
        Sitting visit(dressing, on);
        visit.open();
        visit.goTo("measure-arm");
        EXPECT_EQ(restOfPart(visit.taught, visit.state).empty(), on == On::Patient);
    }
}

TEST(Measures, WhatWasWrittenDownAfterItsStepCountsForTheChart) {
    Sitting visit(dressing);
    visit.open();
    visit.goTo("measure-arm");
    visit.must(SkipStep{{.step = "measure-arm"}});
    EXPECT_EQ(measuredAt(visit, "measure-arm"), Measured::No);
    visit.must(reading("arm-girth", Moment::Found, 280));
    EXPECT_EQ(measuredAt(visit, "measure-arm"), Measured::Taken);
}

}  // namespace
}  // namespace practice
