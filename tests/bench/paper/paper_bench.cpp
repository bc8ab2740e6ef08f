// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The chart record of a learner of the demonstration ward as PDF, from the record on, against
// nothing but drawing pages that are laid out already.
#include <benchmark/benchmark.h>

#include "bench/people/fillledger.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "compose.h"
#include "papers/makepaper.h"

namespace bench {
namespace {

/// A desk with the record of a learner who has been seen twice.
desk::Desk* deskWithRecord() {
    static base::ManualClock clock(noon());
    static auto* ward =
        new base::Result(app::composeWard(QString::fromStdString(freshFolder()), clock));
    if (!*ward) return nullptr;
    desk::Desk& desk = *(*ward)->desk;
    if (!desk.lookFor("okonjo") || desk.view().cards.empty()) return nullptr;
    const record::Card card = desk.view().cards.front();
    return desk.openRecord(card.patient, card.learner) ? &desk : nullptr;
}

std::optional<ui::MadePaper> chart(desk::Desk* desk) {
    if (!desk) return std::nullopt;
    return ui::makePaper(*desk, record::PaperKind::Chart, render::PageKind::A4);
}

void wholePaper(benchmark::State& state) {
    desk::Desk* desk = deskWithRecord();
    for (auto _ : state) {
        const Watch watch;
        const auto made = chart(desk);
        if (!made || !made->pages) return state.SkipWithError("no chart record");
        const QByteArray bytes = made->pages->pdf();
        addTo(state, watch.took());
        benchmark::DoNotOptimize(bytes.data());
        state.counters["bytes"] = double(bytes.size());
    }
}

void drawnPaper(benchmark::State& state) {
    const auto made = chart(deskWithRecord());
    if (!made || !made->pages) return state.SkipWithError("no chart record");
    for (auto _ : state) {
        const Watch watch;
        const QByteArray bytes = made->pages->pdf();
        addTo(state, watch.took());
        benchmark::DoNotOptimize(bytes.data());
        state.counters["bytes"] = double(bytes.size());
    }
}

}  // namespace

void addPapers() {
    benchmark::RegisterBenchmark("paper/whole", wholePaper)
        ->UseManualTime()
        ->Iterations(3)
        ->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("paper/drawn", drawnPaper)
        ->UseManualTime()
        ->Iterations(3)
        ->Unit(benchmark::kMillisecond);
}

}  // namespace bench
