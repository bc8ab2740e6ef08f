// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "askback/askbackpage.h"

#include <QAbstractButton>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QtTest/QTest>

#include "gui/main/settled.h"
#include "look.h"
#include "support/paths.h"
#include "support/ward.h"

namespace {

/// The real page over a ward, asked and answered by mouse and keys.
class Asking {
  public:
    explicit Asking(const std::string& pack = "clean-hands") : m_ward(pack) {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        const auto patient = m_ward.desk().view().record->id;
        EXPECT_TRUE(m_ward.desk().openRecord(patient, m_ward.learner()).ok());
        m_page = std::make_unique<ui::AskBackPage>(m_ward.desk());
        m_page->resize(1280, 720);
        m_page->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
    }
    support::Ward& ward() { return m_ward; }
    ui::AskBackPage& page() { return *m_page; }
    const packs::Pack& pack() { return m_ward.taught().pack; }
    const record::Learner& learner() {
        return *m_ward.desk().view().record->learner(m_ward.learner());
    }
    void click(const QString& name) {
        settle();
        auto* button = m_page->findChild<QAbstractButton*>(name);
        ASSERT_NE(button, nullptr) << name.toStdString();
        ASSERT_TRUE(button->isVisible()) << name.toStdString();
        QTest::mouseClick(button, Qt::LeftButton);
        settle();
    }
    /// With the focus on it, by Space.
    void pressByKey(const QString& name) {
        settle();
        auto* button = m_page->findChild<QAbstractButton*>(name);
        ASSERT_NE(button, nullptr) << name.toStdString();
        button->setFocus();
        QTest::keyClick(button, Qt::Key_Space);
        settle();
    }
    QString focused() const {
        return m_page->focusWidget() ? m_page->focusWidget()->objectName() : QString();
    }
    void settle() const { gui::settle(*m_page); }
    QLineEdit* field(const char* name) const {
        return m_page->findChild<QLineEdit*>(QString::fromLatin1(name));
    }
    QAbstractButton* point(const packs::Point& one) const {
        return m_page->findChild<QAbstractButton*>(QStringLiteral("points.") +
                                                   QString::fromStdString(one.id));
    }
    bool isOffered(const QString& name) {
        auto* widget = m_page->findChild<QWidget*>(name);
        return widget != nullptr && widget->isVisible();
    }
    void hear(const packs::Point& point) {
        click(QStringLiteral("points.") + QString::fromStdString(point.id));
    }
    void keep() { click(QStringLiteral("keepRound")); }
    void picture(const QString& name) {
        const QString folder =
            QString::fromStdString(support::buildDir()) + QStringLiteral("/pictures");
        QDir().mkpath(folder);
        settle();
        EXPECT_TRUE(m_page->grab().save(folder + QStringLiteral("/%1.png").arg(name)));
    }

  private:
    support::Ward m_ward;
    std::unique_ptr<ui::AskBackPage> m_page;
};

TEST(AskBackPage, KeepsThePointsThatWereHeardAndTheWords) {
    Asking asking;
    asking.picture(QStringLiteral("ask-01"));
    const packs::Prompt& prompt = asking.pack().prompts.front();
    for (const packs::Point& point : prompt.points) asking.hear(point);
    auto* words = asking.page().findChild<QLineEdit*>(QStringLiteral("learnersWords"));
    QTest::keyClicks(words, QStringLiteral("when they feel dirty"));
    asking.keep();
    ASSERT_EQ(asking.learner().asked.size(), 1U);
    EXPECT_EQ(asking.learner().asked[0].said.prompt, prompt.id);
    EXPECT_EQ(asking.learner().asked[0].said.heard.size(), prompt.points.size());
    EXPECT_EQ(asking.learner().asked[0].said.words, "when they feel dirty");
    EXPECT_FALSE(asking.isOffered(QStringLiteral("keepRound")));
    asking.click(QStringLiteral("nextQuestion"));
    EXPECT_EQ(asking.page().prompt(), asking.pack().prompts[1].id);
}

TEST(AskBackPage, SaysWhoSaysItBackAndWhoseLineItIs) {
    Asking asking;
    const auto* whose = asking.page().findChild<QLabel*>(QStringLiteral("askBackWhose"));
    EXPECT_TRUE(whose->isVisible());
    for (const char* word : {"Amara Okonjo", "Teodor Okonjo", "1961", "N-1042"})
        EXPECT_TRUE(whose->text().contains(QLatin1String(word))) << word;
    asking.ward().desk().closeRecord();
    EXPECT_FALSE(whose->isVisible());
    EXPECT_EQ(whose->text(), QString());
}

TEST(AskBackPage, ASecondRoundSaysItDifferently) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    asking.hear(prompt.points.front());
    asking.keep();
    EXPECT_TRUE(asking.isOffered(QStringLiteral("differently")));
    asking.picture(QStringLiteral("ask-02-second-round"));
    asking.keep();
    ASSERT_EQ(asking.learner().asked.size(), 2U);
    EXPECT_FALSE(asking.learner().asked[1].said.saidDifferently.empty());
}

