// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Dates of the Gregorian calendar as ISO 8601 writes them. The rule of leap years: every fourth,
// not every hundredth, but every four hundredth.
#include "base/date.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace base {
namespace {

TEST(Date, IsWrittenInTenLettersAndOnTheCalendar) {
    for (const char* date : {"2026-11-25", "2024-02-29", "2000-02-29", "1900-12-31", "0001-01-01"})
        EXPECT_TRUE(isDate(date)) << date;
    for (const char* date :
         {"", "2026-11-31", "2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-01-00",
          "2026-1-05", "26-11-25", "2026/11/25", "25.11.2026", "2026-11-25T", "2026-11-2x",
          " 2026-11-2", "+026-11-25", "-026-11-25", "20261125", "2026-W48-3", "2026-11-25 "})
        EXPECT_FALSE(isDate(date)) << date;
    EXPECT_FALSE(isDate("2026-11-\u0662"));
    EXPECT_FALSE(isDate("\u0662\u0660\u0662\u0666\u0661"));  // ten bytes, no date
}

TEST(Date, IsTheLocalOneOfTheMoment) {
    const auto late = *parseIsoUtc("2026-11-24T23:30:00.000Z");
    EXPECT_EQ(dateAt(late, 0), "2026-11-24");
    EXPECT_EQ(dateAt(late, 30), "2026-11-25");
    EXPECT_EQ(dateAt(late, 29), "2026-11-24");
    EXPECT_EQ(dateAt(late, -12 * 60), "2026-11-24");
    EXPECT_EQ(dateAt(late, 14 * 60), "2026-11-25");  // the easternmost zone there is
    EXPECT_EQ(dateAt(*parseIsoUtc("2026-01-01T05:00:00.000Z"), -6 * 60), "2025-12-31");
    EXPECT_EQ(dateAt(-1, 0), "1969-12-31");
    EXPECT_EQ(today({.wallMs = late, .bootId = {}, .offsetMinutes = 60, .zone = {}}), "2026-11-25");
}

struct DaysRow {
    const char* from;
    int days;
    const char* to;
};

// Worked by hand on the calendar.
TEST(Date, AddsDaysOverTheEndsOfMonthsAndYears) {
    for (const DaysRow& row :
         {DaysRow{"2026-11-24", 7, "2026-12-01"}, DaysRow{"2026-12-28", 7, "2027-01-04"},
          DaysRow{"2024-02-27", 7, "2024-03-05"}, DaysRow{"2023-02-27", 7, "2023-03-06"},
          DaysRow{"1900-02-28", 1, "1900-03-01"}, DaysRow{"2000-02-28", 1, "2000-02-29"},
          DaysRow{"2026-03-01", -1, "2026-02-28"}, DaysRow{"2026-11-24", 0, "2026-11-24"},
          DaysRow{"2026-11-24", 180, "2027-05-23"}}) {
        EXPECT_EQ(addDays(row.from, row.days), row.to) << row.from;
        EXPECT_EQ(daysBetween(row.from, row.to), row.days) << row.from;
        EXPECT_EQ(daysBetween(row.to, row.from), -row.days) << row.from;
    }
}

TEST(Date, AddingAndCountingDaysAgree) {
    EXPECT_TRUE(rc::check("daysBetween undoes addDays", [] {
        const int start = *rc::gen::inRange(-20000, 20000);
        const int days = *rc::gen::inRange(-4000, 4000);
        const std::string from = addDays("2000-01-01", start);
        RC_ASSERT(isDate(from));
        RC_ASSERT(daysBetween(from, addDays(from, days)) == days);
    }));
}

struct AgeRow {
    const char* born;
    const char* on;
    int months;
};

TEST(Age, IsWholeMonthsLivedToTheEnd) {
    for (const AgeRow& row :
         {AgeRow{"2026-09-25", "2026-11-24", 1}, AgeRow{"2026-09-24", "2026-11-24", 2},
          AgeRow{"2026-11-24", "2026-11-24", 0}, AgeRow{"2026-11-25", "2026-11-24", -1},
          AgeRow{"1961-05-03", "2026-05-02", 779}, AgeRow{"1961-05-03", "2026-05-03", 780},
          AgeRow{"2024-02-29", "2025-02-28", 11}, AgeRow{"2024-02-29", "2025-03-01", 12},
          AgeRow{"2026-01-31", "2026-02-28", 0}, AgeRow{"2025-12-31", "2026-01-31", 1}})
        EXPECT_EQ(ageInMonths(row.born, row.on), row.months) << row.born << " on " << row.on;
}

}  // namespace
}  // namespace base
