// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How much may be said at once. The bounds are our own, no source.
#include "desk/bounds.h"

#include <gtest/gtest.h>

#include "base/text.h"
#include "support/ward.h"

namespace desk {
namespace {

using base::Code;

std::string repeated(const std::string& piece, int times) {
    std::string text;
    for (int i = 0; i < times; ++i) text += piece;
    return text;
}

record::AddPatient named(const std::string& name) {
    return {.name = name, .born = "1961-05-03", .number = "N-9", .language = "en"};
}

const std::string drawingHead =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 160\">";
std::string pathOf(const std::string& path) {
    return drawingHead + "<path fill=\"none\" stroke=\"#000\" stroke-width=\"2\" d=\"" + path +
           "\"/></svg>";
}
std::string typed(const std::string& name) {
    return drawingHead + "<text x=\"24\" y=\"110\" font-size=\"48\">" + name + "</text></svg>";
}

TEST(Bounds, ThreeHundredLettersOfAnyScriptAreAName) {
    for (const std::string letter : {"a", "\u0634", "\u738b", "\U00020BB7"}) {
        const std::string name = repeated(letter, 300);
        const auto kept = cleaned(named(name));
        ASSERT_TRUE(kept.ok()) << letter;
        EXPECT_EQ(std::get<record::AddPatient>(*kept).name, name);
    }
}

TEST(Bounds, ANameAndANoteHaveTheirMost) {
    EXPECT_TRUE(cleaned(named(std::string(mostOfName, 'a'))).ok());
    const auto refused = cleaned(named(std::string(mostOfName + 1, 'a')));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::TextBad);
    EXPECT_TRUE(cleaned(practice::WriteNote{.step = {}, .text = std::string(65536, 'a')}).ok());
    EXPECT_FALSE(cleaned(practice::WriteNote{.step = {}, .text = std::string(65537, 'a')}).ok());
}

TEST(Bounds, AListAndAWholeCommandHaveTheirMost) {
    practice::SeeLapse lapse;
    lapse.lapses.assign(mostItems, "x");
    EXPECT_TRUE(cleaned(lapse).ok());
    lapse.lapses.emplace_back("x");
    EXPECT_FALSE(cleaned(lapse).ok());
    lapse.lapses.assign(100, std::string(4000, 'x'));
    EXPECT_FALSE(cleaned(lapse).ok());
}

TEST(Bounds, ANameStandsOnOneLineAndANoteKeepsItsLines) {
    const auto patient = cleaned(named("Ada\nMay\tLund"));
    EXPECT_EQ(std::get<record::AddPatient>(*patient).name, "Ada May Lund");
    const auto note = cleaned(practice::WriteNote{.step = {}, .text = "one\ntwo"});
    EXPECT_EQ(std::get<practice::WriteNote>(*note).text, "one\ntwo");
}

TEST(Bounds, WhatIsNotUtf8IsRefused) { EXPECT_FALSE(cleaned(named("a\xC3(")).ok()); }

// UAX #9 section 2 lists the characters that turn direction.
TEST(Bounds, InvisibleCharactersAreLeftOut) {
    for (const std::string bad : {"\u202A", "\u202E", "\u2066", "\u2069", "\u200E", "\u200F",
                                  "\u061C", "\u206F", "\uFEFF", "\uFFF9", "\u0007", "\u0085"})
        EXPECT_EQ(base::cleanText("a" + bad + "b"), "ab");
    // Joiners are letters' own business in Persian and in many scripts of India.
    EXPECT_EQ(base::cleanText("a\u200Cb\u200Dc"), "a\u200Cb\u200Dc");
    EXPECT_EQ(base::cleanText("e\u202E\u0301"), "\u00E9");
}

TEST(Bounds, ADrawingIsOneOfOurs) {
    EXPECT_TRUE(isDrawing(pathOf("M1 2L3 4L-5 6")));
    EXPECT_TRUE(isDrawing(typed("Ada &amp; May")));
    EXPECT_FALSE(isDrawing(""));
    EXPECT_FALSE(isDrawing(pathOf("")));
    EXPECT_FALSE(isDrawing(pathOf("M1 2\" onload=\"x")));
    EXPECT_FALSE(isDrawing(typed("<script>x</script>")));
    EXPECT_FALSE(isDrawing(typed("&xxe;")));
    EXPECT_FALSE(isDrawing("<!DOCTYPE svg>" + pathOf("M1 2")));
    EXPECT_FALSE(isDrawing(pathOf("M1 2") + "<image/>"));
}

TEST(Bounds, TheDeskKeepsNoOtherDrawing) {
    support::Ward ward("clean-hands");
    EXPECT_TRUE(ward.desk().keepDrawing(pathOf("M1 2L3 4")).ok());
    const auto foreign = ward.desk().keepDrawing("<svg/>");
    ASSERT_FALSE(foreign.ok());
    EXPECT_EQ(foreign.error().code, Code::DrawingBad);
    const auto large = ward.desk().keepDrawing(pathOf("M" + std::string(mostOfDrawing, '1')));
    ASSERT_FALSE(large.ok());
    EXPECT_EQ(large.error().code, Code::DrawingBad);
}

TEST(Bounds, ABirthTomorrowIsRefusedAndTodayIsNot) {
    support::Ward ward("clean-hands");  // it is 24 November 2026 there
    auto patient = named("Ada");
    patient.born = "2026-11-25";
    const auto refused = ward.desk().say(patient);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::DateInFuture);
    patient.born = "2026-11-24";
    EXPECT_TRUE(ward.desk().say(patient).ok());
}

}  // namespace
}  // namespace desk
