// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the chart says of how a visit went on: who taught when, pauses, steps that did not apply,
// phases broken off, measures that nobody took. Rules of our own, no source.
#include "record/card.h"
#include "render/words.h"
#include "support/paths.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

QString q(const char* text) { return QString::fromUtf8(text); }

/// One change on the patient, 14:00 on, that a colleague goes on with, and that rests once.
class Course : public testing::Test {
  protected:
    Course() {
        ward().openVisit(practice::Way::ReturnDemonstration, practice::On::Patient);
        goTo("measure-arm");
    }
    support::Ward& ward() { return sample.ward(); }
    std::string hand() { return practice::recordInHand(ward().visit().state)->step; }
    void goTo(const std::string& step) {
        while (practice::inHand(ward().visit().state) && hand() != step && !HasFailure())
            ward().doStepInHand();
        ASSERT_EQ(hand(), step);
    }
    void pass(std::int64_t ms) { ward().clock().advanceMs(ms); }
    void pauseFor(std::int64_t ms) {
        ward().must(practice::Pause{});
        pass(ms);
        ward().must(practice::Resume{});
    }
    base::StaffId handOverTo(const char* name, const char* initials) {
        const auto to = ward().addStaff(name, initials);
        ward().must(practice::HandOver{.to = to});
        ward().desk().workAs(to);
        return to;
    }
    void finish() {
        ward().doAllSteps();
        ward().must(practice::CloseVisit{});
    }
    void change() {
        ward().must(practice::RecordChange{.dressing = "transparent", .site = "Clean"});
    }
    QString clock() {
        const base::Instant now = ward().clock().now();
        return clockWords(now.wallMs, now.offsetMinutes);
    }
    PaperData data() { return sample.data(); }
    QString chart() { return Pdf(chartRecord(data(), english())).text(); }
    /// One block of the chart on a page as wide as words need: no sentence is broken.
    static QString row(const PaperData& data) {
        QString words;
        for (const Block& block : chartRecord(data, english()).blocks)
            if (const auto* table = std::get_if<Table>(&block))
                for (const Row& one : table->rows)
                    for (const Text& cell : one.cells) words += cell.text + QLatin1Char('\n');
        return words;
    }
    QString said() { return row(data()); }

    Sample sample{Stage::NotYet};
};

TEST_F(Course, AHandOverSaysToWhomWhenAndFromWhichStep) {
    const QString at = clock();
    handOverTo("Ben Ito", "BI");
    finish();
    EXPECT_TRUE(said().contains(q("Taught by \u2068Solveig Aranda\u2069\nHanded over at %1 to "
                                  "\u2068Ben Ito\u2069, from step 5 on")
                                    .arg(at)))
        << said().toStdString();
    EXPECT_TRUE(chart().contains(q("Handed over at ")));
}

TEST_F(Course, AVisitTakenOnByOnesOwnWordSaysSo) {
    const auto ben = ward().addStaff("Ben Ito", "BI");
    ward().desk().workAs(ben);
    ward().must(practice::HandOver{.to = ben});
    const QString at = clock();
    finish();
    EXPECT_TRUE(
        said().contains(q("\u2068Ben Ito\u2069 went on with it at %1, by their own word").arg(at)));
}

