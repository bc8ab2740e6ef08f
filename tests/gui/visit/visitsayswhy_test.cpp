// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A key does what it shows, or says why it does nothing; a digit belongs to one list. What the
// patient must not get stays in sight. Rules of our own, no source.
#include <QLabel>
#include <algorithm>

#include "gui/main/settled.h"
#include "gui/visit/visitdriver.h"
#include "pieces/picklist.h"
#include "pieces/pressbutton.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

const char* const dressing = "weekly-dressing-upper-arm";

QString chosen(VisitDriver& visit, const char* list) {
    return visit.find<ui::PickList>(QLatin1String(list))->chosen().join(QLatin1Char(' '));
}

QStringList digitsShown(VisitDriver& visit) {
    QStringList digits;
    for (const auto* list : visit.page().question()->findChildren<ui::PickList*>())
        for (const auto* button : list->findChildren<ui::PressButton*>())
            if (!button->keyHint().isEmpty()) digits << button->keyHint();
    return digits;
}

TEST(VisitDigits, InTheStopQuestionEachListHasItsOwn) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    visit.press(Qt::Key_X);
    const QStringList digits = digitsShown(visit);
    EXPECT_EQ(QSet<QString>(digits.begin(), digits.end()).size(), digits.size());
    EXPECT_EQ(digits.size(), 8);
    visit.press(Qt::Key_2);
    visit.press(Qt::Key_5);
    visit.press(Qt::Key_8);
    EXPECT_EQ(chosen(visit, "stopWhy"), QStringLiteral("called-away"));
    EXPECT_EQ(chosen(visit, "stopCover"), QStringLiteral("covered"));
    EXPECT_EQ(chosen(visit, "stopLine"), QStringLiteral("loose"));
    visit.picture(QStringLiteral("stop-digits"));
    visit.find<QLineEdit>(QStringLiteral("stopNote"))->setFocus();
    EXPECT_TRUE(digitsShown(visit).isEmpty()) << "in a line a digit is a digit";
    visit.press(Qt::Key_1);
    EXPECT_EQ(chosen(visit, "stopWhy"), QStringLiteral("called-away"));
}

TEST(VisitDigits, InTheMeasureQuestionToo) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    visit.press(Qt::Key_M);
    visit.find<ui::PickList>(QStringLiteral("measureWhich"))
        ->button(QStringLiteral("arm-girth"))
        ->setFocus();
    const QString before = chosen(visit, "measureWhich");
    visit.press(Qt::Key_4);
    EXPECT_EQ(chosen(visit, "measureWhen"), QStringLiteral("left"));
    EXPECT_EQ(chosen(visit, "measureWhich"), before);
    visit.press(Qt::Key_2);
    EXPECT_EQ(chosen(visit, "measureWhich"), QStringLiteral("arm-girth"));
    EXPECT_EQ(chosen(visit, "measureWhen"), QStringLiteral("left"));
}

TEST(VisitDigits, AmongTooManyTheListInFocusHasThem) {
    VisitDriver visit(dressing, Way::Guided, On::PracticeArm);
    visit.seeUntil("scrub-skin");
    visit.press(Qt::Key_L, Qt::ShiftModifier);
    visit.write(visit.asked(QStringLiteral("otherWhat")), "x");
    auto* lapses = visit.find<ui::PickList>(QStringLiteral("severalLapses"));
    ASSERT_GT(lapses->digits(), 9);
    lapses->findChildren<ui::PressButton*>().front()->setFocus();
    EXPECT_EQ(digitsShown(visit).size(), 9);
    auto* touched = visit.find<ui::PickList>(QStringLiteral("otherTouched"));
    touched->findChildren<ui::PressButton*>().front()->setFocus();
    visit.press(Qt::Key_1);
    EXPECT_TRUE(lapses->chosen().isEmpty());
    EXPECT_EQ(touched->chosen().size(), 1);
}

TEST(VisitSaysWhy, ADigitIsShownWhereItNamesALapseAndElsewhereSaysWhatToPress) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    auto* first = visit.find<ui::PressButton>(QStringLiteral("lapse-touched-thing"));
    EXPECT_EQ(first->keyHint(), QString());
    visit.press(Qt::Key_1);
    EXPECT_TRUE(visit.state().lapses.empty());
    EXPECT_TRUE(visit.said().contains(QStringLiteral("L shows the lapses")))
        << visit.said().toStdString();
    visit.press(Qt::Key_L);
    EXPECT_EQ(visit.said(), QString()) << "told once";
    EXPECT_EQ(first->keyHint(), QStringLiteral("1"));
    visit.press(Qt::Key_1);
    EXPECT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_EQ(first->keyHint(), QString());
}

