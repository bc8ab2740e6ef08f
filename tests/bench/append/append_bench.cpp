// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One entry with the rows derived from it, durable when the call returns: through the program's
// ledger, by SQLite's own interface with the same rows and pragmas, and as bare bytes in a file.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <unistd.h>

#include "bench/append/rawappend.h"
#include "bench/people/fillledger.h"
#include "bench/watch.h"
#include "bench/work.h"

namespace bench {
namespace {

constexpr int peopleBefore = 1000;
constexpr int appendsEach = 100;  // of one repetition

/// A ledger of its own with some people in it.
std::string filledLedger() {
    const std::string path = freshFolder() + "/record.sqlite";
    const auto ledger = store::SqlLedger::open(path, store::OpenMode::Demonstration);
    if (!ledger || !addHouse(**ledger, noon()) || !addPeople(**ledger, peopleBefore, noon()))
        return {};
    return path;
}

void appendByLedger(benchmark::State& state) {
    static const std::string path = filledLedger();
    static const auto ledger = store::SqlLedger::open(path, store::OpenMode::Demonstration);
    static int number = peopleBefore;
    for (auto _ : state) {
        const PersonDrafts person = lastEntryOf(personDrafts(**ledger, number++, noon()));
        const Watch watch;
        const auto written = (*ledger)->append(person.drafts, noon(), person.derived);
        addTo(state, watch.took());
        if (!written) return state.SkipWithError("the ledger refused");
    }
}

void appendRaw(benchmark::State& state) {
    static const std::string path = filledLedger();
    static RawAppend raw(path);
    static int number = peopleBefore;
    if (!raw.isGood()) return state.SkipWithError("the file did not open");
    for (auto _ : state) {
        const RawRows rows = raw.rowsFor(number++);
        const Watch watch;
        const bool isWritten = raw.write(rows);
        addTo(state, watch.took());
        if (!isWritten) return state.SkipWithError("SQLite refused");
        state.counters["bytes"] = double(rows.bytes());
    }
}

/// The same bytes into a file that has its size already, as a log that is written over and over.
void appendBytes(benchmark::State& state) {
    constexpr std::size_t fileSize = 4 << 20;
    static RawAppend raw(filledLedger());
    const std::string payload(raw.rowsFor(peopleBefore).bytes(), 'x');
    const int file = open((freshFolder() + "/floor").c_str(), O_RDWR | O_CREAT, 0600);
    const std::string zeros(fileSize, '\0');
    if (write(file, zeros.data(), fileSize) != ssize_t(fileSize) || fsync(file) != 0)
        return state.SkipWithError("no file to write into");
    off_t at = 0;
    for (auto _ : state) {
        const Watch watch;
        const bool isWritten =
            pwrite(file, payload.data(), payload.size(), at) == ssize_t(payload.size()) &&
            fdatasync(file) == 0;
        addTo(state, watch.took());
        if (!isWritten) return state.SkipWithError("the disk refused");
        at = (at + 4096) % off_t(fileSize - 65536);
    }
    close(file);
}

}  // namespace

void addAppends() {
    registerAll({{"append/ledger", appendByLedger},
                 {"append/raw", appendRaw},
                 {"append/floor", appendBytes}},
                appendsEach, benchmark::kMicrosecond);
}

}  // namespace bench
