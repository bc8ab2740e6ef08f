// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the chart record says of a line that was corrected or removed. Rules of our own, no source.
#include "render/papers/gather.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

TEST(LineOfThePaper, SaysWhatItReadBeforeItWasCorrectedAndThatItWasRemoved) {
    Sample sample(Stage::NotYet);
    const auto text = [&sample] {  // however its lines break
        return Pdf(chartRecord(sample.data(), english())).text().simplified();
    };
    support::Ward& ward = sample.ward();
    record::AddLine line = ward.desk().view().record->lines.front().said;
    line.outsideMm = 55;
    ward.must(record::CorrectLine{line, "typed wrong"});
    line.lumens = 2;  // the paper does not show it, so it says nothing of it
    ward.must(record::CorrectLine{line, "two hubs"});
    const QString corrected = text();
    EXPECT_TRUE(corrected.contains(QStringLiteral("outside length at insertion 55 mm")));
    EXPECT_TRUE(corrected.contains(QStringLiteral("Line before")));
    EXPECT_TRUE(corrected.contains(QStringLiteral("outside length at insertion 40 mm")));
    EXPECT_TRUE(corrected.contains(QStringLiteral("typed wrong")));
    EXPECT_FALSE(corrected.contains(QStringLiteral("two hubs")));
    EXPECT_FALSE(corrected.contains(QStringLiteral("Line removed")));
    ward.must(record::RemoveLine{line.line, "2026-11-20", ""});
    EXPECT_TRUE(text().contains(QStringLiteral("Line removed Friday, 20 November 2026")));
    EXPECT_FALSE(sample.data().dressingDue);
}

}  // namespace
}  // namespace render
