// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <cstdio>

/// How often a program is killed in the tests of every day. Each suite of them fails below its own
/// least number, and the numbers together are what is promised. `tests/long.sh kill` adds up what
/// they print.
namespace support {

struct Kills {
    int all = 0;
    int inside = 0;  ///< of them, with a write or sync half done as the layer below SQLite says
};

/// What each suite makes at least, and how many tests of it there are.
struct LeastKills {
    const char* suite;
    Kills each;
    int tests = 1;
};
inline constexpr LeastKills whileWriting{"Kill", {24, 6}};
inline constexpr LeastKills whileUpgrading{"UpgradeKill", {15, 15}, 4};
inline constexpr LeastKills whileTeaching{"DeskKill", {30, 0}};
inline constexpr LeastKills whileTeachingSealed{"SealedDeskKill", {50, 16}, 2};
inline constexpr LeastKills whileSigning{"SignOffKill", {50, 45}};
inline constexpr LeastKills whileBackingUp{"BackupKill", {4, 0}};

constexpr Kills leastTogether() {
    Kills sum;
    for (const LeastKills& one : {whileWriting, whileUpgrading, whileTeaching, whileTeachingSealed,
                                  whileSigning, whileBackingUp}) {
        sum.all += one.tests * one.each.all;
        sum.inside += one.tests * one.each.inside;
    }
    return sum;
}
static_assert(leastTogether().all >= 200, "promised: 200 kills every day");
static_assert(leastTogether().inside >= 50, "promised: 50 of them inside a write");

inline void expectKills(const LeastKills& least, const Kills& made) {
    std::printf("kills: %d, inside a write: %d (%s)\n", made.all, made.inside, least.suite);
    EXPECT_GE(made.all, least.each.all) << "too few were killed";
    EXPECT_GE(made.inside, least.each.inside) << "too few were killed inside a write";
}

}  // namespace support
