// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Text as it is kept. Normal forms are those of UAX #15, direction characters those of UAX #9,
// well-formed UTF-8 that of RFC 3629; which of them a record may hold is our own rule.
#include "base/text.h"

#include <gtest/gtest.h>

#include <vector>

namespace base {
namespace {

struct TextRow {
    const char* what;
    std::string given, kept;
};

TEST(CleanText, IsKeptSo) {
    const std::vector<TextRow> rows{
        {"plain", "Amara Okonjo", "Amara Okonjo"},
        {"empty", "", ""},
        {"space around", "  Amara \n", "Amara"},
        {"tabs", "a\tb", "a b"},
        {"two lines", "a\nb", "a\nb"},
        {"carriage return", "a\r\nb", "a\nb"},
        {"line separator", "a\u2028b", "a\nb"},
        {"paragraph separator", "a\u2029b", "a\nb"},
        {"bell and escape", "a\u0007\u001b[2Jb", "a[2Jb"},
        {"C1 control", "a\u0090b", "ab"},
        {"delete", "a\u007fb", "ab"},
        {"NUL", std::string("a\0b", 3), "ab"},
        {"override", "\u202Eabc\u202C", "abc"},
        {"isolates", "\u2067abc\u2069", "abc"},
        {"byte order mark", "\uFEFFabc", "abc"},
        {"no character", "a\uFFFEb\uFFFFc", "abc"},
        {"NFC: e and acute", "Re\u0301nee", "R\u00E9nee"},
        {"NFC: Hangul jamo", "\u1100\u1161", "\uAC00"},
        {"NFC: Angstrom sign", "\u212B", "\u00C5"},
        {"NFC leaves ligatures", "\uFB01", "\uFB01"},
        {"beyond the first plane", "\U00020BB7\U0001F9F4", "\U00020BB7\U0001F9F4"},
        {"Arabic with its marks", "\u0645\u064F\u062D", "\u0645\u064F\u062D"},
    };
    for (const TextRow& row : rows) EXPECT_EQ(cleanText(row.given), row.kept) << row.what;
}

TEST(CleanText, IsOneLineWhereBreaksBecomeSpaces) {
    EXPECT_EQ(cleanText("a\nb\u2028c\u2029d", Breaks::BecomeSpaces), "a b c d");
    EXPECT_EQ(cleanText("\na\n", Breaks::BecomeSpaces), "a");
}

TEST(CleanText, CleanedTwiceIsCleanedOnce) {
    for (const std::string text : {"e\u202E\u0301\tx ", "\u1100\u200E\u1161", " \u2028 a"}) {
        const auto once = cleanText(text);
        ASSERT_TRUE(once.has_value());
        EXPECT_EQ(cleanText(*once), once);
    }
}

TEST(CleanText, RefusesWhatIsNotUtf8) {
    const std::vector<std::pair<const char*, std::string>> rows{
        {"lone continuation", "\x80"},
        {"cut short", "a\xE2\x82"},
        {"overlong slash", "\xC0\xAF"},
        {"surrogate", "\xED\xA0\x80"},
        {"beyond U+10FFFF", "\xF4\x90\x80\x80"},
        {"Latin-1", "M\xFCller"},
        {"never a byte", "a\xFF"},
    };
    for (const auto& [what, text] : rows) EXPECT_EQ(cleanText(text), std::nullopt) << what;
}

TEST(BlankText, HasNoLetterAndNoDigit) {
    for (const std::string text : {"", " ", "\t\n", "...", "-", "\u200B", "\u00A0", "\u0301"})
        EXPECT_TRUE(isBlank(text)) << '"' << text << '"';
    for (const std::string text : {"a", "7", " - x", "\u0634", "\u738B", "\u0967", "\U00020BB7"})
        EXPECT_FALSE(isBlank(text)) << '"' << text << '"';
}

}  // namespace
}  // namespace base
