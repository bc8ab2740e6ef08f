// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From the list of learners to a person and back to the ledger.
#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>
#include <QtTest/QTest>

#include "gui/main/settled.h"
#include "gui/main/shell_fixture.h"
#include "learners/learnercard.h"
#include "look.h"

class LearnersPageTest : public Shell {
  protected:
    QString page() const { return m_window->page()->objectName(); }
};

TEST_F(LearnersPageTest, EnterOpensTheOnlyOneWhoIsFound) {
    begin(Begin::DemoWard);
    QTest::keyClick(find("search"), Qt::Key_Return);
    EXPECT_EQ(page(), QStringLiteral("learners")) << "of several none is meant";
    type("search", QStringLiteral("lindq"));
    const auto card = m_desk->view().cards.front();
    QTest::keyClick(find("search"), Qt::Key_Return);
    EXPECT_EQ(page(), QStringLiteral("person"));
    EXPECT_EQ(m_desk->view().record->id, card.patient);
    EXPECT_EQ(m_desk->view().learner, card.learner);
}

// It ends where its words end, and not at the end of the window.
TEST_F(LearnersPageTest, TheOnlyCardIsAsHighAsWhatItSays) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    gui::settle(*m_window);
    ASSERT_EQ(m_desk->view().cards.size(), 1U);
    const auto* card = find(("card." + m_desk->view().cards.front().learner.text()).c_str());
    picture("44-one-card");
    EXPECT_EQ(card->height(), card->heightForWidth(card->width()));
}

