// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A whole process, from before it is started to its first painted window; the processor's time is
// that of the whole process, its end included.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <string>
#include <vector>

#include "bench/start/report.h"
#include "bench/watch.h"
#include "bench/work.h"

extern char** environ;

namespace bench {
namespace {

struct Started {
    Took took;
    std::int64_t widgets = 0;
};

/// The environment with these put in place of their namesakes.
std::vector<std::string> environmentWith(const std::vector<std::string>& changes) {
    std::vector<std::string> all = changes;
    for (char** one = environ; *one; ++one) {
        const std::string entry = *one;
        const std::string name = entry.substr(0, entry.find('=') + 1);
        bool isChanged = false;
        for (const std::string& change : changes) isChanged |= change.starts_with(name);
        if (!isChanged) all.push_back(entry);
    }
    return all;
}

std::vector<char*> pointersTo(std::vector<std::string>& words) {
    std::vector<char*> pointers;
    for (std::string& word : words) pointers.push_back(word.data());
    pointers.push_back(nullptr);
    return pointers;
}

/// Nothing when the program did not start, did not report or did not end well.
std::optional<Started> start(const std::string& program, const std::string& folder,
                             const std::string& platform, const std::string& tree) {
    int ends[2];
    if (pipe(ends) != 0) return std::nullopt;
    fcntl(ends[0], F_SETFD, FD_CLOEXEC);
    std::vector<std::string> words{program, "--data", folder};
    auto environment =
        environmentWith({"QT_QPA_PLATFORM=" + platform, "XDG_CONFIG_HOME=" + folder + "/config",
                         "NINEBARK_BENCH_REPORT=" + std::to_string(ends[1]), tree});
    const auto arguments = pointersTo(words), settings = pointersTo(environment);
    pid_t child = 0;
    const std::int64_t before = monotonicNs();
    const int failed =
        posix_spawn(&child, program.c_str(), nullptr, nullptr, arguments.data(), settings.data());
    close(ends[1]);
    Report report;
    const bool isReported = !failed && read(ends[0], &report, sizeof report) == sizeof report;
    close(ends[0]);
    int status = 1;
    rusage usage{};
    if (!failed) wait4(child, &status, 0, &usage);
    if (!isReported || status != 0) return std::nullopt;
    const Took took{double(report.paintedNs - before) / 1e9, cpuSecondsOf(usage)};
    return Started{took, report.widgets};
}

enum class Window { Program, Bare };

void startOnce(benchmark::State& state, Window window, const std::string& platform,
               const std::string& people) {
    const std::string folder = workFolder() + "/people-" + people;
    const std::string tree = folder + "/tree.txt";
    const bool isBare = window == Window::Bare;
    const std::string program =
        programFolder() + (isBare ? "/bench_bare_window" : "/bench_first_window");
    for (auto _ : state) {
        const auto started =
            start(program, folder, platform, isBare ? "NINEBARK_BENCH_BARE=" + tree : "NONE=");
        if (!started) return state.SkipWithError((program + " did not show a window").c_str());
        addTo(state, started->took);
        state.counters["widgets"] = double(started->widgets);
    }
}

void add(const std::string& platform, const std::string& people) {
    const std::string name = "start/" + platform + "/" + people;
    for (const Window window : {Window::Program, Window::Bare})
        benchmark::RegisterBenchmark(
            (name + (window == Window::Bare ? "/bare" : "/program")).c_str(),
            [=](benchmark::State& state) { startOnce(state, window, platform, people); })
            ->UseManualTime()
            ->Iterations(1)
            ->Unit(benchmark::kMillisecond);
}

}  // namespace

bool writeTrees() {
    for (const std::string& people : peopleCounts()) {
        const std::string folder = workFolder() + "/people-" + people;
        if (!start(programFolder() + "/bench_first_window", folder, "offscreen",
                   "NINEBARK_BENCH_TREE=" + folder + "/tree.txt"))
            return false;
    }
    return true;
}

void addStarts() {
    for (const std::string& people : peopleCounts()) {
        add("offscreen", people);
        if (std::getenv("DISPLAY")) add("xcb", people);
    }
}

}  // namespace bench
