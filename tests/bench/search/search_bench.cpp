// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What one more letter in the search field costs among many learners: the first page of cards, as
// the desk has it in view, against the same rows by SQLite's own interface.
#include <benchmark/benchmark.h>

#include "bench/people/fillledger.h"
#include "bench/rawsqlite.h"
#include "bench/work.h"
#include "desk/desk.h"

namespace bench {
namespace {

std::string manyPeople() { return workFolder() + "/people-" + peopleCounts().back(); }

/// A desk over the largest ledger; null when it did not open.
desk::Desk* deskOfMany() {
    static const base::SystemClock clock;
    static procedure::Shelf shelf;
    static const auto ledger = store::SqlLedger::openToRead(manyPeople() + "/record.sqlite",
                                                            store::OpenMode::Demonstration);
    if (!ledger) return nullptr;
    static const auto desk = desk::Desk::open(**ledger, shelf, clock, desk::Ward::Demonstration);
    return desk ? desk->get() : nullptr;
}

void lookByDesk(benchmark::State& state, const std::string& typed) {
    desk::Desk* desk = deskOfMany();
    if (!desk) return state.SkipWithError("the ledger did not open");
    for (auto _ : state)
        if (!desk->lookFor(typed)) return state.SkipWithError("the desk refused");
    state.counters["rows"] = double(desk->view().cards.size());
}

void lookRaw(benchmark::State& state, const std::string& typed) {
    static RawDatabase database(manyPeople() + "/record.sqlite");
    static RawStatement page(database.handle(),
                             "SELECT learner, patient, sort_key, json FROM card WHERE learner IN "
                             "(SELECT learner FROM search_key WHERE key >= ? AND key < ?) "
                             "ORDER BY sort_key, learner LIMIT 50");
    std::string after = typed;
    after.back() = char(after.back() + 1);
    int rows = 0;
    for (auto _ : state) {
        rows = 0;
        page.blob(1, typed).blob(2, after);
        for (; page.hasRow(); ++rows) benchmark::DoNotOptimize(page.bytesAt(3));
        page.reset();
    }
    if (rows == 0) return state.SkipWithError("nobody was found");
    state.counters["rows"] = rows;
}

}  // namespace

void addSearches() {
    for (const std::string typed : {"o", "oko", "okonjo"}) {
        benchmark::RegisterBenchmark(("search/" + typed + "/desk").c_str(),
                                     [typed](benchmark::State& state) { lookByDesk(state, typed); })
            ->Iterations(5)
            ->Unit(benchmark::kMicrosecond);
        benchmark::RegisterBenchmark(("search/" + typed + "/raw").c_str(),
                                     [typed](benchmark::State& state) { lookRaw(state, typed); })
            ->Iterations(5)
            ->Unit(benchmark::kMicrosecond);
    }
}

}  // namespace bench
