// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Values that read and write themselves. Paths in errors are JSON Pointers (RFC 6901); the range of
// whole numbers is that of RFC 8785 and RFC 7493: up to 2^53 - 1.
#include "base/fields.h"

#include <gtest/gtest.h>

namespace base {
namespace fieldstest {

enum class Colour { Red, Blue };

struct Leaf {
    std::string word;
    bool operator==(const Leaf&) const = default;
    template <class V>
    void fields(V& v) {
        v("word", word);
    }
};

struct Tree {
    LineId id;
    std::string name;
    int height = 0;
    std::int64_t age = 0;
    bool green = false;
    Colour colour = Colour::Red;
    std::optional<int> rings;
    std::vector<Leaf> leaves;
    std::optional<Leaf> top;
    bool operator==(const Tree&) const = default;
    template <class V>
    void fields(V& v) {
        v("id", id), v("name", name), v("height", height), v("age", age), v("green", green);
        v("colour", colour), v("rings", rings), v("leaves", leaves), v("top", top);
    }
};

}  // namespace fieldstest

template <>
struct Names<fieldstest::Colour> {
    static constexpr std::array<std::pair<fieldstest::Colour, const char*>, 2> all{{
        {fieldstest::Colour::Red, "red"},
        {fieldstest::Colour::Blue, "blue"},
    }};
};

namespace {

using fieldstest::Colour;
using fieldstest::Tree;

nlohmann::json goodTree() {
    return nlohmann::json::parse(R"({"id": "aaaaaaaaaaaaaaaaaaaaaaaaae", "name": "rowan",
        "height": -3, "age": 9007199254740991, "green": true, "colour": "blue", "rings": 4,
        "leaves": [{"word": "a"}, {"word": ""}], "top": {"word": "b"}})");
}

TEST(Fields, AWholeValueComesBackAsItWent) {
    const auto tree = fromJson<Tree>(goodTree());
    ASSERT_TRUE(tree.ok()) << english(tree.error());
    EXPECT_EQ(tree->age, 9007199254740991);
    EXPECT_EQ(tree->colour, Colour::Blue);
    EXPECT_EQ(tree->leaves.size(), 2U);
    EXPECT_EQ(toJson(*tree), goodTree());
}

TEST(Fields, WhatIsAbsentIsLeftOut) {
    nlohmann::json bare = goodTree();
    for (const char* key : {"rings", "leaves", "top"}) bare.erase(key);
    const auto tree = fromJson<Tree>(bare);
    ASSERT_TRUE(tree.ok());
    EXPECT_EQ(tree->rings, std::nullopt);
    EXPECT_EQ(toJson(*tree), bare);
}

struct WrongRow {
    const char* pointer;
    nlohmann::json value;
    const char* told;  ///< the path in the error, where it is another
};

TEST(Fields, TheFirstThatIsWrongIsToldByItsPath) {
    const std::vector<WrongRow> rows{
        {"/id", "no id", nullptr},
        {"/id", 7, nullptr},
        {"/name", 7, nullptr},
        {"/name", nullptr, nullptr},
        {"/height", 1.0, nullptr},
        {"/height", 2147483648LL, nullptr},
        {"/height", -2147483649LL, nullptr},
        {"/height", "3", nullptr},
        {"/age", 9007199254740992LL, nullptr},
        {"/age", -9007199254740992LL, nullptr},
        {"/age", 18446744073709551615ULL, nullptr},
        {"/green", 1, nullptr},
        {"/green", "true", nullptr},
        {"/colour", "green", nullptr},
        {"/colour", 0, nullptr},
        {"/rings", "4", nullptr},
        {"/rings", nullptr, nullptr},
        {"/leaves", nlohmann::json::object(), nullptr},
        {"/leaves/1", "a", nullptr},
        {"/leaves/1/word", false, nullptr},
        {"/leaves/0/colour", "red", nullptr},
        {"/top", nlohmann::json::object(), "/top/word"},
        {"/extra", 1, nullptr},
    };
    for (const WrongRow& row : rows) {
        nlohmann::json json = goodTree();
        json[nlohmann::json::json_pointer(row.pointer)] = row.value;
        const auto tree = fromJson<Tree>(json);
        ASSERT_FALSE(tree.ok()) << row.pointer << " = " << row.value;
        EXPECT_EQ(tree.error().code, Code::BadField);
        EXPECT_EQ(tree.error().args.front(), row.told ? row.told : row.pointer) << row.value;
    }
}

TEST(Fields, EachThatIsNeededIsMissedByName) {
    for (const char* key : {"id", "name", "height", "age", "green", "colour"}) {
        nlohmann::json json = goodTree();
        json.erase(key);
        const auto tree = fromJson<Tree>(json);
        ASSERT_FALSE(tree.ok()) << key;
        EXPECT_EQ(tree.error(), (Error{Code::BadField, {std::string("/") + key, "is missing"}}));
    }
}

TEST(Fields, OnlyAnObjectIsAValue) {
    for (const char* text : {"[]", "7", "null", "\"x\"", "true"})
        EXPECT_FALSE(fromJson<Tree>(nlohmann::json::parse(text)).ok()) << text;
}

TEST(Names, AWordAndItsValueBelongTogether) {
    EXPECT_EQ(nameOf(Colour::Blue), "blue");
    EXPECT_EQ(valueOf<Colour>("red"), Colour::Red);
    EXPECT_EQ(valueOf<Colour>("Red"), std::nullopt);
    EXPECT_EQ(valueOf<Colour>(""), std::nullopt);
}

}  // namespace
}  // namespace base
