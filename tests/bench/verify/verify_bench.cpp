// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Verifying a sealed record, every twentieth entry of it signed: with a key and without, over the
// larger of hashing its bytes and checking its signatures on all cores, and over the least that any
// verify has to do: read the rows, hash and open each, and check the signatures.
// NINEBARK_BENCH_ENTRIES says how many entries there are; the record is made once and kept beside
// the others.
#include <benchmark/benchmark.h>
#include <sodium.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <map>

#include "bench/people/fillledger.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "gate/gate.h"
#include "ledger/envelope.h"
#include "record/card.h"
#include "seal/accessrows.h"
#include "seal/aead.h"
#include "seal/sealingcodec.h"
#include "seal/signature.h"

namespace bench {
namespace {

const std::string founder = "Ilse Marchetti", phrase = "nine slow herons wade";
constexpr int signedEach = 20;
constexpr int peopleATime = 80;

std::uint64_t entriesAsked() {
    const char* const asked = std::getenv("NINEBARK_BENCH_ENTRIES");
    return asked ? std::strtoull(asked, nullptr, 10) : 200'000;
}

std::string verifiedRecord() {
    return workFolder() + "/verify-" + std::to_string(entriesAsked()) + "/record.sqlite";
}

/// Lets the one who is signed in say all of these, and sign every twentieth.
bool signSome(std::vector<ledger::Draft>& drafts, const gate::Gate& gate,
              const base::LedgerId& ledger) {
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        drafts[i].body.by = gate.person()->said.staff;
        drafts[i].body.role = base::nameOf(gate.person()->said.role);
        if (i % signedEach == 0 &&
            !seal::addSignature(drafts[i].body, *gate.identity(), {ledger, drafts[i].subject},
                                seal::Purpose::Author))
            return false;
    }
    return true;
}

/// Cards are left out: it is the look at the entries that is measured, not what is made of them
/// anew.
bool fillSealed(store::SqlLedger& ledger, const base::Clock& clock) {
    const auto gate = gate::Gate::open(ledger, clock, {seal::Cost::least(), true});
    if (!gate) return false;
    if (!(*gate)->found({founder, "IM"}, seal::Secret::copyOf(phrase)).now()) return false;
    for (int number = 0; ledger.head().size < entriesAsked();) {
        std::vector<ledger::Draft> drafts;
        for (int i = 0; i < peopleATime; ++i)
            for (ledger::Draft& draft : personDrafts(ledger, number++, noon()).drafts)
                drafts.push_back(std::move(draft));
        if (!signSome(drafts, **gate, ledger.id()) ||
            !ledger.append(drafts, noon(), {.foldVersion = record::foldVersion}))
            return false;
    }
    return true;
}

/// The record to be verified, and the keys of who founded it.
struct Verified {
    std::unique_ptr<store::SqlLedger> ledger;
    std::shared_ptr<const seal::Keyring> ring;

