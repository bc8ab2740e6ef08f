// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/base64url.h"

#include <gtest/gtest.h>
#include <sodium.h>

#include <random>

namespace ledger {
namespace {

// RFC 4648 sections 9 (14fb9c03d97e) and 10, the padding left off as section 3.2 allows.
TEST(Base64Url, WritesAndReadsThePublishedVectors) {
    const std::pair<std::string, std::string> rows[] = {{"", ""},
                                                        {"f", "Zg"},
                                                        {"fo", "Zm8"},
                                                        {"foo", "Zm9v"},
                                                        {"foob", "Zm9vYg"},
                                                        {"fooba", "Zm9vYmE"},
                                                        {"foobar", "Zm9vYmFy"},
                                                        {"\xff\xef\xbe", "_---"},
                                                        {"\x14\xfb\x9c\x03\xd9\x7e", "FPucA9l-"}};
    for (const auto& [bytes, text] : rows) {
        EXPECT_EQ(toBase64Url(bytes), text);
        EXPECT_EQ(fromBase64Url(text), bytes);
        EXPECT_TRUE(isBase64Url(text));
    }
}

TEST(Base64Url, RefusesEveryOtherSpelling) {
    for (const char* text : {"Zg==", "Zh", "Z", "Zm9v\n", "Zm 9v", "+/+/", "Zm9vYmFy="})
        EXPECT_EQ(fromBase64Url(text), std::nullopt) << text;
}

TEST(Base64Url, RefusesLettersBeyondAscii) {
    for (const char* text : {"Zm9\xff", "5-dhh\xffg", "Zm9\xc3\xa4", "\x80\x80"})
        EXPECT_EQ(fromBase64Url(text), std::nullopt) << text;
}

/// As libsodium 1.0.18 reads it, which takes some letters beyond ASCII for others.
std::optional<std::string> readBySodium(const std::string& text) {
    std::string bytes(text.size() + 1, '\0');
    std::size_t length = 0;
    const char* end = nullptr;
    const int failed = sodium_base642bin(reinterpret_cast<unsigned char*>(bytes.data()),
                                         bytes.size(), text.data(), text.size(), nullptr, &length,
                                         &end, sodium_base64_VARIANT_URLSAFE_NO_PADDING);
    if (failed != 0 || end != text.data() + text.size()) return std::nullopt;
    return bytes.substr(0, length);
}

TEST(Base64Url, IsOneJustWhereItIsRead) {
    for (int one = 0; one < 256; ++one)
        for (std::size_t place = 0; place < 7; ++place)
            for (std::size_t size = place + 1; size <= 7; ++size) {
                std::string text(size, 'A');
                text[place] = static_cast<char>(one);
                EXPECT_EQ(isBase64Url(text), fromBase64Url(text).has_value()) << text;
            }
}

TEST(Base64Url, ReadsAnyAsciiAsLibsodiumDoes) {
    constexpr unsigned seed = 4648;
    constexpr std::string_view letters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_AAAABQgw+/= \n";
    std::mt19937 random(seed);
    int read = 0;
    for (int round = 0; round < 50'000; ++round) {
        std::string text(random() % 12, 'A');
        for (char& letter : text) letter = letters[random() % letters.size()];
        ASSERT_EQ(fromBase64Url(text), readBySodium(text)) << text;
        read += fromBase64Url(text) ? 1 : 0;
    }
    EXPECT_GT(read, 5'000);
}

}  // namespace
}  // namespace ledger
