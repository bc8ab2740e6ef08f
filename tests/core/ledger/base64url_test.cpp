// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/base64url.h"

#include <gtest/gtest.h>

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
    }
}

TEST(Base64Url, RefusesEveryOtherSpelling) {
    for (const char* text : {"Zg==", "Zh", "Z", "Zm9v\n", "Zm 9v", "+/+/", "Zm9vYmFy="})
        EXPECT_EQ(fromBase64Url(text), std::nullopt) << text;
}

}  // namespace
}  // namespace ledger
