// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/jcs.h"

#include <gtest/gtest.h>

#include <bit>
#include <fstream>
#include <limits>
#include <sstream>

#include "support/paths.h"

namespace ledger {
namespace {

using nlohmann::json;

std::string jcsFixture(const std::string& name) {
    std::ifstream file(support::sourceDir() + "/tests/fixtures/jcs/" + name, std::ios::binary);
    EXPECT_TRUE(file.good()) << name;
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

class PublishedJson : public testing::TestWithParam<const char*> {};

// RFC 8785 and the test data of its reference repository; tests/fixtures/jcs/SOURCES.md.
TEST_P(PublishedJson, BecomesThePublishedBytes) {
    const std::string name = GetParam();
    const auto written = jcs(json::parse(jcsFixture(name + ".in.json")));
    ASSERT_TRUE(written.ok());
    EXPECT_EQ(*written, jcsFixture(name + ".out.json"));
    EXPECT_EQ(*jcs(json::parse(*written)), *written) << "canonical once, canonical again";
}

INSTANTIATE_TEST_SUITE_P(Jcs, PublishedJson,
                         testing::Values("rfc-sample", "rfc-sorting", "arrays", "french",
                                         "structures", "unicode", "values", "weird"),
                         [](const auto& test) {
                             std::string name = test.param;
                             std::erase(name, '-');
                             return name;
                         });

// RFC 8785 section 3.2.4 gives the bytes of the sample in hexadecimal.
TEST(Jcs, SampleHasThePublishedBytes) {
    const char* const hex =
        "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b333333"
        "3333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e"
        "67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d";
    const auto written = jcs(json::parse(jcsFixture("rfc-sample.in.json")));
    std::string got;
    for (const char letter : *written) {
        const auto byte = static_cast<unsigned char>(letter);
        got += "0123456789abcdef"[byte >> 4];
        got += "0123456789abcdef"[byte & 15];
    }
    EXPECT_EQ(got, hex);
}

// RFC 8785 appendix B.
TEST(Jcs, WritesThePublishedNumbers) {
    std::istringstream rows(jcsFixture("numbers.txt"));
    std::string bits;
    std::string expected;
    int count = 0;
    while (rows >> bits >> expected) {
        const auto number = std::bit_cast<double>(std::stoull(bits, nullptr, 16));
        const auto written = jcs(json(number));
        if (expected == "refused") {
            EXPECT_FALSE(written.ok()) << bits;
        } else {
            ASSERT_TRUE(written.ok()) << bits;
            EXPECT_EQ(*written, expected) << bits;
        }
        ++count;
    }
    EXPECT_EQ(count, 26);
}

TEST(Jcs, ReadsLargeIntegersAsDoubles) {
    EXPECT_EQ(*jcs(json(std::uint64_t{9007199254740993})), "9007199254740992");
    EXPECT_EQ(*jcs(json(std::int64_t{-9007199254740991})), "-9007199254740991");
    EXPECT_EQ(*jcs(json(std::numeric_limits<std::uint64_t>::max())), "18446744073709552000");
}

TEST(Jcs, RefusesTextThatIsNotUtf8) {
    const std::string bad[] = {"\xff", "\xc3", "\xed\xa0\x80", "\xc0\xaf", "\xf4\x90\x80\x80"};
    for (const std::string& text : bad) {
        EXPECT_EQ(jcs(json(text)).error().code, base::Code::LedgerBadText);
        EXPECT_EQ(jcs(json{{text, 1}}).error().code, base::Code::LedgerBadText);
        EXPECT_FALSE(isUtf8(text));
        EXPECT_FALSE(nfc(text).ok());
    }
    EXPECT_EQ(*jcs(json("\xef\xbb\xbf!")), "\"\xef\xbb\xbf!\"") << "a byte order mark is text";
}

TEST(Jcs, RefusesEndlessDepth) {
    json deep = 1;
    for (int i = 0; i < 100; ++i) deep = json::array({std::move(deep)});
    EXPECT_TRUE(jcs(deep).ok());
    deep = json::array({std::move(deep)});
    EXPECT_EQ(jcs(deep).error().code, base::Code::LedgerTooDeep);
}

TEST(EntryJcs, RefusesWhatAnEntryMayNotHold) {
    EXPECT_EQ(entryJcs(json(1.5)).error().code, base::Code::LedgerBadNumber);
    EXPECT_EQ(entryJcs(json(2.0)).error().code, base::Code::LedgerBadNumber);
    EXPECT_EQ(entryJcs(json(std::int64_t{9007199254740992})).error().code,
              base::Code::LedgerBadNumber);
    EXPECT_EQ(entryJcs(json(std::uint64_t{9007199254740992})).error().code,
              base::Code::LedgerBadNumber);
    EXPECT_EQ(entryJcs(json(std::int64_t{-9007199254740992})).error().code,
              base::Code::LedgerBadNumber);
    EXPECT_EQ(*entryJcs(json(largestInteger)), "9007199254740991");
    EXPECT_EQ(entryJcs(json("e\xcc\x81")).error().code, base::Code::LedgerBadText)
        << "a letter and its accent apart";
    EXPECT_TRUE(entryJcs(json("\xc3\xa9")).ok());
}

// Examples of Unicode Standard Annex 15, canonical composites (from memory).
// U+00C5.
TEST(EntryJcs, ComposesTextToNfc) {
    EXPECT_EQ(*nfc("A\xcc\x8a"), "\xc3\x85");
    EXPECT_EQ(*nfc("\xe1\xba\x9b\xcc\xa3"), "\xe1\xba\x9b\xcc\xa3");
    EXPECT_EQ(*nfc("plain"), "plain");
    EXPECT_TRUE(entryJcs(json(*nfc("A\xcc\x8a"))).ok());
}

}  // namespace
}  // namespace ledger
