// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The letters of a recovery sheet as people type them. Base 32 as Douglas Crockford has it
// (crockford.com/base32.html, from memory): no I, L, O and U; O is read as 0, I and L as 1.
#include "signin/sheetlines.h"

#include <gtest/gtest.h>

TEST(SheetLines, LettersThatLookLikeFiguresAreFigures) {
    EXPECT_EQ(ui::bareLetters(QStringLiteral("0O1IL-2abcd")),
              ui::bareLetters(QStringLiteral("00111 2ABCD")));
    EXPECT_EQ(ui::bareLetters(QStringLiteral("oil")), QStringLiteral("011"));
    EXPECT_NE(ui::bareLetters(QStringLiteral("B8")), ui::bareLetters(QStringLiteral("88")));
}
