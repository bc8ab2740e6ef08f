// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/errortext.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

TEST(ErrorText, EveryCodeHasASentenceOfItsOwn) {
    for (const base::Code code : base::allCodes()) {
        const QString sentence = ui::ErrorText::of({code});
        EXPECT_FALSE(sentence.isEmpty()) << base::slug(code);
        EXPECT_NE(sentence.toStdString(), base::english({code})) << base::slug(code);
    }
}

// What happened, what is safe, what to do: two full stops at least, no exclamation mark.
TEST(ErrorText, EverySentenceIsCalmAndGoesOnToWhatToDo) {
    for (const base::Code code : base::allCodes()) {
        const QString sentence = ui::ErrorText::of({code});
        EXPECT_GE(sentence.count(u'.'), 2) << base::slug(code);
        EXPECT_FALSE(sentence.contains(u'!')) << base::slug(code);
    }
}

TEST(ErrorText, ArgumentsTakeTheirPlaces) {
    const QString sentence =
        ui::ErrorText::of({base::Code::FileUnreadable, {"/a%2b", "no such file"}});
    EXPECT_TRUE(sentence.contains(QStringLiteral("no such file")));
    EXPECT_TRUE(sentence.contains(QStringLiteral("/a%2b"))) << sentence.toStdString();
}

// Whoever types letters off a paper has lines of letters before them, and no "code".
TEST(ErrorText, OfMistypedLettersNamesTheLineOnThePaper) {
    for (const base::Code code : {base::Code::SealCodeLetter, base::Code::SealCodeLine}) {
        const QString sentence = ui::ErrorText::of({code, {"4"}});
        EXPECT_TRUE(sentence.contains(QStringLiteral("line numbered 4"))) << base::slug(code);
        EXPECT_TRUE(sentence.contains(QStringLiteral("paper"))) << base::slug(code);
        EXPECT_FALSE(sentence.contains(QStringLiteral("code"))) << base::slug(code);
    }
}
