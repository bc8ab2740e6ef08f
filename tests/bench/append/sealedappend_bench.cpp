// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One signed entry, sealed with the rows derived from it and durable when the call returns: through
// the program's ledger, and as the same rows by SQLite's own interface after signing and sealing as
// many bytes.
#include <benchmark/benchmark.h>

#include "bench/append/rawappend.h"
#include "bench/people/fillledger.h"
#include "bench/sealedkeys.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "seal/sealedbody.h"
#include "seal/signature.h"

namespace bench {
namespace {

constexpr int peopleSealed = 1000;
constexpr int sealedEach = 100;  // of one repetition

void sealBy(ledger::Ledger& ledger) {
    ledger.use(std::make_shared<seal::SealingCodec>(someKeys(), ledger.keyShelf()));
}

std::string sealedLedger() {
    const std::string path = freshFolder() + "/record.sqlite";
    const auto ledger = store::SqlLedger::open(path, store::OpenMode::Demonstration);
    if (!ledger) return {};
    sealBy(**ledger);
    if (!addHouse(**ledger, noon()) || !addPeople(**ledger, peopleSealed, noon())) return {};
    return path;
}

void appendSealed(benchmark::State& state) {
    static const std::string path = sealedLedger();
    static const auto ledger = store::SqlLedger::open(path, store::OpenMode::Demonstration);
    if (!ledger) return state.SkipWithError("the ledger did not open");
    static int number = [] {
        sealBy(**ledger);
        return peopleSealed;
    }();
    for (auto _ : state) {
        PersonDrafts person = lastEntryOf(personDrafts(**ledger, number++, noon()));
        const Watch watch;
        const bool isSigned = seal::addSignature(person.drafts[0].body, *someKeys()->identity(),
                                                 (*ledger)->id(), seal::Purpose::Author)
                                  .ok();
        const auto written = (*ledger)->append(person.drafts, noon(), person.derived);
        addTo(state, watch.took());
        if (!isSigned || !written) return state.SkipWithError("the ledger refused");
    }
}

/// Signs and seals as much as these rows hold.
void signAndSeal(const RawRows& rows, const std::string& message) {
    benchmark::DoNotOptimize(someKeys()->identity()->sign(message));
    const seal::Secret& key = someKeys()->current().key;
    benchmark::DoNotOptimize(seal::sealBody(key, rows.body, rows.patient));
    for (const std::string& plain : rows.plain)
        benchmark::DoNotOptimize(seal::sealBody(key, plain, rows.patient));
}

void appendRawSealed(benchmark::State& state) {
    static RawAppend raw(sealedLedger(), someKeys());
    static int number = peopleSealed;
    if (!raw.isGood()) return state.SkipWithError("the file did not open");
    for (auto _ : state) {
        const RawRows rows = raw.rowsFor(number++);
        const Watch watch;
        signAndSeal(rows, rows.body);
        const bool isWritten = raw.write(rows);
        addTo(state, watch.took());
        if (!isWritten) return state.SkipWithError("SQLite refused");
        state.counters["bytes"] = double(rows.bytes());
    }
}

}  // namespace

void addSealedAppends() {
    registerAll({{"append/sealed/ledger", appendSealed}, {"append/sealed/raw", appendRawSealed}},
                sealedEach, benchmark::kMicrosecond);
}

}  // namespace bench