// What was heard an hour ago is said, and not taken for heard again: readiness asks the newest
// round for every essential point. Teach-back asks the whole of it anew after teaching (AHRQ,
// Health Literacy Universal Precautions Toolkit, Tool 5, from memory).
TEST(AskBackPage, ARoundIsWhatWasHeardInIt) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    ASSERT_GE(prompt.points.size(), 2U);
    const auto point = [&](std::size_t index) {
        return asking.page().findChild<QAbstractButton*>(
            QStringLiteral("points.") + QString::fromStdString(prompt.points[index].id));
    };
    asking.hear(prompt.points.front());
    asking.keep();
    asking.settle();
    EXPECT_FALSE(point(0)->isChecked());
    EXPECT_TRUE(point(0)->text().contains(QStringLiteral("heard before")));
    EXPECT_FALSE(point(1)->text().contains(QStringLiteral("heard before")));
    for (std::size_t i = 1; i < prompt.points.size(); ++i) asking.hear(prompt.points[i]);
    asking.keep();
    EXPECT_EQ(asking.learner().asked.back().said.heard.size(), prompt.points.size() - 1);
    EXPECT_TRUE(asking.isOffered(QStringLiteral("keepRound"))) << "not all in one round";
    for (const packs::Point& one : prompt.points) asking.hear(one);
    asking.keep();
    EXPECT_TRUE(asking.isOffered(QStringLiteral("nextQuestion")));
    EXPECT_TRUE(point(0)->isChecked()) << "what counts is shown";
}

TEST(AskBackPage, OpensAtTheFirstQuestionThatIsOpenAndItsFirstPoint) {
    Asking asking;
    const auto& prompts = asking.pack().prompts;
    ASSERT_GE(prompts.size(), 2U);
    const auto firstPointOf = [](const packs::Prompt& prompt) {
        return QStringLiteral("points.") + QString::fromStdString(prompt.points.front().id);
    };
    asking.page().begin();
    asking.settle();
    EXPECT_EQ(asking.focused(), firstPointOf(prompts[0]));
    for (const packs::Point& point : prompts[0].points) asking.hear(point);
    asking.keep();
    asking.page().begin();
    asking.settle();
    asking.settle();
    EXPECT_EQ(asking.page().prompt(), prompts[1].id);
    EXPECT_EQ(asking.focused(), firstPointOf(prompts[1]));
    asking.hear(prompts[1].points.front());
    asking.page().begin();
    asking.settle();
    EXPECT_TRUE(asking.page().findChild<QAbstractButton*>(firstPointOf(prompts[1]))->isChecked())
        << "what was ticked and not kept is there";
}

TEST(AskBackPage, ControlEnterKeepsAndTicksNothing) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    asking.hear(prompt.points[0]);
    auto* second = asking.page().findChild<QAbstractButton*>(
        QStringLiteral("points.") + QString::fromStdString(prompt.points[1].id));
    second->setFocus();
    QTest::keyClick(second, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(asking.learner().asked.size(), 1U);
    EXPECT_EQ(asking.learner().asked[0].said.heard, std::vector{prompt.points[0].id});
}

TEST(AskBackPage, EnterTicksAPointAndGoesOnFromOneThatIsTicked) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    auto* first = asking.page().findChild<QAbstractButton*>(
        QStringLiteral("points.") + QString::fromStdString(prompt.points[0].id));
    first->setFocus();
    QTest::keyClick(first, Qt::Key_Return);
    EXPECT_TRUE(first->isChecked());
    QTest::keyClick(first, Qt::Key_Return);
    EXPECT_TRUE(first->isChecked()) << "taken back";
    EXPECT_TRUE(asking.learner().asked.empty()) << "a round that is kept can't be taken back";
    EXPECT_EQ(asking.focused(), QStringLiteral("keepRound"));
    QTest::keyClick(asking.page().focusWidget(), Qt::Key_Return);
    ASSERT_EQ(asking.learner().asked.size(), 1U);
    EXPECT_EQ(asking.learner().asked[0].said.heard, std::vector{prompt.points[0].id});
}

