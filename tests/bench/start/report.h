// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <ctime>

namespace bench {

/// What a started program says of itself.
struct Report {
    std::int64_t paintedNs = 0;  ///< CLOCK_MONOTONIC, which all programs of a machine share
    std::int64_t widgets = 0;    ///< visible ones in the main window
};

inline std::int64_t monotonicNs() {
    timespec now{};
    clock_gettime(CLOCK_MONOTONIC, &now);
    return std::int64_t{now.tv_sec} * 1'000'000'000 + now.tv_nsec;
}

}  // namespace bench
