// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// shared/schema/pack.schema.json against the reader: on thousands of damaged packs both have to say
// the same, except for what no shape shows.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include "core/packs/everykey.h"
#include "packs/reader.h"

namespace {

using nlohmann::json;
using Pointer = json::json_pointer;

class PackSchema : public testing::Test {
  protected:
    PackSchema() {
        // The library's propertyNames takes no pattern, so the schema names languages by
        // patternProperties.
        const json source = json::parse(everykey::fileBytes("shared/schema/pack.schema.json"));
        valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
        parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(source), m_schema);
    }
    bool accepts(const json& pack) {
        return m_validator.validate(m_schema, valijson::adapters::NlohmannJsonAdapter(pack),
                                    nullptr);
    }
    /// Both have to agree; gives whether the pack was refused.
    bool compare(const json& pack, const std::string& what);

  private:
    valijson::Schema m_schema;
    valijson::Validator m_validator{valijson::Validator::kStrongTypes};
};

/// The faults that only the reader can see, by how their sentences begin or end. Beside these:
/// doubled keys, depth, bytes and UTF-8, which a parsed document no longer shows.
bool isReadersOnly(const packs::Fault& fault) {
    static constexpr auto parts = std::to_array<const char*>(
        {"There is already a ", "There is no ", "This text is missing in ", "A step can't ",
         "The time asked is shorter", "The longest time is shorter", "A supply of a timed step",
         "A supply can't be taken", "This supply stands here a second", "The ages end",
         "This can be answered", "The pack has no language", "at most 512 steps",
         "holds a control character"});
    return std::ranges::any_of(
        parts, [&](const char* part) { return fault.sentence.find(part) != std::string::npos; });
}

bool PackSchema::compare(const json& pack, const std::string& what) {
    const packs::Reading reading = packs::read(pack.dump());
    const bool hasShapeFault = !std::ranges::all_of(reading.faults, isReadersOnly);
    std::string said = reading.faults.empty() ? "nothing" : reading.faults[0].sentence;
    EXPECT_EQ(accepts(pack), !hasShapeFault) << what << "; the reader says: " << said;
    for (const packs::Fault& fault : reading.faults)
        EXPECT_TRUE(fault.remedy.ends_with('.')) << what << ": " << fault.sentence;
    return !reading.faults.empty();
}

/// All sentences are read by the same rule: the Spanish ones stand for them.
bool isEnglishSentence(const Pointer& pointer) {
    return !pointer.empty() && pointer.back() == "en" && pointer.to_string() != "/title/en";
}

void collectPointers(const json& node, const Pointer& at, std::vector<Pointer>& pointers) {
    if (!isEnglishSentence(at)) pointers.push_back(at);
    if (node.is_object())
        for (const auto& [key, value] : node.items()) collectPointers(value, at / key, pointers);
    if (node.is_array())
        for (std::size_t i = 0; i < node.size(); ++i) collectPointers(node[i], at / i, pointers);
}

const json goodPack = json::parse(everykey::bytes());

std::vector<Pointer> allPointers() {
    std::vector<Pointer> pointers;
    collectPointers(goodPack, Pointer(), pointers);
    return pointers;
}

TEST_F(PackSchema, AcceptsTheGoodPacks) {
    for (const char* file : {"tests/fixtures/packs/every-key.json", "shared/packs/clean-hands.json",
                             "shared/packs/weekly-dressing-upper-arm.json"}) {
        const json pack = json::parse(everykey::fileBytes(file));
        EXPECT_TRUE(accepts(pack)) << file;
        EXPECT_FALSE(compare(pack, file));
    }
}

TEST_F(PackSchema, AgreesWhenAValueIsReplaced) {
    const std::array<json, 11> values{json(nullptr),
                                      json(true),
                                      json(-1),
                                      json(0),
                                      json(2'000'000'000),
                                      json(1.5),
                                      json(""),
                                      json("no such word"),
                                      json::array(),
                                      json::object(),
                                      json::array({json::object()})};
    int refused = 0;
    for (const Pointer& pointer : allPointers()) {
        for (const json& value : values) {
            json pack = goodPack;
            pack[pointer] = value;
            // A later format is not judged by its shape.
            if (pointer.to_string() == "/pack" && value == 2'000'000'000) continue;
            refused += compare(pack, pointer.to_string() + " = " + value.dump()) ? 1 : 0;
        }
    }
    EXPECT_GT(refused, 1000);
}

TEST_F(PackSchema, AgreesWhenAKeyIsMissing) {
    int refused = 0;
    for (const Pointer& pointer : allPointers()) {
        if (pointer.empty()) continue;
        json pack = goodPack;
        json& parent = pack[pointer.parent_pointer()];
        if (parent.is_object())
            parent.erase(pointer.back());
        else
            parent.erase(static_cast<std::size_t>(std::stoul(pointer.back())));
        refused += compare(pack, "without " + pointer.to_string()) ? 1 : 0;
    }
    EXPECT_GT(refused, 50);
}

TEST_F(PackSchema, AgreesWhenAKeyIsUnknown) {
    for (const Pointer& pointer : allPointers()) {
        if (!goodPack[pointer].is_object()) continue;
        json pack = goodPack;
        pack[pointer]["unheard of"] = "x";
        EXPECT_TRUE(compare(pack, "unknown key in " + pointer.to_string()));
    }
}

TEST_F(PackSchema, AgreesWhenAnItemIsDoubled) {
    for (const Pointer& pointer : allPointers()) {
        if (!goodPack[pointer].is_array() || goodPack[pointer].empty()) continue;
        json pack = goodPack;
        pack[pointer].push_back(goodPack[pointer][0]);
        compare(pack, "doubled in " + pointer.to_string());
    }
}

TEST_F(PackSchema, AgreesOnTheEdgesOfNamesAndVersions) {
    for (const char* version : {"0.0.0", "1.2", "1.2.3.4", "01.2.3", "1.02.3", "1..3", ".1.2",
                                "1.2.", "1.2.a", "999999999.0.0", "1000000000.0.0", "10.20.30"})
        compare(json::parse(everykey::with("/version", version)), version);
    for (const char* id : {"A", "a_b", "a.b", "a-b", "a b", "é"}) {
        compare(json::parse(everykey::with("/id", id)), id);
        compare(json::parse(everykey::with("/words/0/id", id)), id);
    }
    for (const char* tag :
         {"e", "en-", "-en", "en--GB", "zh-Hant-TW", "1en", "abcdefghi", "ar-001"})
        compare(json::parse(everykey::with("/languages", json{"en", "es", tag})), tag);
    for (const char* day : {"2026-13-01", "2026-1-01", "2026-12-32", "2026-12-31", "20261231"})
        compare(json::parse(everykey::with("/translations/es/on", day)), day);
}

// What this comparison is worth: a wrong schema is noticed.
TEST_F(PackSchema, IsNoRubberStamp) {
    EXPECT_FALSE(accepts(json::object()));
    EXPECT_FALSE(accepts(json::parse(everykey::with("/away/after_s", 0))));
    EXPECT_TRUE(accepts(json::parse(everykey::with("/away/after_s", 1))));
}

}  // namespace