TEST(AskBackPage, EnterInTheLearnersWordsKeepsThem) {
    Asking asking;
    auto* line = asking.page().findChild<QLineEdit*>(QStringLiteral("learnersWords"));
    line->setFocus();
    QTest::keyClicks(line, QStringLiteral("soap first"));
    QTest::keyClick(line, Qt::Key_Return);
    QTest::keyClick(asking.page().focusWidget(), Qt::Key_Return);
    ASSERT_EQ(asking.learner().asked.size(), 1U);
    EXPECT_EQ(asking.learner().asked[0].said.words, "soap first");
}

TEST(AskBackPage, TheListShowsWhereOneIs) {
    Asking asking("weekly-dressing-upper-arm");
    auto opened = asking.ward().opening(practice::Way::Guided, practice::On::PracticeArm);
    opened.kit.antiseptic = "chlorhexidine-alcohol";
    asking.ward().must(opened);
    asking.page().resize(1280, 420);
    const std::string last = asking.pack().prompts.back().id;
    asking.page().showPrompt(last);
    asking.settle();
    const auto* row = asking.page().findChild<QAbstractButton*>(QStringLiteral("prompt-") +
                                                                QString::fromStdString(last));
    EXPECT_FALSE(row->visibleRegion().isEmpty());
}

TEST(AskBackPage, WhatOneSaidIsNotTickedForAnother) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    asking.hear(prompt.points[0]);
    const auto other = base::LearnerId::random();
    asking.ward().must(record::AddLearner{
        .learner = other, .name = "Salma Idris", .relationship = "sibling", .language = "en"});
    ASSERT_TRUE(
        asking.ward().desk().openRecord(asking.ward().desk().view().record->id, other).ok());
    asking.settle();
    EXPECT_FALSE(asking.page()
                     .findChild<QAbstractButton*>(QStringLiteral("points.") +
                                                  QString::fromStdString(prompt.points[0].id))
                     ->isChecked());
}

// Who keeps a round says with their name what they heard.
TEST(AskBackPage, WhatOneTeacherHeardIsNotKeptByAnother) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    asking.keep();
    asking.hear(prompt.points[0]);
    const QString packsOwn = asking.field("differently")->text();
    for (const char* name : {"learnersWords", "differently"})
        QTest::keyClicks(asking.field(name), QStringLiteral("of Solveig"));
    asking.ward().desk().workAs(asking.ward().addStaff("Tam Oduya", "TO"));
    asking.settle();
    EXPECT_FALSE(asking.point(prompt.points[0])->isChecked());
    EXPECT_EQ(asking.field("learnersWords")->text(), QString());
    EXPECT_EQ(asking.field("differently")->text(), packsOwn);
    asking.keep();
    ASSERT_EQ(asking.learner().asked.size(), 2U);
    EXPECT_TRUE(asking.learner().asked[1].said.heard.empty());
    EXPECT_EQ(asking.learner().asked[1].said.words, "");
}

TEST(AskBackPage, WhatWasHeardOfOnePackIsNotKeptForAnother) {
    Asking asking;
    asking.hear(asking.pack().prompts.front().points[0]);
    QTest::keyClicks(asking.field("learnersWords"), QStringLiteral("when they feel dirty"));
    asking.ward().shelf().put(support::readPack("weekly-dressing-upper-arm"));
    asking.ward().addStaff("Tam Oduya", "TO");  // what is written has the page made anew
    asking.settle();
    ASSERT_EQ(asking.ward().desk().packFor(asking.ward().learner())->pack.id,
              "weekly-dressing-upper-arm");
    EXPECT_EQ(asking.field("learnersWords")->text(), QString());
}

TEST(AskBackPage, WhatWasSaidDifferentlyIsThereOnComingBack) {
    Asking asking;
    asking.keep();
    asking.settle();
    asking.page().begin();
    asking.settle();
    auto* differently = asking.field("differently");
    const QString packsOwn = differently->text();
    ASSERT_FALSE(packsOwn.isEmpty());
    differently->selectAll();
    QTest::keyClicks(differently, QStringLiteral("with the lamp and its dust"));
    asking.page().begin();
    asking.settle();
    EXPECT_EQ(differently->text(), QStringLiteral("with the lamp and its dust"));
    asking.keep();
    EXPECT_EQ(asking.learner().asked.back().said.saidDifferently, "with the lamp and its dust");
    asking.settle();
    EXPECT_EQ(differently->text(), packsOwn) << "the next round begins with the pack's own words";
    asking.page().begin();
    EXPECT_EQ(differently->text(), packsOwn) << "and is nobody's answer";
    EXPECT_FALSE(differently->isUndoAvailable());
}