TEST(VisitSaysWhy, NoHelperIsSaidBothWaysAndWhereNoneIsNeeded) {
    VisitDriver visit(dressing, Way::Guided, On::PracticeArm);
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    const QString without = visit.said();
    EXPECT_TRUE(without.contains(QStringLiteral("no helper"))) << without.toStdString();
    visit.picture(QStringLiteral("no-helper-told"));
    visit.press(Qt::Key_H, Qt::ShiftModifier);
    EXPECT_NE(visit.said(), without);
    EXPECT_NE(visit.said(), QString());
    VisitDriver hands("clean-hands");
    const std::size_t before = hands.entries();
    hands.press(Qt::Key_H, Qt::ShiftModifier);
    EXPECT_NE(hands.said(), QString());
    EXPECT_EQ(hands.entries(), before);
}

struct DeadKey {
    const char* what;
    Qt::Key key;
};

TEST(VisitSaysWhy, AKeyThatDoesNothingNow) {
    for (const DeadKey& dead :
         {DeadKey{"this step always applies", Qt::Key_A}, DeadKey{"nothing is done", Qt::Key_E},
          DeadKey{"no measure", Qt::Key_M}, DeadKey{"no lapse", Qt::Key_K},
          DeadKey{"blank for the learner", Qt::Key_R}, DeadKey{"no key at all", Qt::Key_Z}}) {
        VisitDriver visit("clean-hands");
        const std::size_t before = visit.entries();
        visit.press(dead.key);
        EXPECT_NE(visit.said(), QString()) << dead.what;
        EXPECT_EQ(visit.entries(), before) << dead.what;
        EXPECT_EQ(visit.page().question(), nullptr) << dead.what;
    }
}

TEST(VisitSaysWhy, ThatHelpIsNoLongerCounted) {
    VisitDriver visit("clean-hands");
    visit.ward().must(practice::TakeOver{.why = "x"});
    for (const Qt::Key key : {Qt::Key_C, Qt::Key_H, Qt::Key_K, Qt::Key_S}) {
        visit.press(key);
        EXPECT_TRUE(visit.said().contains(QStringLiteral("taken over"))) << key;
    }
}

TEST(VisitSaysWhy, WhileTheCardWaits) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    visit.ward().must(practice::SeeLapse{.lapses = {"line-out"}});
    visit.press(Qt::Key_C);
    EXPECT_TRUE(visit.said().contains(QStringLiteral("take over"))) << visit.said().toStdString();
}

// The list of keys opens on leaving it: Space means the next thing seen, and it is none.
TEST(VisitKeyList, SpaceRecordsNothing) {
    VisitDriver visit("clean-hands");
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_F1);
    ASSERT_NE(visit.page().question(), nullptr);
    visit.picture(QStringLiteral("key-list"));
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before);
    EXPECT_EQ(visit.state().steps[0].cues, 0);
    visit.press(Qt::Key_F1);
    visit.find<ui::PressButton>(QStringLiteral("more-cue"))->setFocus();
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before) << "Enter presses, Space does not";
    visit.press(Qt::Key_Return);
    EXPECT_EQ(visit.state().steps[0].cues, 1);
    EXPECT_EQ(visit.page().question(), nullptr);
}

TEST(VisitKeyList, AKeyDoesWhatTheListSays) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_F1);
    visit.press(Qt::Key_C);
    EXPECT_EQ(visit.state().steps[0].cues, 1);
    EXPECT_EQ(visit.page().question(), nullptr);
    visit.press(Qt::Key_F1);
    visit.press(Qt::Key_N);
    auto* note = visit.find<QLineEdit>(QStringLiteral("note"));
    EXPECT_TRUE(note->hasFocus());
    EXPECT_EQ(note->text(), QString());
}

// ---- what the patient must not get

QLabel* allergies(VisitDriver& visit) {
    return visit.find<QLabel>(QStringLiteral("visitAllergies"));
}