TEST_F(LearnersPageTest, LookingIsNoEntry) {
    begin(Begin::DemoWard);
    const auto before = entries().size();
    type("search", QStringLiteral("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    press("person.back");
    EXPECT_EQ(page(), QStringLiteral("learners"));
    EXPECT_EQ(entries().size(), before);
}

// Two identifiers are what a record is known by: they are not left out of sight where another
// record was read to its end before.
TEST_F(LearnersPageTest, WhoseRecordItIsIsInSightWheneverOneIsOpened) {
    begin(Begin::DemoWard);
    const auto cards = m_desk->view().cards;
    for (const record::Card& card : {cards[0], cards[1], cards[0]}) {
        press(("card." + card.learner.text()).c_str());
        QCoreApplication::processEvents();
        const QWidget* name = find("pageTitle");
        EXPECT_EQ(name->visibleRegion().boundingRect().size(), name->size());
        QTest::keyClick(m_window->page(), Qt::Key_End);
        EXPECT_TRUE(find("pageTitle")->visibleRegion().isEmpty()) << "it was read to its end";
        press("place.1");
    }
}

// What is out of sight is made after what is in sight was painted.
TEST_F(LearnersPageTest, EveryCardOfThePageIsThereSoonAfterTheFirst) {
    begin(Begin::DemoWard);
    for (int i = 0; i < 20; ++i) {
        const auto patient =
            m_desk->say(record::AddPatient{.name = "Odo Brandt " + std::to_string(i),
                                           .born = "1961-05-03",
                                           .number = "B-" + std::to_string(i),
                                           .language = "en"});
        const auto learner = m_desk->say(record::AddLearner{.learner = base::LearnerId::random(),
                                                            .isPatient = true,
                                                            .relationship = "patient",
                                                            .language = "en"});
        ASSERT_TRUE(patient.ok() && learner.ok());
    }
    const auto made = [this] { return m_window->page()->findChildren<ui::LearnerCard*>().size(); };
    type("search", QStringLiteral("brandt"));
    ASSERT_EQ(m_desk->view().cards.size(), 20U);
    const auto last = ("card." + m_desk->view().cards.back().learner.text());
    EXPECT_FALSE(find(last.c_str()));
    EXPECT_TRUE(QTest::qWaitFor([&] { return find(last.c_str()) != nullptr; }));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(made(), 20);
    type("search", QStringLiteral("brandt 1"));
    EXPECT_LT(m_desk->view().cards.size(), 12U);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const auto* rest = m_window->page()->findChild<QTimer*>(QStringLiteral("restOfCards"));
    ASSERT_TRUE(rest);
    EXPECT_FALSE(rest->isActive()) << "nothing more comes";
    EXPECT_EQ(made(), static_cast<qsizetype>(m_desk->view().cards.size()));
}

// The second column of a card is narrow: at twice the size its words wrap where they did not.
TEST_F(LearnersPageTest, OfACardNothingIsCutAtTwiceTheSize) {
    begin(Begin::DemoWard);
    m_clock.advanceMs(6LL * 86'400'000);
    m_settings->set(ui::Setting::TextFactor, 2.0);
    m_window.reset();
    openWindow();
    gui::settle(*m_window);
    for (const record::Card& card : m_desk->view().cards) {
        const QWidget* shown = find(("card." + card.learner.text()).c_str());
        ASSERT_TRUE(shown);
        EXPECT_GE(shown->height(), shown->heightForWidth(shown->width()));
        for (const QLabel* label : shown->findChildren<QLabel*>())
            EXPECT_GE(label->height(), label->heightForWidth(label->width()))
                << label->text().toStdString();
    }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

// What an auditor says is refused (desk/auditor-reads): no form is filled in to learn that.
TEST_F(LearnersPageTest, AnAuditorIsOfferedWhatReadsAndNothingThatWrites) {
    begin(Begin::DemoWard);
    const auto auditor = base::StaffId::random();
    const record::AddStaff vera{auditor, "Vera Lund", "VL", record::Role::Auditor};
    ASSERT_TRUE(m_desk->say(vera).ok());
    EXPECT_TRUE(find("addPatient"));
    m_desk->workAs(auditor);
    m_window->go(ui::Place::Learners);
    EXPECT_FALSE(find("addPatient"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    for (const char* writes : {"person.next", "person.start", "person.again", "person.line",
                               "person.correct", "person.addLearner"})
        EXPECT_FALSE(find(writes)) << writes;
    press("person.papers");
    EXPECT_EQ(page(), QStringLiteral("papers"));
}

// Needs are asked again as they change; the earlier answer stays in the ledger.
TEST_F(LearnersPageTest, NeedsAskedAgainStandBesideTheEarlierOnes) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("okonjo"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    const auto before = types().count(QStringLiteral("needs-asked"));
    const auto consents = types().count(QStringLiteral("consent-asked"));
    press("person.again");
    type("home", QStringLiteral("her brother, in the evening"));
    auto* none = qobject_cast<QAbstractButton*>(find("barriers.none-found"));
    if (none->isChecked()) press("barriers.none-found");
    if (auto* hands = qobject_cast<QAbstractButton*>(find("barriers.sight")); !hands->isChecked())
        press("barriers.sight");
    press("interpreterNeeded.needed");
    press("learnerForm.primary");
    ASSERT_EQ(types().last(), QStringLiteral("needs-asked"));
    EXPECT_EQ(types().count(QStringLiteral("needs-asked")), before + 1);
    EXPECT_EQ(types().count(QStringLiteral("consent-asked")), consents) << "nobody asked it again";
    EXPECT_EQ(entries().back().body.data["home"], "her brother, in the evening");
    EXPECT_EQ(entries().back().body.data["interpreter_needed"], true);
}

TEST_F(LearnersPageTest, OfSeveralPacksOneIsChosenByKeys) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("okonjo"));
    const auto card = m_desk->view().cards.front();
    ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
    const auto weekly = m_desk->packFor(card.learner);
    procedure::TaughtPtr hands;
    for (const auto& one : m_desk->shelf().current())
        if (one->pack.id == "clean-hands") hands = one;
    practice::OpenVisit opening = m_desk->view().record->visits.back().opened;
    opening.pack = {hands->pack.id, hands->pack.version, hands->digest};
    desk::Command open = m_desk->command(opening);
    open.visit = base::VisitId::random();
    ASSERT_TRUE(m_desk->handle(open).ok());
    ASSERT_TRUE(m_desk->say(practice::StopVisit{}).ok());
    m_window->go(ui::Place::Learners);
    const std::string name = "card." + card.learner.text();
    QStringList told;
    for (const auto* label : find(name.c_str())->findChildren<QLabel*>()) told << label->text();
    EXPECT_TRUE(told.contains(QStringLiteral("Clean hands"))) << "of which pack the figures are";
    EXPECT_TRUE(find(name.c_str())->accessibleDescription().contains(QLatin1String("Clean hands")));
    press(name.c_str());
    EXPECT_EQ(m_desk->packFor(card.learner)->digest, weekly->digest);
    auto* chosen = find(("packInView." + weekly->digest).c_str());
    chosen->setFocus();
    QTest::keyClick(chosen, Qt::Key_Down);
    const std::string other = "packInView." + hands->digest;
    if (m_desk->packFor(card.learner)->digest != hands->digest)
        QTest::keyClick(find(other.c_str()), Qt::Key_Space);
    EXPECT_EQ(m_desk->packFor(card.learner)->digest, hands->digest);
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_TRUE(QApplication::focusWidget()->objectName().startsWith(QLatin1String("packInView.")))
        << "the keys stay where one was";
}