TEST_F(Course, APauseSaysFromWhenToWhenAndHowLong) {
    const QString from = clock();
    pauseFor(370'000);
    const QString until = clock();
    EXPECT_TRUE(said().contains(q("paused %1\u2013%2 (6 min 10 s)").arg(from, until)));
    pauseFor(60'000);
    finish();
    EXPECT_TRUE(said().contains(q("(7 min 10 s in all)"))) << said().toStdString();
}

TEST_F(Course, ThatTheTeacherTookOverSaysWhoWhenAndWhy) {
    ward().must(practice::TakeOver{.why = "Her hands shook"});
    const QString words = q("\u2068Solveig Aranda\u2069 took the steps over at %1, from step 5 on: "
                            "\u2068Her hands shook\u2069")
                              .arg(clock());
    const base::CommandId said = ward().visit().events.back().id;
    ward().doStepInHand();
    EXPECT_TRUE(this->said().contains(words)) << this->said().toStdString();
    Sample other(Stage::NotYet);
    EXPECT_FALSE(row(other.data()).contains(q("took the steps over")));
    EXPECT_FALSE(said.text().empty());
}

TEST_F(Course, ATakeOverThatWasTakenBackIsNone) {
    ward().must(practice::TakeOver{.why = "A slip"});
    ward().must(practice::TakeBack{.entry = ward().visit().events.back().id});
    EXPECT_FALSE(said().contains(q("took the steps over")));
}

TEST_F(Course, AnAbsenceSaysHowLong) {
    pass(240'000);
    const QString back = clock();
    ward().must(practice::ComeBack{.by = practice::BackBy::Absence, .awayMs = 240'000});
    EXPECT_TRUE(said().contains(q("the visit was left, or the machine slept, ")));
    EXPECT_TRUE(said().contains(q("%1 (4 min)").arg(back))) << said().toStdString();
}

// In neither number, and named.
TEST_F(Course, StepsThatDoNotApplyAreLeftOutOfBothNumbers) {
    ward().must(practice::SkipStep{{.step = "measure-arm"}});
    finish();
    const PaperData shown = data();
    const auto& steps = shown.visits.back().steps;
    ASSERT_EQ(steps.size(), 52u);
    EXPECT_TRUE(row(shown).contains(q("\n51 of 51\n"))) << row(shown).toStdString();
    EXPECT_TRUE(row(shown).contains(q("did not apply: 5")));
    EXPECT_TRUE(row(shown).contains(q("\n3 of 3\n"))) << "of its competency";
}

TEST_F(Course, APhaseThatWasBrokenOffSaysSoAndThatItBeganAgain) {
    goTo("scrub-skin");
    ward().must(practice::BeginPhase{.step = "scrub-skin", .phase = "across"});
    pass(7'200);
    ward().must(practice::SeeLapse{.lapses = {"skin-touched"}});
    ward().must(practice::CatchAlone{});
    EXPECT_TRUE(said().contains(q("broken off after 7.2 s\n"))) << said().toStdString();
    finish();
    EXPECT_TRUE(said().contains(q("broken off after 7.2 s; begun again:\n15.0 s\n")));
    EXPECT_FALSE(said().contains(q("\n0.0 s")));
    const PaperData shown = data();
    int phases = 0;
    for (const PaperStep& step : shown.visits.back().steps) phases += int(step.phases.size());
    for (const PaperStep& step : shown.visits.back().waysBack) phases += int(step.phases.size());
    EXPECT_TRUE(said().contains(q("\n%1 of %1\n").arg(phases - 1)))
        << "what was begun again counts once: " << said().toStdString();
}

// What was found did not happen after the step in which it was found.
TEST_F(Course, WhatIsToldLateWasFoundThereOrHappenedSince) {
    goTo("count-marks");
    practice::SeeLapse late{.lapses = {"skin-hurt"}, .happened = "look-site"};
    ward().must(late);
    EXPECT_TRUE(said().contains(q("\nNoticed late, happened after: ")));
    EXPECT_FALSE(said().contains(q("\nTold late, found at: ")));
    late.foundThen = true;
    ward().must(late);
    EXPECT_TRUE(said().contains(q("\nTold late, found at: "))) << said().toStdString();
}

TEST_F(Course, WhereNobodyCanTellWhenItWasBrokenOffNoTimeIsSaid) {
    goTo("scrub-skin");
    ward().must(practice::BeginPhase{.step = "scrub-skin", .phase = "across"});
    pass(240'000);
    ward().must(practice::ComeBack{.by = practice::BackBy::Absence, .awayMs = 230'000});
    EXPECT_TRUE(said().contains(q("broken off\n")));
    EXPECT_FALSE(said().contains(q("\n0.0 s")));
}

TEST_F(Course, AMeasureThatAStepAsksForAndNobodyTookIsSaid) {
    ward().must(practice::SkipStep{{.step = "measure-arm"}});
    ward().doAllSteps();
    ward().must(practice::TakeMeasure{.measure = "outside-length", .mm = 40});
    change();
    ward().must(practice::CloseVisit{});
    const PaperData shown = data();
    const auto& missing = shown.visits.back().missing;
    ASSERT_EQ(missing.size(), 1u) << "the arm needed no measuring, the length was read as found";
    EXPECT_EQ(missing[0].moment, practice::Moment::Left);
    EXPECT_TRUE(
        said().contains(q("as at insertion (40 mm).\nas left: could not be measured (\u2068The "
                          "tape was not at hand\u2069).")))
        << said().toStdString();
}

TEST_F(Course, EveryMeasureNotTakenIsSaidOnceOfItsMoment) {
    ward().doAllSteps();
    ward().must(practice::CloseVisit{});
    EXPECT_EQ(data().visits.back().missing.size(), 3u) << "found and left, and round the arm";
    Sample arm(Stage::NotYet);
    for (const PaperVisit& visit : arm.data().visits)
        EXPECT_TRUE(visit.missing.empty()) << "on a practice arm there is nothing to be read";
}

TEST_F(Course, WhatWasFoundAndDoneInAnEarlierVisitStaysInTheChart) {
    ward().doAllSteps();
    ward().must(practice::TakeMeasure{.measure = "outside-length", .mm = 46});
    ward().must(practice::RecordChange{
        .dressing = "gauze", .site = "A little red", .tolerance = "It stung"});
    ward().must(practice::CloseVisit{});
    pass(86'400'000);
    ward().openVisit(practice::Way::ReturnDemonstration, practice::On::Patient);
    ward().doAllSteps();
    change();
    ward().must(practice::CloseVisit{});
    for (const char* words : {"Gauze dressing", "A little red", "It stung", "46 mm"})
        EXPECT_TRUE(said().contains(q(words))) << words;
}

// The card of the list goes by the newest change whoever made it; so does every paper.
TEST_F(Course, NextDueGoesByTheNewestChangeWhoeverMadeIt) {
    ward().doAllSteps();
    change();
    ward().must(practice::CloseVisit{});
    EXPECT_FALSE(said().contains(q("Reckoned from")));
    const auto son = base::LearnerId::random();
    ward().must(record::AddLearner{
        .learner = son, .name = "Chidi Okonjo", .relationship = "son", .language = "en"});
    ward().must(
        record::AskConsent{.learner = son, .toTeach = true, .toTell = true, .givenBy = "patient"});
    pass(3 * 86'400'000LL);
    practice::OpenVisit his =
        ward().opening(practice::Way::ReturnDemonstration, practice::On::Patient);
    his.learner = son;
    ward().must(his);
    ward().doAllSteps();
    change();
    ward().must(practice::CloseVisit{});
    const PaperData shown = data();
    const auto due = record::dueOf(*ward().desk().view().record, ward().shelf());
    ASSERT_TRUE(due.has_value());
    EXPECT_TRUE(row(shown).contains(dateWords(*due, english()) + q("; at once when damp")))
        << row(shown).toStdString();
    EXPECT_TRUE(row(shown).contains(q("Reckoned from the change of ")));
    EXPECT_TRUE(row(shown).contains(q("Chidi Okonjo")));
    EXPECT_TRUE(chartNote(shown, english()).contains(dateWords(*due, english())));
}

TEST_F(Course, IsWrittenForLookingAt) {
    ward().must(practice::SkipStep{{.step = "measure-arm"}});
    handOverTo("Ben Ito", "BI");
    pauseFor(370'000);
    goTo("scrub-skin");
    ward().must(practice::BeginPhase{.step = "scrub-skin", .phase = "across"});
    pass(7'200);
    ward().must(practice::SeeLapse{.lapses = {"skin-touched"}});
    ward().must(practice::CatchAlone{});
    ward().doAllSteps();
    ward().must(practice::TakeMeasure{.measure = "outside-length", .mm = 40});
    change();
    ward().must(practice::CloseVisit{});
    const Paper paper(chartRecord(data(), english()));
    EXPECT_LE(paper.pageCount(), 4);
    EXPECT_TRUE(
        paper.writePdf(QString::fromStdString(support::forLooking("paper_course_chart.pdf"))).ok());
}

}  // namespace
}  // namespace render