TEST(VisitAllergies, StandAtTheNameInEverySizeAndWidth) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    EXPECT_TRUE(allergies(visit)->text().contains(QStringLiteral("No allergy known")));
    visit.ward().must(
        record::AskAllergies{.allergies = {{.allergen = "latex", .reaction = ""},
                                           {.allergen = "adhesive", .reaction = "blisters"}}});
    for (const double factor : {1.0, 2.0})
        for (const int width : {1280, 800}) {
            ui::Look::instance().apply(
                factor > 1 ? ui::SchemeChoice::Dark : ui::SchemeChoice::Light, factor);
            visit.page().resize(width, 800);
            gui::settle(visit.page());
            const QLabel* shown = allergies(visit);
            EXPECT_TRUE(shown->text().contains(QStringLiteral("Latex")));
            EXPECT_TRUE(shown->text().contains(QStringLiteral("Adhesive")));
            EXPECT_TRUE(shown->isVisible());
            EXPECT_GE(shown->height(), shown->heightForWidth(shown->width())) << width;
            const QRect place(shown->mapTo(&visit.page(), QPoint()), shown->size());
            EXPECT_TRUE(visit.page().rect().contains(place)) << width << " at " << factor;
            visit.picture(QStringLiteral("allergies-%1-%2").arg(width).arg(factor * 100));
        }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

TEST(VisitAllergies, AreKeptInSightWhileNamesAreHidden) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    visit.ward().must(record::AskAllergies{.allergies = {{.allergen = "latex", .reaction = ""}}});
    visit.page().setVeiled([](QWidget* parent) { return new ui::Question({}, {}, parent); });
    EXPECT_TRUE(allergies(visit)->text().contains(QStringLiteral("Latex")));
    for (const QLabel* label : visit.page().findChildren<QLabel*>())
        EXPECT_FALSE(label->text().contains(QStringLiteral("Okonjo"))) << "hidden";
}

// Two figures, each with its word: the time there is, and what the steps need.
TEST(VisitTime, SaysWhatIsLeftAndWhatTheStepsNeed) {
    VisitDriver visit(dressing, Way::Guided, On::PracticeArm);
    const auto* left = visit.find<QLabel>(QStringLiteral("visitLeft"));
    EXPECT_TRUE(left->text().contains(QStringLiteral("time: 40 min left")))
        << left->text().toStdString();
    EXPECT_TRUE(left->text().contains(QStringLiteral("steps: at least")));
    VisitDriver hands("clean-hands", Way::Guided);
    EXPECT_TRUE(hands.find<QLabel>(QStringLiteral("visitLeft"))
                    ->text()
                    .startsWith(QStringLiteral("steps: at least")));
}

// ---- found, and no lapse

TEST(VisitFound, SignsAreOfferedAsFoundAndNoStepIsMarkedAsALapse) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    visit.seeUntil("look-site");
    auto* signs = visit.find<ui::PressButton>(QStringLiteral("lapse-signs-found"));
    EXPECT_TRUE(signs->text().startsWith(QStringLiteral("Found: "))) << signs->text().toStdString();
    auto* mask = visit.find<ui::PressButton>(QStringLiteral("lapse-mask-slipped"));
    EXPECT_FALSE(mask->text().startsWith(QStringLiteral("Found: ")));
    visit.picture(QStringLiteral("found-offered"));
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_1);
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_TRUE(visit.state().lapses[0].found);
    EXPECT_TRUE(visit.find<QLabel>(QStringLiteral("wayBackTitle"))
                    ->text()
                    .startsWith(QStringLiteral("Found on the patient")));
    visit.picture(QStringLiteral("found-way-back"));
}

TEST(VisitFound, SomethingElseMayHaveBeenThereBefore) {
    VisitDriver visit(dressing, Way::Guided, On::Patient);
    visit.seeUntil("feel-through");
    visit.press(Qt::Key_U);
    visit.write(visit.asked(QStringLiteral("otherWhat")), "The dressing is wet");
    visit.find<ui::PickList>(QStringLiteral("otherFound"))->choose(QStringLiteral("before"));
    visit.asked(QStringLiteral("otherWhat"))->setFocus();
    visit.press(Qt::Key_Return);
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_TRUE(visit.state().lapses[0].found);
}

}  // namespace
