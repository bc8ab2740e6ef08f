// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The page driven by keys alone; what is looked at afterwards is what the ledger holds.
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>

#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"
#include "visit/keystrip.h"
#include "visit/question.h"

namespace {

using gui::VisitDriver;
using practice::Help;
using practice::On;
using practice::Way;

QString stripSays(VisitDriver& visit) {
    for (const char* name : {"stripInstead", "stripWriting"}) {
        auto* label = visit.find<QLabel>(QLatin1String(name));
        if (label->isVisible()) return label->text();
    }
    return {};
}

bool isOffered(VisitDriver& visit, ui::Act act) {
    const auto* strip = visit.page().findChild<ui::KeyStrip*>();
    const auto* button = strip != nullptr ? strip->button(act) : nullptr;
    return button != nullptr && button->isVisible() && button->isEnabled();
}

int phasesOf(const packs::Pack& pack) {
    int phases = 0;
    for (const packs::StepPlace& place : packs::stepsInOrder(pack))
        phases += static_cast<int>(place.step->phases.size());
    return phases;
}

// One press a step, and for a timed phase one to begin and one to end it.
TEST(VisitKeys, AFlawlessDemonstrationCostsOnePressAStep) {
    VisitDriver visit("clean-hands");
    const std::size_t before = visit.entries();
    int presses = 0;
    while (practice::inHand(visit.state())) {
        presses += visit.seeStep();
        ASSERT_FALSE(HasFailure());
    }
    const auto& pack = visit.ward().taught().pack;
    EXPECT_EQ(presses, visit.ward().taught().model.stepCount + 2 * phasesOf(pack));
    EXPECT_EQ(visit.entries() - before, static_cast<std::size_t>(presses));
    for (const auto& step : visit.state().steps)
        EXPECT_EQ(practice::helpOf(step, visit.state()), Help::Unprompted) << step.step;
    QSignalSpy ended(&visit.page(), &ui::VisitPage::visitEnded);
    visit.press(Qt::Key_Space);
    EXPECT_EQ(ended.count(), 1);
    EXPECT_FALSE(visit.ward().desk().view().openVisit.has_value());
}

TEST(VisitKeys, ABounceAndAHeldKeyCountOnce) {
    VisitDriver visit("clean-hands");
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_Space);
    visit.pass(299);
    QTest::keyClick(&visit.page(), Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before + 1);
    for (int i = 0; i < 20; ++i) {
        visit.pass(400);
        QKeyEvent held(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier, QString(), true);
        QApplication::sendEvent(&visit.page(), &held);
    }
    EXPECT_EQ(visit.entries(), before + 1);
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before + 2);
}

TEST(VisitKeys, LettersTypedInANoteAreLetters) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_N);
    auto* note = visit.find<QLineEdit>(QStringLiteral("note"));
    ASSERT_TRUE(note->hasFocus());
    EXPECT_TRUE(stripSays(visit).contains(QStringLiteral("Writing")));
    const std::size_t before = visit.entries();
    QTest::keyClicks(note, QStringLiteral("chlxktp b space"));
    EXPECT_EQ(visit.entries(), before);
    EXPECT_EQ(note->text(), QStringLiteral("chlxktp b space"));
    QTest::keyClick(note, Qt::Key_Return);
    EXPECT_EQ(visit.entries(), before + 1);
    ASSERT_EQ(visit.state().notes.size(), 1U);
    EXPECT_EQ(visit.state().notes[0].step, "bare-arms");
    EXPECT_EQ(stripSays(visit), QString());
}

TEST(VisitKeys, CuesAreCountedAndTakenBackOneByOne) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_C);
    visit.press(Qt::Key_C);
    EXPECT_EQ(visit.state().steps[0].cues, 2);
    visit.press(Qt::Key_C, Qt::ShiftModifier);
    EXPECT_EQ(visit.state().steps[0].cues, 1);
    visit.press(Qt::Key_H);
    EXPECT_TRUE(visit.state().steps[0].handsOn);
    visit.press(Qt::Key_B);
    EXPECT_FALSE(visit.state().steps[0].handsOn);
}