TEST(AskBackPage, AfterThePacksRoundsItAsksForAnotherPlan) {
    Asking asking;
    const packs::Prompt& prompt = asking.pack().prompts.front();
    const int most = asking.pack().readiness ? asking.pack().readiness->teachBackRounds : 1;
    for (int round = 0; round < most; ++round) asking.keep();
    EXPECT_FALSE(asking.isOffered(QStringLiteral("keepRound")));
    ASSERT_TRUE(asking.isOffered(QStringLiteral("plan")));
    asking.picture(QStringLiteral("ask-03-plan"));
    asking.click(QStringLiteral("keepPlan"));
    EXPECT_TRUE(asking.learner().plans.empty()) << "an empty plan is none";
    auto* plan = asking.page().findChild<QLineEdit*>(QStringLiteral("plan"));
    QTest::keyClicks(plan, QStringLiteral("the daughter comes along tomorrow"));
    asking.click(QStringLiteral("keepPlan"));
    ASSERT_EQ(asking.learner().plans.size(), 1U);
    EXPECT_EQ(asking.learner().plans[0].said.prompt, prompt.id);
}

TEST(AskBackPage, ADrillIsKeptWithItsResult) {
    Asking asking("weekly-dressing-upper-arm");
    auto opened = asking.ward().opening(practice::Way::Guided, practice::On::PracticeArm);
    opened.kit.antiseptic = "chlorhexidine-alcohol";
    asking.ward().must(opened);
    ASSERT_FALSE(asking.pack().drills.empty());
    asking.click(QStringLiteral("showDrills"));
    asking.picture(QStringLiteral("ask-04-drills"));
    const QString id = QString::fromStdString(asking.pack().drills.front().id);
    asking.click(QStringLiteral("drill-%1-cued").arg(id));
    ASSERT_EQ(asking.learner().drills.size(), 1U);
    EXPECT_EQ(asking.learner().drills[0].said.result, record::DrillResult::Cued);
}

// Keys alone: each answer makes the page anew, and the next key goes on from there.
TEST(AskBackPage, AnAnswerLeavesTheFocusWhereItIsOrAtWhatIsNext) {
    Asking asking("weekly-dressing-upper-arm");
    auto opened = asking.ward().opening(practice::Way::Guided, practice::On::PracticeArm);
    opened.kit.antiseptic = "chlorhexidine-alcohol";
    asking.ward().must(opened);
    const packs::Prompt& prompt = asking.pack().prompts.front();
    asking.pressByKey(QStringLiteral("points.") + QString::fromStdString(prompt.points[0].id));
    asking.pressByKey(QStringLiteral("keepRound"));
    ASSERT_EQ(asking.learner().asked.size(), 1U);
    EXPECT_EQ(asking.focused(),
              QStringLiteral("points.") + QString::fromStdString(prompt.points[1].id));
    for (const packs::Point& point : prompt.points)
        asking.pressByKey(QStringLiteral("points.") + QString::fromStdString(point.id));
    asking.pressByKey(QStringLiteral("keepRound"));
    EXPECT_EQ(asking.focused(), QStringLiteral("nextQuestion"));
    asking.pressByKey(QStringLiteral("showDrills"));
    for (const packs::Drill& drill : asking.pack().drills) {
        const QString name = QStringLiteral("drill-%1-cued").arg(QString::fromStdString(drill.id));
        asking.pressByKey(name);
        EXPECT_EQ(asking.focused(), name);
    }
    EXPECT_EQ(asking.learner().drills.size(), asking.pack().drills.size());
}

TEST(AskBackPage, AsksInTheLearnersLanguageBesideTheTeachers) {
    Asking asking;
    const auto learner = base::LearnerId::random();
    asking.ward().must(record::AddLearner{
        .learner = learner, .name = "Salma Idris", .relationship = "sibling", .language = "ar"});
    const auto patient = asking.ward().desk().view().record->id;
    ASSERT_TRUE(asking.ward().desk().openRecord(patient, learner).ok());
    const packs::Prompt& prompt = asking.pack().prompts.front();
    auto* ask = asking.page().findChild<QLabel*>(QStringLiteral("ask"));
    auto* teachers = asking.page().findChild<QLabel*>(QStringLiteral("askTeacher"));
    EXPECT_EQ(ask->text().toStdString(), prompt.ask.at("ar"));
    EXPECT_EQ(ask->layoutDirection(), Qt::RightToLeft);
    EXPECT_EQ(teachers->text().toStdString(), prompt.ask.at("en"));
    asking.picture(QStringLiteral("ask-05-arabic"));
}

TEST(AskBackPage, WithoutALearnerItSaysWhatWillBeThere) {
    support::Ward ward("clean-hands");
    ward.desk().closeRecord();
    ui::AskBackPage page(ward.desk());
    page.show();
    auto* nothing = page.findChild<QLabel*>(QStringLiteral("askBackNothing"));
    EXPECT_TRUE(nothing->isVisible());
    EXPECT_FALSE(nothing->text().isEmpty());
}

}  // namespace
