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
