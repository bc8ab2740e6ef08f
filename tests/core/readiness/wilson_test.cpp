// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "base/date.h"
#include "readiness/readiness.h"

namespace readiness {
namespace {

struct Row {
    int successes, trials;
    double low, high;
};

// Wilson score interval without continuity correction. 81/263, 15/148, 0/20, 1/29: R. G. Newcombe,
// Statistics in Medicine 1998;17:857-872, Table I (seen second hand). The rest computed by the
// formula with z = 1.959963984540054.
TEST(Wilson, EqualsTheWorkedExamples) {
    const Row rows[] = {{81, 263, .2553, .3662}, {15, 148, .0624, .1605}, {0, 20, 0, .1611},
                        {1, 29, .0061, .1718},   {3, 3, .4385, 1},        {10, 10, .7225, 1}};
    for (const Row& row : rows) {
        const Evidence found = wilson(row.successes, row.trials);
        EXPECT_NEAR(found.low, row.low, 5e-5) << row.successes << "/" << row.trials;
        EXPECT_NEAR(found.high, row.high, 5e-5) << row.successes << "/" << row.trials;
    }
}

TEST(Wilson, NothingObservedSaysNothing) {
    EXPECT_EQ(wilson(0, 0).low, 0);
    EXPECT_EQ(wilson(0, 0).high, 1);
}

// The Gregorian calendar (ISO 8601): seven days for a film, two for gauze, over months and leap
// days.
TEST(DueDate, CountsDaysOverMonthsAndLeapDays) {
    EXPECT_EQ(base::addDays("2025-02-24", 7), "2025-03-03");
    EXPECT_EQ(base::addDays("2025-02-24", 2), "2025-02-26");
    EXPECT_EQ(base::addDays("2024-02-26", 7), "2024-03-04");
    EXPECT_EQ(base::daysBetween("2024-02-26", "2024-03-04"), 7);
    EXPECT_EQ(base::ageInMonths("2026-01-31", "2026-03-30"), 1);
    EXPECT_FALSE(base::isDate("2025-02-29"));
}

}  // namespace
}  // namespace readiness
