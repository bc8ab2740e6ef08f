// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What one more letter in the search field costs among many learners: the first page of cards, as
// the desk has it in view, against the same statements by SQLite's own interface.
#include <benchmark/benchmark.h>

#include "bench/people/fillledger.h"
#include "bench/rawsqlite.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "desk/desk.h"
#include "store/derived.h"
#include "store/values.h"

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

/// The program's own statements for one word, each prepared once.
class RawSearch {
  public:
    RawSearch(sqlite3* database, const std::string& typed)
        : m_search(store::cardSearch({typed})),
          m_count(database, m_search.count.c_str()),
          m_few(database, m_search.fewPage.c_str()),
          m_many(database, m_search.manyPage.c_str()) {
        for (const QVariant& value : m_search.words) m_words.push_back(store::bytesOf(value));
    }

    /// How many cards are on the first page.
    int firstPage() {
        m_count.blob(1, m_words[0]).blob(2, m_words[1]);
        const std::uint64_t total = m_count.hasRow() ? m_count.countAt(0) : 0;
        m_count.reset();
        RawStatement& page = total < store::manyMatches ? m_few : m_many;
        page.blob(1, m_words[0]).blob(2, m_words[1]).count(3, 50).count(4, 0);
        int rows = 0;
        for (; page.hasRow(); ++rows)
            for (int column = 0; column < 4; ++column)
                benchmark::DoNotOptimize(page.bytesAt(column));
        page.reset();
        return rows;
    }

  private:
    store::CardSearch m_search;
    RawStatement m_count, m_few, m_many;
    std::vector<std::string> m_words;
};

void lookRaw(benchmark::State& state, const std::string& typed) {
    static RawDatabase database(manyPeople() + "/record.sqlite");
    RawSearch search(database.handle(), typed);
    int rows = 0;
    for (auto _ : state) {
        const Watch watch;
        rows = search.firstPage();
        addTo(state, watch.took());
    }
    if (rows == 0) return state.SkipWithError("nobody was found");
    state.counters["rows"] = rows;
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
                                     [typed](benchmark::State& state) { lookRaw(state, typed); })
            ->UseManualTime()
            ->Iterations(5)
            ->Unit(benchmark::kMicrosecond);
    }
}

}  // namespace bench
