// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "record/card.h"

// ICU's rules "Any-Latin; Latin-ASCII; Lower" leave ASCII as it is but for A to Z (Unicode CLDR,
// transform Latin-ASCII, which maps only what lies outside ASCII). A letter outside ASCII at the
// end makes the whole text go through ICU; the words before it have to come out the same.
TEST(SearchKeys, AsciiIsFoldedAsIcuFoldsIt) {
    std::string all;
    for (char letter = ' '; letter < 0x7f; ++letter) all += std::string("x") + letter + "Y ";
    const auto plain = record::searchWords(all);
    auto throughIcu = record::searchWords(all + " \u00e9");
    ASSERT_FALSE(throughIcu.empty());
    EXPECT_EQ(throughIcu.back(), "e");
    throughIcu.pop_back();
    EXPECT_EQ(plain, throughIcu);
    EXPECT_EQ(record::searchWords("O'Brien D-4417"),
              (std::vector<std::string>{"obrien", "d", "4417"}));
}

TEST(SearchKeys, NothingTypedIsNoWord) {
    EXPECT_TRUE(record::searchWords("").empty());
    EXPECT_TRUE(record::searchWords(" - ").empty());
}
