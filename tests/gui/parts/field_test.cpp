// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/field.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "look.h"

namespace {
QString words(const char* utf8) { return QString::fromUtf8(utf8); }
}  // namespace

TEST(DateFrom, UnderstandsAMonthInWordsAndIso8601) {
    const QDate day(1961, 5, 3);
    for (const char* typed : {"3 May 1961", "3. May 1961", "May 3, 1961", "1961-05-03", "1961-5-3",
                              " 03 may 1961 ", "3 MAY 1961"})
        EXPECT_EQ(ui::dateFrom(words(typed)), day) << typed;
}

TEST(DateFrom, RefusesWhatCanBeTwoDaysOrNone) {
    for (const char* typed : {"03/05/1961", "3.5.1961", "31 April 1961", "1961-02-29", "May 1961",
                              "3 Mai-tai 1961", "", "0000-00-00", "12 December 1200"})
        EXPECT_FALSE(ui::dateFrom(words(typed))) << typed;
}

TEST(Harmless, TakesOutControlAndDirectionSignsAndKeepsNames) {
    EXPECT_EQ(ui::harmless(words("Teo\u202Edor\u200F\tOkonjo\n")), words("Teodor Okonjo"));
    EXPECT_EQ(ui::harmless(words("مريم البحري")), words("مريم البحري"));
    EXPECT_EQ(ui::harmless(words("Mu\u006E\u0303oz")), words("Muñoz"));
}

TEST(WordsField, SaysInPlaceThatANameIsTooLong) {
    ui::Look::instance();
    ui::WordsField field(words("Name"), words("name"), ui::Must::Fill);
    field.setWords(QString(ui::mostLetters + 1, u'a'));
    EXPECT_FALSE(field.check());
    EXPECT_TRUE(field.problem().contains(QString::number(ui::mostLetters)));
    field.setWords(QString(ui::mostLetters, u'a'));
    EXPECT_TRUE(field.check());
    field.setWords(words("Amara"));
    EXPECT_TRUE(field.problem().isEmpty()) << "the sentence goes when it is put right";
}

TEST(DateField, SaysInPlaceThatADayLiesInTheFuture) {
    ui::DateField field(words("Born"), words("born"), ui::Must::Fill, QDate(2026, 3, 2));
    field.edit()->setText(words("3 March 2026"));
    EXPECT_FALSE(field.check());
    EXPECT_TRUE(field.problem().contains(words("future")));
    field.edit()->setText(words("2 March 2026"));
    EXPECT_TRUE(field.check());
    EXPECT_EQ(field.isoDate(), "2026-03-02");
}

// What was understood is read again. Of a day in the record the weekday helps to see a slip; of a
// birth nobody knows it.
TEST(DateField, SaysADayInFullWithItsWeekdayAndABirthWithout) {
    const auto said = [](ui::DateField::Of of) {
        ui::DateField field(words("Day"), words("day"), ui::Must::Fill, QDate(2026, 3, 2), of);
        field.edit()->setText(words("1951-03-05"));
        for (const auto* label : field.findChildren<QLabel*>())
            if (label->text().contains(words("1951"))) return label->text();
        return QString();
    };
    EXPECT_EQ(said(ui::DateField::Of::Day), words("Monday, 5 March 1951"));
    EXPECT_EQ(said(ui::DateField::Of::Birth), words("5 March 1951"));
}

TEST(NumberField, TakesWholeNumbersInItsRangeOnly) {
    ui::NumberField field(words("Outside length"), words("mm"), ui::Must::Fill,
                          {.least = 0, .most = 600});
    for (const char* typed : {"", "-1", "601", "3.5", "thirty"}) {
        field.edit()->setText(words(typed));
        EXPECT_FALSE(field.check()) << typed;
    }
    field.edit()->setText(words("30"));
    EXPECT_TRUE(field.check());
    EXPECT_EQ(field.number(), 30);
}
