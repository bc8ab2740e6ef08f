// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// On the patient a step whose point is a measure is not passed before the figure is written down,
// or why there is none. Our own rule, no source; the lengths at insertion are the ward's.
#include <QLabel>

#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"
#include "visit/question.h"

namespace {

using gui::VisitDriver;
using practice::Measured;
using practice::On;
using practice::Way;

class VisitMeasures : public testing::Test {
  protected:
    const practice::StepRecord& record(const char* step) {
        return *std::ranges::find(visit.state().steps, step, &practice::StepRecord::step);
    }
    QString rule() { return visit.find<QLabel>(QStringLiteral("measureRule"))->text(); }
    VisitDriver visit{"weekly-dressing-upper-arm", Way::Guided, On::Patient};
};

TEST_F(VisitMeasures, SpaceAsksForTheFigureAndPassesTheStepWithIt) {
    visit.seeUntil("measure-arm");
    visit.press(Qt::Key_Space);
    auto* mm = visit.asked(QStringLiteral("measureMm"));
    ASSERT_NE(mm, nullptr);
    EXPECT_TRUE(mm->hasFocus());
    EXPECT_EQ(record("measure-arm").mark, practice::Mark::None);
    visit.press(Qt::Key_Return);
    EXPECT_FALSE(rule().isEmpty()) << "nothing was written";
    EXPECT_EQ(record("measure-arm").mark, practice::Mark::None);
    visit.write(mm, "322");
    EXPECT_TRUE(rule().contains(QStringLiteral("32"))) << rule().toStdString();
    visit.picture(QStringLiteral("measure-asked"));
    visit.press(Qt::Key_Return);
    EXPECT_EQ(visit.page().question(), nullptr);
    EXPECT_EQ(record("measure-arm").mark, practice::Mark::Seen);
    EXPECT_EQ(record("measure-arm").measured, Measured::Taken);
    ASSERT_EQ(visit.state().readings.size(), 1U);
    EXPECT_EQ(visit.state().readings[0].mm, 322);
    EXPECT_EQ(visit.state().readings[0].step, "measure-arm");
}

// An arm of 27 mm was measured in centimetres.
TEST_F(VisitMeasures, AFigureThatNoArmHasIsNotTaken) {
    visit.seeUntil("measure-arm");
    for (const int key : {int(Qt::Key_Space), int(Qt::Key_M)}) {
        visit.press(Qt::Key(key));
        visit.write(visit.asked(QStringLiteral("measureMm")), "27");
        visit.press(Qt::Key_Return);
        ASSERT_NE(visit.page().question(), nullptr);
        EXPECT_TRUE(rule().contains(QStringLiteral("50 to 900"))) << rule().toStdString();
        EXPECT_TRUE(visit.state().readings.empty());
        if (key == Qt::Key_M) visit.picture(QStringLiteral("measure-impossible"));
        visit.press(Qt::Key_Escape);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

TEST_F(VisitMeasures, OrItTakesWhyThereIsNone) {
    visit.seeUntil("measure-arm");
    visit.press(Qt::Key_Space);
    visit.write(visit.asked(QStringLiteral("measureMm")), "300");
    visit.write(visit.asked(QStringLiteral("measureWhyNot")), "a cast");
    visit.press(Qt::Key_Return);
    EXPECT_NE(visit.page().question(), nullptr) << "one of the two, not both";
    visit.asked(QStringLiteral("measureMm"))->clear();
    visit.press(Qt::Key_Return);
    EXPECT_EQ(visit.page().question(), nullptr);
    EXPECT_TRUE(visit.state().readings.empty());
    ASSERT_EQ(visit.state().notMeasured.size(), 1U);
    EXPECT_EQ(visit.state().notMeasured[0].why, "a cast");
    EXPECT_EQ(record("measure-arm").measured, Measured::CouldNot);
    EXPECT_EQ(record("measure-arm").mark, practice::Mark::Seen);
}

TEST_F(VisitMeasures, LeftWithEscTheStepIsStillToBeDone) {
    visit.seeUntil("measure-arm");
    const std::size_t before = visit.entries();
    visit.press(Qt::Key_Space);
    visit.press(Qt::Key_Escape);
    EXPECT_EQ(visit.page().question(), nullptr);
    EXPECT_EQ(visit.entries(), before);
    EXPECT_EQ(practice::recordInHand(visit.state())->step, "measure-arm");
    visit.press(Qt::Key_O);  // done, not seen
    EXPECT_NE(visit.asked(QStringLiteral("measureMm")), nullptr);
}

TEST_F(VisitMeasures, WhatWasWrittenDownBeforeIsNotAskedAgain) {
    visit.seeUntil("measure-length");
    visit.press(Qt::Key_M);
    visit.write(visit.asked(QStringLiteral("measureMm")), "40");
    visit.press(Qt::Key_Return);
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.page().question(), nullptr);
    EXPECT_EQ(record("measure-length").mark, practice::Mark::Seen);
}

TEST_F(VisitMeasures, IsAskedAtLargeTextToo) {
    visit.seeUntil("measure-length");
    ui::Look::instance().apply(ui::SchemeChoice::Dark, 2.0);
    visit.press(Qt::Key_Space);
    visit.write(visit.asked(QStringLiteral("measureMm")), "75");
    EXPECT_FALSE(rule().isEmpty());
    visit.picture(QStringLiteral("measure-asked-200-dark"));
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

TEST(VisitMeasuresOffThePatient, NothingIsAsked) {
    VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::PracticeArm);
    visit.seeUntil("measure-arm");
    visit.press(Qt::Key_Space);
    EXPECT_EQ(visit.page().question(), nullptr);
    EXPECT_EQ(practice::recordInHand(visit.state())->step, "set-infusion");
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

}  // namespace
