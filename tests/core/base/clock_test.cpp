// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Moments in the form of ISO 8601 and RFC 3339, with milliseconds and Z.
#include "base/clock.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <QDateTime>

namespace base {
namespace {

TEST(IsoUtc, IsWrittenSo) {
    EXPECT_EQ(isoUtc(1), "1970-01-01T00:00:00.001Z");
    EXPECT_EQ(isoUtc(-1), "1969-12-31T23:59:59.999Z");
    EXPECT_EQ(isoUtc(1'000'000'000'000), "2001-09-09T01:46:40.000Z");  // a billion seconds
    EXPECT_EQ(isoUtc(951'782'400'000), "2000-02-29T00:00:00.000Z");
}

TEST(IsoUtc, ComesBackAsItWent) {
    EXPECT_TRUE(rc::check("parseIsoUtc undoes isoUtc", [] {
        const auto ms = *rc::gen::inRange<std::int64_t>(-62'135'596'800'000, 253'402'300'800'000);
        RC_ASSERT(parseIsoUtc(isoUtc(ms)) == ms);  // from the year 1 to the year 9999
    }));
}

// Qt's own spelling is the measure.
TEST(IsoUtc, IsSpelledAsQtDoes) {
    EXPECT_TRUE(rc::check("isoUtc is Qt::ISODateWithMs", [] {
        const auto ms = *rc::gen::inRange<std::int64_t>(-62'135'596'800'000, 253'402'300'800'000);
        const QDateTime at = QDateTime::fromMSecsSinceEpoch(ms, Qt::UTC);
        RC_ASSERT(isoUtc(ms) == at.toString(Qt::ISODateWithMs).toStdString());
    }));
    for (const std::int64_t ms :
         {std::int64_t{-1}, std::int64_t{0}, std::int64_t{-86'400'001}, std::int64_t{-86'400'000},
          std::int64_t{-62'135'596'800'000}, std::int64_t{253'402'300'799'999}})
        EXPECT_EQ(
            isoUtc(ms),
            QDateTime::fromMSecsSinceEpoch(ms, Qt::UTC).toString(Qt::ISODateWithMs).toStdString());
    for (const std::int64_t beyond : {-62'135'596'800'001, 253'402'300'800'000})
        EXPECT_EQ(isoUtc(beyond), "") << "four digits say no such year";
}

TEST(IsoUtc, NothingElseIsAMoment) {
    for (const char* text :
         {"", "Z", "2026-11-24", "2026-11-24T14:00:00.000", "2026-11-24T25:00:00.000Z",
          "2026-11-24T14:60:00.000Z", "2026-02-29T14:00:00.000Z", "14:00:00.000Z",
          "2026-11-24T14:00:00.000+00:00", "tomorrow", "2026-11-24T14:00:00.000ZZ",
          // Read by Qt, and written otherwise by us: an entry would have two spellings.
          "2026-11%24T14:00:00.000Z", "2026-11-24 14:00:00.000Z", "2026-11-24T14:00:00Z"})
        EXPECT_EQ(parseIsoUtc(text), std::nullopt) << text;
}

TEST(SystemClock, ReadsAllItsClocks) {
    const SystemClock clock;
    const Instant first = clock.now();
    const Instant second = clock.now();
    EXPECT_FALSE(clock.isSimulated());
    EXPECT_EQ(first.bootId, second.bootId);
    EXPECT_FALSE(first.bootId.empty());
    EXPECT_FALSE(first.zone.empty());
    EXPECT_LE(first.monoMs, second.monoMs);
    EXPECT_LE(first.bootMs, second.bootMs);
    EXPECT_GE(first.bootMs, first.monoMs) << "the boot clock counts suspended time too";
    EXPECT_GT(first.wallMs, *parseIsoUtc("2020-01-01T00:00:00.000Z"));
    EXPECT_LE(std::abs(first.offsetMinutes), 14 * 60);
}

TEST(ManualClock, StandsUntilItIsMoved) {
    ManualClock clock({.wallMs = 7, .bootMs = 6, .monoMs = 5, .bootId = "b", .zone = "UTC"});
    EXPECT_TRUE(clock.isSimulated());
    EXPECT_EQ(clock.now(), clock.now());
    Instant later = clock.now();
    later.wallMs = 1;  // somebody sets it back
    clock.set(later);
    EXPECT_EQ(clock.now(), later);
    clock.advanceMs(9);
    EXPECT_EQ(clock.now().wallMs, 10);
    EXPECT_EQ(clock.now().bootMs, 15);
    EXPECT_EQ(clock.now().monoMs, 14);
}

}  // namespace
}  // namespace base
