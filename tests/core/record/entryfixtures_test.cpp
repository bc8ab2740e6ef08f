// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What was once written is read for ever: one committed entry of every type and version.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>

#include "record/shapes.h"
#include "support/filled.h"
#include "support/paths.h"

namespace record {
namespace {

using nlohmann::json;

/// A type of payload with everything in it that it can hold.
struct Shape {
    Payload payload;
    json words;
    std::string file() const {
        return typeOf(payload) + ".v" + std::to_string(versionOf(payload)) + ".json";
    }
};

template <std::size_t I = 0>
void addShapes(std::vector<Shape>& shapes) {
    if constexpr (I < std::variant_size_v<Payload>) {
        std::variant_alternative_t<I, Payload> said;
        support::Filler filler;
        said.fields(filler);
        shapes.push_back({said, filler.words});
        addShapes<I + 1>(shapes);
    }
}

std::vector<Shape> allShapes() {
    std::vector<Shape> shapes;
    addShapes(shapes);
    return shapes;
}

std::filesystem::path entriesFolder() {
    return std::filesystem::path(support::sourceDir()) / "tests/fixtures/entries";
}

json fixture(const std::string& file) {
    std::ifstream in(entriesFolder() / file);
    return json::parse(in, nullptr, false);
}

template <class Id>
Id fixedId(char letter) {
    return *Id::parse(std::string(25, letter) + 'a');
}

ledger::Entry entryOf(const Payload& payload) {
    ledger::Body body{.id = fixedId<base::CommandId>('c')};
    body.type = typeOf(payload);
    body.tv = versionOf(payload);
    body.atMs = *base::parseIsoUtc("2026-03-02T10:00:00.000Z");
    body.zone = "UTC";
    body.by = fixedId<base::StaffId>('s');
    body.role = "teacher";
    body.app = "ninebark";
    body.about = learnersIn(payload);
    body.data = dataOf(payload);
    ledger::Entry entry{.ledger = fixedId<base::LedgerId>('d'), .body = body};
    entry.wallMs = body.atMs;
    entry.bootId = "boot";
    return entry;
}

// Run by hand, see the README beside the files; a file that is there is left as it is.
TEST(EntryFixtures, DISABLED_WriteMissingEntries) {
    for (const Shape& shape : allShapes()) {
        const auto path = entriesFolder() / shape.file();
        if (std::filesystem::exists(path)) continue;
        const json written = {{"data", dataOf(shape.payload)},
                              {"words", shape.words},
                              {"entry", *ledger::entryBytes(entryOf(shape.payload))}};
        std::ofstream(path) << written.dump(2) << '\n';
    }
}

TEST(EntryFixtures, EveryTypeHasOneInTheShapeItIsWrittenInNow) {
    for (const Shape& shape : allShapes()) {
        const json kept = fixture(shape.file());
        ASSERT_TRUE(kept.is_object()) << shape.file() << " is missing: see the README beside it";
        const std::string advice =
            shape.file() + ": the shape has changed, so it needs a new version and a step to it";
        EXPECT_EQ(kept["data"], dataOf(shape.payload)) << advice;
        EXPECT_EQ(kept["words"], shape.words) << advice;
    }
}

TEST(EntryFixtures, EveryOneThatWasEverWrittenIsStillRead) {
    std::set<std::string> types;
    for (const auto& item : std::filesystem::directory_iterator(entriesFolder())) {
        if (item.path().extension() != ".json") continue;
        const json kept = fixture(item.path().filename().string());
        const auto entry = ledger::readEntry(kept["entry"].get<std::string>());
        ASSERT_TRUE(entry.ok()) << item.path() << base::english(entry.error());
        EXPECT_EQ(entry->body.data, kept["data"]) << item.path();
        EXPECT_EQ(item.path().filename().string(),
                  entry->body.type + ".v" + std::to_string(entry->body.tv) + ".json");
        const auto read = lifted(entry->body);
        EXPECT_TRUE(read.payload.ok()) << item.path() << base::english(read.payload.error());
        types.insert(entry->body.type);
    }
    EXPECT_EQ(types.size(), allTypes().size()) << "a type that was released never goes away";
}

TEST(EntryFixtures, EveryVersionHasItsWayToTheNewest) { EXPECT_TRUE(shapes().isComplete()); }

}  // namespace
}  // namespace record
