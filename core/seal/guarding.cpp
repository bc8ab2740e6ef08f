// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/guarding.h"

#include <sys/prctl.h>
#include <sys/resource.h>

#include <algorithm>

namespace seal {
namespace {

constexpr int freeSlips = 2;
constexpr std::int64_t firstWaitMs = 1'000;
constexpr std::int64_t longestWaitMs = 60'000;
constexpr int doublings = 6;  // 64 seconds: already beyond the longest

}  // namespace

std::int64_t waitAfterWrong(int wrongInARow) {
    if (wrongInARow <= freeSlips) return 0;
    const int doubled = std::min(wrongInARow - freeSlips - 1, doublings);
    return std::min(firstWaitMs << doubled, longestWaitMs);
}

bool forbidCoreDumps() {
    const rlimit none{0, 0};
    const bool limited = ::setrlimit(RLIMIT_CORE, &none) == 0;
    return ::prctl(PR_SET_DUMPABLE, 0, 0, 0, 0) == 0 && limited;
}

bool costIsEnough(const KeyRows& rows, const Cost& least) {
    return rows.names.cost.covers(least) &&
           std::none_of(rows.people.begin(), rows.people.end(),
                        [&](const WrappedIdentity& one) { return isBelow(one, least); });
}

}  // namespace seal
