// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A visit that is stopped, taken over or handed over, by keys and presses; what is looked at
// afterwards is what the ledger holds.
#include <QAbstractButton>

#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"
#include "visit/keystrip.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

bool isOffered(VisitDriver& visit, ui::Act act) {
    const auto* strip = visit.page().findChild<ui::KeyStrip*>();
    const auto* button = strip != nullptr ? strip->button(act) : nullptr;
    return button != nullptr && button->isVisible() && button->isEnabled();
}

TEST(VisitKeys, StopAsksWhyAndKeepsTheRecord) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.seeStep();
    visit.press(Qt::Key_X);
    const auto id = visit.ward().visit().id;
    visit.click(QStringLiteral("stopWhy.called-away"));
    visit.click(QStringLiteral("stopCover.covered"));
    visit.click(QStringLiteral("stopLine.held"));
    visit.click(QStringLiteral("accept"));
    const auto* stopped = visit.ward().desk().view().record->visit(id);
    ASSERT_TRUE(stopped->stopped.has_value());
    EXPECT_EQ(stopped->stopped->said.why, practice::StopReason::CalledAway);
    EXPECT_EQ(stopped->stopped->said.siteCovered, true);
    EXPECT_EQ(stopped->stopped->said.lineHeld, true);
    EXPECT_EQ(stopped->state.steps[0].mark, practice::Mark::Seen);
}

// Silence is no "no": on the patient it may be answered, elsewhere it is not even asked.
TEST(VisitKeys, WhatIsNotAnsweredAtAStopIsNotSaid) {
    for (const On on : {On::Patient, On::TalkedThrough}) {
        VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, on);
        visit.press(Qt::Key_X);
        const auto id = visit.ward().visit().id;
        EXPECT_EQ(visit.find<QAbstractButton>(QStringLiteral("stopCover.bare")) != nullptr,
                  on == On::Patient);
        visit.click(QStringLiteral("stopWhy.called-away"));
        if (on == On::Patient) visit.click(QStringLiteral("stopLine.loose"));
        visit.click(QStringLiteral("accept"));
        const auto& said = visit.ward().desk().view().record->visit(id)->stopped->said;
        EXPECT_EQ(said.siteCovered, std::nullopt);
        EXPECT_EQ(said.lineHeld, on == On::Patient ? std::optional(false) : std::nullopt);
    }
}

// A slip is no answer: pressed again it is not said.
TEST(VisitKeys, AnAnswerAtAStopCanBeTakenBack) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.press(Qt::Key_X);
    const auto id = visit.ward().visit().id;
    for (const char* name : {"stopWhy.called-away", "stopCover.covered", "stopCover.covered",
                             "stopLine.held", "stopLine.loose"})
        visit.click(QLatin1String(name));
    visit.click(QStringLiteral("accept"));
    const auto& said = visit.ward().desk().view().record->visit(id)->stopped->said;
    EXPECT_EQ(said.siteCovered, std::nullopt);
    EXPECT_EQ(said.lineHeld, false);
}

TEST(VisitKeys, WhyTheTeacherTookOverIsAnsweredFirst) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_T);
    EXPECT_FALSE(visit.find<QAbstractButton>(QStringLiteral("accept"))->isEnabled());
    EXPECT_FALSE(visit.state().takenOver);
    visit.click(QStringLiteral("takeOverWhy.1"));
    visit.click(QStringLiteral("accept"));
    EXPECT_TRUE(visit.state().takenOver);
}

TEST(VisitKeys, TakeOverAndHandOver) {
    VisitDriver visit("clean-hands");
    const auto second = visit.ward().addStaff("Ines Halloran", "IH");
    visit.press(Qt::Key_T);
    visit.click(QStringLiteral("takeOverWhy.0"));
    visit.click(QStringLiteral("accept"));
    EXPECT_TRUE(visit.state().takenOver);
    visit.press(Qt::Key_T, Qt::ShiftModifier);
    visit.click(QStringLiteral("handOverTo.") + QString::fromStdString(second.text()));
    visit.click(QStringLiteral("accept"));
    EXPECT_EQ(visit.state().teachers.back(), second);
    EXPECT_EQ(visit.ward().desk().view().teacher, second);
    visit.seeStep();
    EXPECT_EQ(visit.state().steps[0].seenBy, second);
    EXPECT_TRUE(visit.state().steps[0].byTeacher);
}

TEST(VisitKeys, AfterATakeOverNobodyIsCuedHelpedOrShown) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    visit.ward().must(practice::TakeOver{.why = "to keep the patient safe"});
    const std::size_t before = visit.entries();
    for (const Qt::Key key : {Qt::Key_C, Qt::Key_H, Qt::Key_K, Qt::Key_S, Qt::Key_T}) {
        visit.press(key);
        if (visit.page().question() != nullptr) visit.press(Qt::Key_Escape);
    }
    EXPECT_EQ(visit.entries(), before);
    for (const ui::Act act : {ui::Act::CaughtAlone, ui::Act::ShowWayBack, ui::Act::TakeOver})
        EXPECT_FALSE(isOffered(visit, act)) << ui::actWords(act).toStdString();
    for (const char* name : {"cue", "handsOn"})
        EXPECT_FALSE(visit.find<QAbstractButton>(QLatin1String(name))->isEnabled()) << name;
}

TEST(VisitKeys, AfterATakeOverNobodysNoticingIsAskedFor) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    ASSERT_EQ(visit.state().lapses[0].caught, practice::Caught::No);
    EXPECT_TRUE(isOffered(visit, ui::Act::CaughtAlone));
    visit.press(Qt::Key_T);
    visit.click(QStringLiteral("takeOverWhy.0"));
    visit.click(QStringLiteral("accept"));
    ASSERT_TRUE(visit.state().takenOver);
    EXPECT_FALSE(isOffered(visit, ui::Act::CaughtAlone));
    EXPECT_FALSE(isOffered(visit, ui::Act::ShowWayBack));
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_K);
    visit.press(Qt::Key_S);
    EXPECT_EQ(visit.entries(), before);
}

}  // namespace
