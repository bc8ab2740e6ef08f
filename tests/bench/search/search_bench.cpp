// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What one more letter in the search field costs among many learners: the first page of cards, as
// the desk has it in view, against reading the cards of that page by SQLite's own interface.
#include <benchmark/benchmark.h>

#include "bench/people/fillledger.h"
#include "bench/rawsqlite.h"
#include "bench/watch.h"
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
    for (auto _ : state) {
        const Watch watch;
        const bool isFound = desk->lookFor(typed).ok();
        addTo(state, watch.took());
        if (!isFound) return state.SkipWithError("the desk refused");
    }
    state.counters["rows"] = double(desk->view().cards.size());
}

/// The least that a page of cards takes: the same cards by their ids, each in one statement that
/// is prepared once.
void readPage(benchmark::State& state, const std::string& typed) {
    desk::Desk* desk = deskOfMany();
    if (!desk || !desk->lookFor(typed)) return state.SkipWithError("the ledger did not open");
    std::vector<std::string> learners;
    for (const record::Card& card : desk->view().cards) learners.push_back(card.learner.text());
    static RawDatabase database(manyPeople() + "/record.sqlite");
    RawStatement read(database.handle(),
                      "SELECT learner, patient, bytes FROM card WHERE learner = ?");
    for (auto _ : state) {
        const Watch watch;
        for (const std::string& learner : learners) {
            if (!read.text(1, learner).hasRow()) return state.SkipWithError("no such card");
            for (int column = 0; column < 3; ++column)
                benchmark::DoNotOptimize(read.bytesAt(column));
            read.reset();
        }
        addTo(state, watch.took());
    }
    state.counters["rows"] = double(learners.size());
}

}  // namespace

void addSearches() {
    for (const std::string typed : {"o", "oko", "okonjo"}) {
        benchmark::RegisterBenchmark(("search/" + typed + "/desk").c_str(),
                                     [typed](benchmark::State& state) { lookByDesk(state, typed); })
            ->UseManualTime()
            ->Iterations(5)
            ->Unit(benchmark::kMicrosecond);
        benchmark::RegisterBenchmark(("search/" + typed + "/raw").c_str(),
                                     [typed](benchmark::State& state) { readPage(state, typed); })
            ->UseManualTime()
            ->Iterations(5)
            ->Unit(benchmark::kMicrosecond);
    }
}

}  // namespace bench
