// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The paper for help says when the dressing is due, beside when it will be changed. Invented dates.
#include "render/papers/papers.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

QString helpPrinted(const std::optional<std::string>& due, const char* next) {
    static const PaperData decided = withHelp(Sample(Stage::NotYet).data());
    PaperData data = decided;
    data.dressingDue = due;
    data.help->nextChangeOn = next;
    data.printedMs = 1'795'478'400'000;  // 24 November 2026, 00:00 UTC, by `date -u`
    data.offsetMinutes = 0;
    return Pdf(goingHomeWithHelp(data, english())).text();
}

TEST(DressingDue, StandsBesideTheNextChange) {
    const QString onTheDay = helpPrinted("2026-12-01", "2026-12-01");
    EXPECT_TRUE(onTheDay.contains(QStringLiteral("Dressing due Tuesday, 1 December 2026")))
        << onTheDay.toStdString();
    EXPECT_FALSE(onTheDay.contains(QStringLiteral("before the next change")));
    EXPECT_TRUE(
        helpPrinted("2026-12-01", "2026-12-02")
            .contains(QStringLiteral("1 December 2026. The next change is planned for later")));
    EXPECT_TRUE(helpPrinted("2026-11-23", "2026-12-02")
                    .contains(QStringLiteral("Monday, 23 November 2026, which has passed")));
    EXPECT_TRUE(helpPrinted(std::nullopt, "2026-12-02")
                    .contains(QStringLiteral("Dressing due not recorded")));
}

TEST(DressingDue, IsGatheredFromTheChangeThatWasWrittenDownLast) {
    const PaperData data = Sample(Stage::Ready).data();
    ASSERT_TRUE(data.visits.back().change && data.visits.back().change->due);
    EXPECT_EQ(data.dressingDue, data.visits.back().change->due);
}

}  // namespace
}  // namespace render