TEST(VisitKeys, ALapseIsChosenByItsNumberAndWorkedThrough) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_EQ(visit.state().lapses[0].lapses, std::vector<std::string>{"hands-soiled"});
    ASSERT_TRUE(visit.state().wayBack.has_value());
    visit.press(Qt::Key_K);
    EXPECT_EQ(visit.state().lapses[0].caught, practice::Caught::Alone);
    while (visit.state().wayBack) {
        visit.seeStep();
        ASSERT_FALSE(HasFailure());
    }
    EXPECT_TRUE(visit.state().lapses[0].solved);
    EXPECT_EQ(practice::recordInHand(visit.state())->step, "keep-clean");
}

// Not that the step went well, which is what Space says everywhere else.
TEST(VisitKeys, SpaceAmongTheLapsesSaysTheOneInFocus) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_Space);
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_EQ(visit.entries(), before + 1);
    EXPECT_TRUE(visit.page().hasFocus());
}

TEST(VisitKeys, ShowingTheWayBackIsRecorded) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    visit.press(Qt::Key_S);
    EXPECT_EQ(visit.state().lapses[0].caught, practice::Caught::Shown);
}

TEST(VisitKeys, ALapseIsWithdrawnAndKept) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.press(Qt::Key_L);
    visit.press(Qt::Key_2);
    visit.click(QStringLiteral("withdraw-0"));
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_TRUE(visit.state().lapses[0].withdrawn);
    EXPECT_FALSE(visit.state().wayBack.has_value());
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

TEST(VisitKeys, SomethingElseAsksWhatWasTouched) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("keep-clean");
    visit.click(QStringLiteral("otherLapse"));
    auto* what = visit.find<QLineEdit>(QStringLiteral("otherWhat"));
    ASSERT_NE(what, nullptr);
    visit.click(QStringLiteral("accept"));
    EXPECT_TRUE(visit.state().lapses.empty()) << "nothing was written down yet";
    QTest::keyClicks(what, QStringLiteral("sleeve brushed the hand"));
    visit.click(QStringLiteral("otherTouched.hands-rubbed"));
    visit.click(QStringLiteral("accept"));
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_EQ(visit.state().lapses[0].other, "sleeve brushed the hand");
    EXPECT_EQ(visit.state().lapses[0].touched, std::vector<std::string>{"hands-rubbed"});
    EXPECT_EQ(visit.page().question(), nullptr);
}

TEST(VisitKeys, NoticedLateNamesTheStep) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("alcohol-rub");
    visit.click(QStringLiteral("earlierLapse"));
    visit.click(QStringLiteral("earlierStep.towel-dry"));
    visit.click(QStringLiteral("earlierLapse.touched-tap"));
    visit.click(QStringLiteral("accept"));
    ASSERT_EQ(visit.state().lapses.size(), 1U);
    EXPECT_EQ(visit.state().lapses[0].happenedAfter, "towel-dry");
    EXPECT_TRUE(visit.state().wayBack.has_value());
}

TEST(VisitKeys, StoppedShortIsSaidAndRunsAgain) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("soap-wash");
    visit.press(Qt::Key_Space);
    visit.pass(4000);
    visit.press(Qt::Key_Space);
    const auto& phases = visit.state().steps[1].phases;
    ASSERT_EQ(phases.size(), 1U);
    EXPECT_EQ(phases[0].end, practice::PhaseEnd::StoppedShort);
    auto* note = visit.find<QLabel>(QStringLiteral("phaseNote"));
    EXPECT_TRUE(note->text().contains(QStringLiteral("4 of 20 seconds")))
        << note->text().toStdString();
}

TEST(VisitKeys, PauseVoidsAContinuousPhase) {
    VisitDriver visit("clean-hands");
    visit.seeUntil("soap-wash");
    visit.press(Qt::Key_Space);
    visit.press(Qt::Key_P);
    EXPECT_TRUE(visit.state().isPaused());
    EXPECT_EQ(visit.state().steps[1].phases[0].end, practice::PhaseEnd::Voided);
    visit.press(Qt::Key_Space);
    EXPECT_FALSE(visit.state().isPaused());
}

TEST(VisitKeys, LockedKeysDoNothingButUnlock) {
    VisitDriver visit("clean-hands");
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_F9);
    for (const Qt::Key key : {Qt::Key_Space, Qt::Key_C, Qt::Key_L, Qt::Key_X, Qt::Key_P, Qt::Key_1})
        visit.press(key);
    EXPECT_EQ(visit.entries(), before);
    EXPECT_TRUE(stripSays(visit).contains(QStringLiteral("locked")));
    visit.press(Qt::Key_F9);
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.entries(), before + 1);
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

