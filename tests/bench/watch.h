// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include <cstdint>
#include <ctime>
#include <functional>
#include <utility>
#include <vector>

namespace bench {

/// What a piece of work took.
struct Took {
    double seconds = 0;     ///< by the clock on the wall
    double cpuSeconds = 0;  ///< of the processor, user and system, of all threads
};

/// Adds benchmarks that say themselves what they took, each of so many iterations.
using Measured = std::pair<const char*, std::function<void(benchmark::State&)>>;
inline void registerAll(const std::vector<Measured>& all, benchmark::IterationCount each,
                        benchmark::TimeUnit unit) {
    for (const auto& [name, function] : all)
        benchmark::RegisterBenchmark(name, function)->UseManualTime()->Iterations(each)->Unit(unit);
}

/// Adds one iteration of a benchmark that uses manual time; `parts` of equal work make it up.
inline void addTo(benchmark::State& state, const Took& took, double parts = 1) {
    state.SetIterationTime(took.seconds / parts);
    auto& cpu = state.counters["cpu_ns"];
    cpu.value += took.cpuSeconds / parts * 1e9;
    cpu.flags = benchmark::Counter::kAvgIterations;
}

inline double secondsOf(clockid_t clock) {
    timespec now{};
    clock_gettime(clock, &now);
    return double(now.tv_sec) + double(now.tv_nsec) / 1e9;
}

/// Runs from when it is made.
class Watch {
  public:
    Took took() const {
        return {secondsOf(CLOCK_MONOTONIC) - m_wall, secondsOf(CLOCK_PROCESS_CPUTIME_ID) - m_cpu};
    }

  private:
    double m_wall = secondsOf(CLOCK_MONOTONIC);
    double m_cpu = secondsOf(CLOCK_PROCESS_CPUTIME_ID);
};

inline double secondsOf(const timeval& time) {
    return double(time.tv_sec) + double(time.tv_usec) / 1e6;
}

/// The processor time of a child that has ended.
inline double cpuSecondsOf(const rusage& usage) {
    return secondsOf(usage.ru_utime) + secondsOf(usage.ru_stime);
}

}  // namespace bench
