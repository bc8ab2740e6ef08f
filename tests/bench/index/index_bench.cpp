// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A million sealed search keys: how long until the first word is answered after signing in, and how
// long the slowest hundredth of words takes then.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <random>

#include "bench/people/fillledger.h"
#include "bench/sealedkeys.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "ledger/memoryledger.h"

namespace bench {
namespace {

constexpr std::size_t leastKeys = 1'000'000;
constexpr int words = 2000;  // of one repetition
constexpr std::size_t longestWord = 6;

/// Of so many people that there are a million keys: their names, their learners' and their numbers.
std::vector<ledger::CardKeys> manyKeys() {
    std::vector<ledger::CardKeys> all;
    const ledger::MemoryLedger ledger;
    std::size_t keys = 0;
    for (int number = 0; keys < leastKeys; ++number) {
        const ledger::CardRow card = personDrafts(ledger, number, noon()).derived.cards.front();
        keys += card.searchKeys.size();
        all.push_back({card.learner.text(), card.sortKey, card.searchKeys});
    }
    return all;
}

/// The index as it lies on a disk, and what opens it.
struct Stored {
    ledger::MemoryKeyShelf keys;
    ledger::MemoryCardShelf shelf;
    std::shared_ptr<seal::SealingCodec> codec =
        std::make_shared<seal::SealingCodec>(someKeys(), keys);
    ledger::RightEdge edge;
    std::vector<std::string> words;
    std::uint64_t searchKeys = 0;

    Stored() {
        std::vector<ledger::CardKeys> all = manyKeys();
        std::mt19937 random(20261126);
        for (const ledger::CardKeys& card : all) searchKeys += card.searchKeys.size();
        for (int i = 0; i < bench::words; ++i) {
            const auto& found = all[random() % all.size()].searchKeys;
            words.push_back(found[random() % found.size()].substr(0, 1 + random() % longestWord));
        }
        edge.append(ledger::leafHash("one"));
        ledger::CardIndex index(shelf);
        index.use(codec);
        isGood = index.make(std::move(all), edge).ok();
    }
    bool isGood = false;
};

Stored& stored() {
    static Stored made;
    return made;
}

void openIndex(benchmark::State& state) {
    Stored& disk = stored();
    for (auto _ : state) {
        ledger::CardIndex index(disk.shelf);
        index.use(disk.codec);
        const Watch watch;
        const auto found = index.find({.words = {"a"}}, disk.edge);
        addTo(state, watch.took());
        if (!disk.isGood || !found) return state.SkipWithError("the index did not open");
    }
    state.counters["keys"] = double(disk.searchKeys);
}

/// The least that opening takes: every row through the seal.
void openRows(benchmark::State& state) {
    Stored& disk = stored();
    for (auto _ : state) {
        const Watch watch;
        for (const auto& [name, row] : disk.shelf.stored()) {
            const std::string place = name == "cards" ? name : "segment/" + name;
            benchmark::DoNotOptimize(disk.codec->openRow(place, row));
        }
        addTo(state, watch.took());
    }
}

/// What the slowest hundredth of these takes at least.
Took slowestHundredth(std::vector<Took> all) {
    std::sort(all.begin(), all.end(),
              [](const Took& a, const Took& b) { return a.seconds < b.seconds; });
    return all[all.size() * 99 / 100];
}

void findWords(benchmark::State& state) {
    Stored& disk = stored();
    static ledger::CardIndex index(disk.shelf);
    static const bool isOpen = [&] {
        index.use(disk.codec);
        return index.find({.words = {"a"}}, disk.edge).ok();
    }();
    for (auto _ : state) {
        std::vector<Took> took;
        for (const std::string& word : disk.words) {
            const Watch watch;
            const auto found = index.find({.words = {word}, .limit = 50}, disk.edge);
            took.push_back(watch.took());
            if (!isOpen || !found) return state.SkipWithError("the index refused");
        }
        addTo(state, slowestHundredth(std::move(took)));
    }
}

/// The same words gathered anew each time, as it is without a memory.
void gatherWords(benchmark::State& state) {
    Stored& disk = stored();
    std::vector<std::shared_ptr<const ledger::Segment>> segments;
    for (const auto& [name, row] : disk.shelf.stored()) {
        auto bytes = disk.codec->openRow("segment/" + name, row);
        if (!bytes || !*bytes) continue;
        if (auto segment = ledger::Segment::read(std::move(**bytes))) segments.push_back(*segment);
    }
    for (auto _ : state) {
        std::vector<Took> took;
        for (const std::string& word : disk.words) {
            const Watch watch;
            for (const auto& segment : segments)
                benchmark::DoNotOptimize(ledger::Begun::of(segment->beginning(word)));
            took.push_back(watch.took());
        }
        addTo(state, slowestHundredth(std::move(took)));
    }
}

}  // namespace

void addIndexes() {
    registerAll({{"index/open/index", openIndex},
                 {"index/open/seal", openRows},
                 {"index/word/index", findWords},
                 {"index/word/gathered", gatherWords}},
                1, benchmark::kMicrosecond);
}

}  // namespace bench
