// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What has to last is said with how long, at home as well as in the visit. The seconds are the
// pack's, which names its sources for them.
#include "render/papers/papers.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

QString stepsPrinted(const PaperData& data) {
    const auto document = stepsPaper(data, english());
    EXPECT_TRUE(document.has_value());
    return document ? Pdf(*document).text() : QString();
}

TEST(StepsTimes, EachPhaseOfAStepIsAskedForInWords) {
    const QString text = stepsPrinted(Sample(Stage::NotYet).steps("en"));
    for (const char* words : {"Scrub across: 15 seconds then Scrub along: 15 seconds",
                              "Let it dry: at least 30 seconds. Keep on until: No shine is left",
                              "Let the film dry: 45 seconds, never less than 30 seconds. Keep on "
                              "until: The film is dry",
                              "Rub with soap: 30 seconds, never less than 20 seconds"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << '\n' << text.toStdString();
}

TEST(StepsTimes, TheMostIsSaidWhereThePackHasOne) {
    PaperData data = Sample(Stage::NotYet, "clean-hands").steps("en");
    data.steps->parts.front().steps.front().phases = {{{"Press", ""}, 60, 60, 120, std::nullopt}};
    EXPECT_TRUE(stepsPrinted(data).contains(
        QStringLiteral("Press: 60 seconds, never more than 120 seconds")));
}

// The pack's words of it are there in both; the second has one sign in every language (SI brochure,
// 9th edition, from memory).
TEST(StepsTimes, StandInBothLanguages) {
    const QString text = stepsPrinted(Sample(Stage::NotYet, "clean-hands").steps("es"));
    EXPECT_TRUE(text.contains(QStringLiteral("Frote con jabón: \u206830 s\u2069")) ||
                text.contains(QStringLiteral("Frote con jabón: 30 s")))
        << text.toStdString();
}

}  // namespace
}  // namespace render