TEST(VisitKeys, AKeyThatIsTakenIsRefusedInWords) {
    VisitDriver visit("clean-hands");
    ui::Keys keys = visit.page().keys();
    keys.set(ui::Act::Cue, QKeySequence(Qt::Key_F2));
    visit.page().setKeys(keys);
    visit.press(Qt::Key_C);
    EXPECT_EQ(visit.state().steps[0].cues, 0);
    visit.press(Qt::Key_F2);
    EXPECT_EQ(visit.state().steps[0].cues, 1);
}

TEST(VisitKeys, ANoteIsGoneOnWithWhereItWasLeft) {
    VisitDriver visit("clean-hands");
    visit.press(Qt::Key_N);
    auto* note = visit.find<QLineEdit>(QStringLiteral("note"));
    QTest::keyClicks(note, QStringLiteral("Half a note"));
    visit.page().setFocus();
    visit.press(Qt::Key_N);
    visit.pass(400);
    QTest::keyClicks(note, QStringLiteral(", and"));
    EXPECT_EQ(note->text(), QStringLiteral("Half a note, and"));
}

TEST(VisitKeys, AMeasureIsTypedAtOnce) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    visit.press(Qt::Key_M);
    ASSERT_NE(visit.page().question(), nullptr);
    ASSERT_NE(visit.page().focusWidget(), nullptr);
    EXPECT_EQ(visit.page().focusWidget()->objectName(), QStringLiteral("measureMm"));
}

// The pack says at which step which measure is taken, and whether it is found or left so.
TEST(VisitKeys, AMeasureIsTheOneThatTheStepAsksFor) {
    const struct {
        const char *step, *measure, *when, *opensIn;
    } rows[] = {{"measure-arm", "measureWhich.arm-girth", "measureWhen.found", "measureMm"},
                {"count-marks", "measureWhich.outside-length", "measureWhen.found", "measureMarks"},
                {"measure-length", "measureWhich.outside-length", "measureWhen.found", "measureMm"},
                {"count-left", "measureWhich.outside-length", "measureWhen.left", "measureMarks"}};
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    for (const auto& row : rows) {
        visit.seeUntil(row.step);
        for (const bool isAfter : {false, true}) {
            if (isAfter) visit.seeStep();
            visit.press(Qt::Key_M);
            if (!isAfter) {
                EXPECT_EQ(visit.page().focusWidget()->objectName(), QLatin1String(row.opensIn));
            }
            for (const char* name : {row.measure, row.when})
                EXPECT_TRUE(visit.find<QAbstractButton>(QLatin1String(name))->isChecked())
                    << row.step << (isAfter ? ", just seen: " : ": ") << name;
            visit.press(Qt::Key_Escape);
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
    }
}

// Counted marks could be held against nothing there.
TEST(VisitKeys, WhereNoMarksWereCountedAtFirstAMeasureOpensInMillimetres) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    record::AddLine line = visit.ward().desk().view().record->lines.front().said;
    line.marks.reset();
    visit.ward().must(record::CorrectLine{line, ""});
    visit.seeUntil("count-marks");
    visit.press(Qt::Key_M);
    EXPECT_EQ(visit.page().focusWidget()->objectName(), QStringLiteral("measureMm"));
}

// A list that was scrolled down stays so for its own step only.
TEST(VisitKeys, TheLapsesOfAnotherStepBeginAtTheTop) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    QCoreApplication::processEvents();
    visit.press(Qt::Key_L);
    QCoreApplication::processEvents();
    auto* first = visit.find<QAbstractButton>(QStringLiteral("lapse-") + visit.firstLapse());
    EXPECT_TRUE(first->hasFocus());
    EXPECT_EQ(first->visibleRegion().boundingRect().height(), first->height())
        << "what the key goes to is in sight";
    EXPECT_LT(first->mapTo(&visit.page(), QPoint()).y(), 300) << "and what follows it";
    visit.picture(QStringLiteral("visit-22-lapses-200"));
    auto* bar = visit.find<QScrollArea>(QStringLiteral("seenScroll"))->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    bar->setValue(bar->maximum());
    visit.press(Qt::Key_Escape);
    EXPECT_EQ(bar->value(), bar->maximum());
    visit.seeStep();
    EXPECT_EQ(bar->value(), 0);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

}  // namespace