    Verified() {
        const std::string path = verifiedRecord();
        const base::ManualClock clock(noon());
        if (!std::filesystem::exists(path)) {
            const auto made = store::SqlLedger::open(path, store::OpenMode::Demonstration);
            if (!made || !fillSealed(**made, clock)) return;
        }
        auto opened = store::SqlLedger::openToRead(path, store::OpenMode::Demonstration);
        if (!opened) return;
        const auto rows = seal::readKeyRows((*opened)->access().value());
        if (!rows || !*rows) return;
        const auto handle = seal::nameHandle(founder, (*rows)->names);
        auto keys = seal::Keyring::signIn(**rows, *handle, seal::Secret::copyOf(phrase));
        if (!keys) return;
        ring = std::make_shared<const seal::Keyring>(std::move(*keys));
        ledger = std::move(*opened);
    }
};

Verified& verified() {
    static Verified made;
    return made;
}

void verify(benchmark::State& state, const std::shared_ptr<const seal::Keyring>& ring) {
    store::SqlLedger* const ledger = verified().ledger.get();
    if (ledger == nullptr) return state.SkipWithError("the record did not open");
    if (ring)
        ledger->use(std::make_shared<seal::SealingCodec>(ring, ledger->keyShelf()));
    else
        ledger->use(ledger::plainCodec());
    for (auto _ : state) {
        const Watch watch;
        const auto report = ledger->check({}, ring);
        addTo(state, watch.took());
        if (!report || report->isWrong()) return state.SkipWithError("it is not as it was written");
    }
    state.counters["rows"] = double(ledger->head().size);
}

/// All stored bytes, how long each body is sealed, and one signature of each entry that is signed.
struct Floor {
    std::vector<std::string> entries;
    std::vector<std::size_t> boxSizes;
    std::string message = std::string(600, 'm');
    seal::Identity identity = seal::Identity::generate();
    std::string signature = identity.sign(message);
};

Floor& floorOf(store::SqlLedger& ledger) {
    static Floor made = [&] {
        Floor read;
        const bool isRead = store::eachEntry(ledger.database(), [&](auto, const auto& bytes) {
                                read.entries.emplace_back(bytes);
                                const auto envelope = ledger::readEnvelope(read.entries.back());
                                if (envelope) read.boxSizes.push_back(envelope->closed.body.size());
                                return true;
                            }).ok();
        if (!isRead) read.entries.clear();
        return read;
    }();
    return made;
}

double cores() { return double(sysconf(_SC_NPROCESSORS_ONLN)); }

void hashAll(const Floor& floor) {
    for (const std::string& bytes : floor.entries)
        benchmark::DoNotOptimize(ledger::leafHash(bytes));
}

void checkAll(const Floor& floor) {
    for (std::size_t i = 0; i < floor.entries.size(); i += signedEach)
        benchmark::DoNotOptimize(
            seal::holds(floor.signature, floor.message, floor.identity.known()));
}

void hashOrCheck(benchmark::State& state) {
    if (verified().ledger == nullptr) return state.SkipWithError("the record did not open");
    const Floor& floor = floorOf(*verified().ledger);
    for (auto _ : state) {
        const Watch hashing;
        hashAll(floor);
        const Took hashed = hashing.took();
        const Watch checking;
        checkAll(floor);
        Took checked = checking.took();
        checked.seconds /= cores();
        addTo(state, hashed.seconds > checked.seconds ? hashed : checked);
    }
}

/// A body of each length that there is, sealed.
std::map<std::size_t, seal::Sealed> boxesFor(const Floor& floor, const seal::Secret& key,
                                             const std::string& with) {
    std::map<std::size_t, seal::Sealed> boxes;
    for (const std::size_t size : floor.boxSizes)
        if (size >= seal::tagSize && !boxes.contains(size))
            boxes.emplace(size, seal::sealBytes(key, std::string(size - seal::tagSize, 'b'), with));
    return boxes;
}

/// As if all of it were spread over the cores and nothing were lost by that.
void least(benchmark::State& state) {
    if (verified().ledger == nullptr) return state.SkipWithError("the record did not open");
    const Floor& floor = floorOf(*verified().ledger);
    const seal::Secret key = seal::Secret::copyOf(std::string(seal::keySize, 'k'));
    const std::string with(300, 'w');
    const auto boxes = boxesFor(floor, key, with);
    for (auto _ : state) {
        const Watch watch;
        const auto read = store::eachEntry(verified().ledger->database(), [](auto, auto bytes) {
            benchmark::DoNotOptimize(bytes);
            return true;
        });
        if (!read) return state.SkipWithError("the rows could not be read");
        hashAll(floor);
        for (const std::size_t size : floor.boxSizes)
            benchmark::DoNotOptimize(seal::openBytes(key, boxes.at(size), with));
        checkAll(floor);
        Took took = watch.took();
        took.seconds /= cores();
        addTo(state, took);
    }
}

}  // namespace

void addVerifies() {
    registerAll({{"verify/opened", [](benchmark::State& state) { verify(state, verified().ring); }},
                 {"verify/closed", [](benchmark::State& state) { verify(state, nullptr); }},
                 {"verify/least", least},
                 {"verify/floor", hashOrCheck}},
                1, benchmark::kMillisecond);
}

}  // namespace bench
