// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/openquestion.h"

#include <gtest/gtest.h>

namespace {

TEST(OpenQuestion, EnglishRequestsAndQuestionWordsAreOpen) {
    for (const char* open :
         {"What do you do first?", "If it is wet, has come loose or is soiled, what do you do?",
          "Can you show me how you wash?", "Tell me when you would call.",
          "Could you please explain why you wait?", "How long do you scrub, and which way?"})
        EXPECT_FALSE(packs::isClosedQuestion(open, "en")) << open;
}

TEST(OpenQuestion, EnglishYesOrNoIsClosed) {
    for (const char* closed :
         {"Do you wash your hands?", "What comes first? Do you understand?",
          "When it bleeds, do you press?", "So is it dry?", "You wait until it is dry, right?",
          "Can you touch the site?", "Don't you wait?"})
        EXPECT_TRUE(packs::isClosedQuestion(closed, "en-GB")) << closed;
}

TEST(OpenQuestion, Spanish) {
    EXPECT_FALSE(packs::isClosedQuestion("Si sangra, ¿qué hace?", "es"));
    EXPECT_FALSE(packs::isClosedQuestion("¿Puede mostrarme la manera?", "es"));
    EXPECT_FALSE(packs::isClosedQuestion("Cuénteme por qué espera.", "es"));
    EXPECT_TRUE(packs::isClosedQuestion("¿Se lava las manos?", "es"));
    EXPECT_TRUE(packs::isClosedQuestion("¿Sabe cuándo llamar?", "es"));
}

TEST(OpenQuestion, Arabic) {
    EXPECT_FALSE(packs::isClosedQuestion("ماذا تفعل أولاً؟", "ar"));
    EXPECT_TRUE(packs::isClosedQuestion("هل تغسل يديك؟", "ar"));
}

TEST(OpenQuestion, OtherLanguagesAreNotJudged) {
    EXPECT_FALSE(packs::isClosedQuestion("Waschen Sie sich die Hände?", "de"));
}

}  // namespace
