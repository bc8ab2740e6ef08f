// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/papers/sample.h"

/// What came late or went by judgement is seen on the chart. Rules of our own,
/// as a chart shows corrections by common practice: nothing is wiped out, both times are said.
namespace render {
namespace {

TEST(Remark, LateEntrySaysBothTimesAndWhyItIsLate) {
    Sample sample(Stage::NotYet);
    support::Ward& ward = sample.ward();
    const std::int64_t now = ward.clock().now().wallMs, happened = now - 5 * 3'600'000;
    desk::Command command =
        ward.desk().command(record::AddLateEntry{.learner = ward.learner(),
                                                 .text = "Washed her hands unasked.",
                                                 .reason = "The laptop was charging"});
    command.atMs = happened;
    ASSERT_TRUE(ward.desk().handle(command).ok());
    const PaperData data = sample.data();
    ASSERT_EQ(data.lateEntries.size(), 1u);
    EXPECT_EQ(data.lateEntries[0].written.atMs, happened);
    EXPECT_EQ(data.lateEntries[0].written.wallMs, now);
    const QString text = Pdf(chartRecord(data, english())).text();
    const auto clockOf = [&data](std::int64_t ms) {
        const int minutes = int((ms / 60'000 + data.lateEntries[0].written.offsetMinutes) % 1440);
        return QStringLiteral("%1:%2")
            .arg(minutes / 60, 2, 10, QLatin1Char('0'))
            .arg(minutes % 60, 2, 10, QLatin1Char('0'));
    };
    for (const QString& words :
         {QStringLiteral("Late entry. Happened:"), QStringLiteral("Washed her hands unasked."),
          QStringLiteral("The laptop was charging"), clockOf(happened), clockOf(now)})
        EXPECT_TRUE(text.contains(words)) << words.toStdString();
}

TEST(Judgement, IsSaidOfStepsThatThePlanDidNotCover) {
    Sample sample(Stage::NotYet);
    support::Ward& ward = sample.ward();
    const QString words =
        QStringLiteral("marked by the teacher's judgement, the plan did not cover it");
    const PaperData before = sample.data();
    EXPECT_FALSE(Pdf(chartRecord(before, english())).text().contains(words));
    ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    ward.doStepInHand();
    ward.must(practice::SeeLapse{.lapses = {"line-out"}});
    ward.must(practice::TakeOver{.why = "the line came out"});
    ward.doStepInHand();
    const PaperData after = sample.data();
    const PaperVisit& visit = after.visits.back();
    EXPECT_FALSE(visit.steps.at(0).byJudgement);
    EXPECT_TRUE(visit.steps.at(1).byJudgement);
    EXPECT_NE(canonicalJson(after).find("\"by_judgement\":true"), std::string::npos);
    EXPECT_TRUE(Pdf(chartRecord(after, english())).text().contains(words));
}

}  // namespace
}  // namespace render
