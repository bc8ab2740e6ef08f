// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learnerwindow/learnerwindow.h"

#include <QGuiApplication>
#include <QScreen>
#include <QtTest/QTest>

#include "gui/learnerwindow/watching.h"
#include "pieces/pressbutton.h"

namespace {

using gui::Watching;
using practice::Way;

TEST(LearnerWindow, ShowsTheStepInTheLearnersLanguageMirrored) {
    Watching watching(Way::Guided, "ar");
    watching.ward.doStepInHand();
    watching.ward.must(practice::BeginPhase{.step = "soap-wash", .phase = "rub-with-soap"});
    watching.ward.clock().advanceMs(9000);
    const auto& step = watching.ward.taught().pack.competencies[0].steps[1];
    EXPECT_EQ(watching.sentence().toStdString(), step.doText.at("ar"));
    EXPECT_EQ(watching.window->layoutDirection(), Qt::RightToLeft);
    EXPECT_TRUE(watching.hasBand());
    watching.picture("learner-01-arabic");
}

TEST(LearnerWindow, IsBlankInAReturnDemonstration) {
    Watching watching(Way::ReturnDemonstration);
    watching.ward.doStepInHand();
    EXPECT_EQ(watching.sentence(), QString());
    EXPECT_FALSE(watching.hasBand());
}

TEST(LearnerWindow, HasAClockOnlyWhereTheGuideAtHomeHasOne) {
    Watching watching(Way::ReturnDemonstration, "en", true);
    watching.ward.doStepInHand();
    EXPECT_EQ(watching.sentence(), QString());
    EXPECT_TRUE(watching.hasBand());
}

TEST(LearnerWindow, ShowsTheWayBackOnlyOnceItWasShown) {
    Watching watching(Way::ReturnDemonstration);
    for (int i = 0; i < 4; ++i) watching.ward.doStepInHand();
    watching.ward.must(practice::SeeLapse{.lapses = {"hands-soiled"}});
    EXPECT_EQ(watching.sentence(), QString());
    watching.ward.must(practice::ShowWayBack{});
    EXPECT_NE(watching.sentence(), QString());
}

TEST(LearnerWindow, OverTheOnlyScreenSaysThatTheKeysRestAndLeadsBack) {
    for (const Qt::Key key : {Qt::Key_Escape, Qt::Key_F11, Qt::Key_unknown}) {
        Watching watching(Way::Guided);
        const auto* rest = watching.window->findChild<QLabel*>(QStringLiteral("keysRest"));
        auto* back = watching.window->findChild<ui::PressButton*>(QStringLiteral("backToVisit"));
        EXPECT_TRUE(rest->isVisible());
        EXPECT_TRUE(rest->text().contains(QStringLiteral("rest")));
        EXPECT_TRUE(back->isVisible());
        EXPECT_TRUE(back->keyHint().contains(QStringLiteral("Esc")));
        EXPECT_TRUE(back->keyHint().contains(QStringLiteral("F11")));
        watching.picture("learner-keys-rest");
        const auto before = watching.ward.ledger().head().size;
        QTest::keyClick(watching.window.get(), Qt::Key_Space);
        EXPECT_EQ(watching.ward.ledger().head().size, before);
        if (key == Qt::Key_unknown)
            back->click();  // on a tablet there is no key
        else
            QTest::keyClick(watching.window.get(), key);
        EXPECT_FALSE(watching.window->isVisible());
    }
}

// Never a name, a count, a result, the word lapse: in every state of a whole guided visit.
TEST(LearnerWindow, NeverTellsANameACountOrALapse) {
    Watching watching(Way::Guided);
    while (practice::inHand(watching.ward.visit().state)) {
        watching.ward.must(
            practice::GiveCue{{.step = practice::recordInHand(watching.ward.visit().state)->step}});
        for (const QLabel* label : watching.window->findChildren<QLabel*>())
            for (const char* word : {"Okonjo", "Amara", "Aranda", "lapse", "cue", " of 5"})
                EXPECT_FALSE(label->text().contains(QLatin1String(word))) << word;
        watching.ward.doStepInHand();
        ASSERT_FALSE(HasFailure());
    }
}

TEST(LearnerWindow, TurnsTheOnlyScreenThereAndBack) {
    Watching watching(Way::Guided);
    ASSERT_EQ(QGuiApplication::screens().size(), 1);
    EXPECT_TRUE(watching.window->isVisible());
    QTest::keyClick(watching.window.get(), Qt::Key_F11);
    EXPECT_FALSE(watching.window->isVisible());
    watching.window->turn();
    EXPECT_TRUE(watching.window->isVisible());
    watching.ward.doAllSteps();
    watching.ward.must(practice::CloseVisit{});
    EXPECT_FALSE(watching.window->isVisible()) << "the visit is over";
}

TEST(LearnerWindow, TheSentenceIsNeverSmallerThan32Points) {
    Watching watching(Way::Guided);
    watching.window->resize(800, 600);
    auto* label = watching.window->findChild<QLabel*>(QStringLiteral("learnerSentence"));
    while (practice::inHand(watching.ward.visit().state)) {
        EXPECT_GE(label->font().pointSizeF(), 32);
        watching.ward.doStepInHand();
        ASSERT_FALSE(HasFailure());
    }
    watching.picture("learner-02-small");
}

}  // namespace
