// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/guarding.h"

#include <gtest/gtest.h>
#include <sys/prctl.h>
#include <sys/resource.h>

#include <unistd.h>

#include <limits>

namespace seal {
namespace {

// Common practice, no source: a growing wait that ends.
TEST(WaitAfterWrong, GrowsAndNeverBecomesALock) {
    EXPECT_EQ(waitAfterWrong(0), 0);
    EXPECT_EQ(waitAfterWrong(2), 0);
    EXPECT_EQ(waitAfterWrong(3), 1'000);
    EXPECT_EQ(waitAfterWrong(4), 2'000);
    EXPECT_EQ(waitAfterWrong(8), 32'000);
    for (int i = 0; i < 200; ++i) EXPECT_LE(waitAfterWrong(i), waitAfterWrong(i + 1)) << i;
    EXPECT_EQ(waitAfterWrong(9), 60'000);
    EXPECT_EQ(waitAfterWrong(std::numeric_limits<int>::max()), 60'000);
    EXPECT_EQ(waitAfterWrong(-1), 0);
}

[[noreturn]] void forbidAndLeave() {
    const bool done = forbidCoreDumps();
    rlimit limit{1, 1};
    ::getrlimit(RLIMIT_CORE, &limit);
    const bool off = ::prctl(PR_GET_DUMPABLE, 0, 0, 0, 0) == 0;
    ::_exit(done && off && limit.rlim_cur == 0 && limit.rlim_max == 0 ? 7 : 8);
}

// In a process of its own: the rest of the tests may dump.
TEST(CoreDumps, AreForbidden) { EXPECT_EXIT(forbidAndLeave(), testing::ExitedWithCode(7), ""); }

TEST(CostIsEnough, NoRowMayBeCheaperThanUsual) {
    const Cost usual{16, 2};
    const auto ward = [](const Cost& names, const Cost& person) {
        KeyRows rows{.names = Stretch::withNewSalt(names)};
        const auto ring = Keyring::found(
            rows, {base::LedgerId::random(), base::StaffId::random(), std::string(16, 'h')},
            Secret::copyOf("x"), person, Recovery::generate());
        EXPECT_TRUE(ring.ok());
        return rows;
    };
    EXPECT_TRUE(costIsEnough(ward(usual, usual), usual));
    EXPECT_TRUE(costIsEnough(ward({32, 3}, {16, 3}), usual));
    for (const Cost& weak : {Cost{8, 2}, Cost{16, 1}, Cost::least()}) {
        EXPECT_FALSE(costIsEnough(ward(usual, weak), usual));
        EXPECT_FALSE(costIsEnough(ward(weak, usual), usual));
    }
}

}  // namespace
}  // namespace seal
