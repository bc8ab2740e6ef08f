// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <cstdlib>

namespace base {

/// Says where one of our own checks failed. Never used on input: input gets a Result.
[[noreturn]] inline void stopHere(const char* what, const char* file, int line) {
    std::fprintf(stderr, "ninebark: %s failed at %s:%d\n", what, file, line);
    std::abort();
}

}  // namespace base

/// Our own mistake, and the record is at risk: stop before anything is written.
#define REQUIRE(condition) \
    ((condition) ? static_cast<void>(0) : base::stopHere(#condition, __FILE__, __LINE__))

/// Our own mistake, but we can go on: stops in debug builds, runs the fallback that follows in
/// release ones. `CHECK_OR(index < size) { return {}; }`
#ifdef NDEBUG
#define CHECK_OR(condition) if (!(condition))
#else
#define CHECK_OR(condition) \
    if (!(condition) && (base::stopHere(#condition, __FILE__, __LINE__), true))
#endif
