// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From the sign-in window to the windows and back, over real keys at the least cost.
#include "gui/main/entering.h"

using support::Ward;

TEST_F(Entering, OnlyWhoSignsInSeesTheWindows) {
    begin();
    EXPECT_TRUE(m_entrance.signIn().isVisible());
    signInAs("Solveig Aranda", m_tams);
    EXPECT_EQ(m_entrance.window(), nullptr);
    asSolveig();
    ASSERT_NE(m_entrance.window(), nullptr);
    EXPECT_TRUE(m_entrance.window()->isVisible());
    EXPECT_FALSE(m_entrance.signIn().isVisible());
    EXPECT_EQ(said("teacher"), QStringLiteral("SA"));
}

TEST_F(Entering, SigningOutLeavesNothingOfTheWindows) {
    begin();
    asSolveig();
    press("teacher");
    press("account.signOut");
    EXPECT_EQ(m_entrance.window(), nullptr);
    EXPECT_EQ(m_entrance.desk(), nullptr);
    EXPECT_FALSE(m_ward.gate().isSignedIn());
    EXPECT_TRUE(m_entrance.signIn().isVisible());
    signInAs("Tam Oduya", m_tams);
    EXPECT_EQ(said("teacher"), QStringLiteral("TO"));
}

TEST_F(Entering, AnotherAtTheLockGetsWindowsOfTheirOwn) {
    begin();
    asSolveig();
    const ui::MainWindow* before = m_entrance.window();
    openRecord();
    m_entrance.lock()->lockNow();
    auto& cover = m_entrance.lock()->cover();
    EXPECT_FALSE(before->isVisible());
    gui::shownPart<QAbstractButton>(cover, QStringLiteral("lock.other"))->click();
    gui::typeInto(cover, "signIn.name", QStringLiteral("Tam Oduya"));
    gui::typeInto(cover, "signIn.passphrase", QString::fromStdString(m_tams));
    gui::shownPart<QAbstractButton>(cover, QStringLiteral("signIn.primary"))->click();
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return m_entrance.window() && m_entrance.window()->isVisible(); }, 60'000));
    wait();
    EXPECT_EQ(said("teacher"), QStringLiteral("TO"));
    EXPECT_FALSE(m_entrance.desk()->view().record) << "nobody's record is left open";
}

TEST_F(Entering, FromThePassphraseToTheAccountAndBack) {
    withAllShown();
    toASignOff();
    press("teacher");
    press("account.back");
    confirmAs(m_solveigs);
    EXPECT_EQ(last().body.type, record::SignOff::type);
}

TEST_F(Entering, ComingBackFromALockIsNoReasonToSign) {
    m_ward.demonstrateAsAsked();
    begin();
    asSolveig();
    ASSERT_TRUE(m_door.unlock(seal::Secret::copyOf(m_solveigs)).now().ok());
    EXPECT_FALSE(m_ward.gate().takeConfirmation());
    ASSERT_TRUE(m_door.confirm(seal::Secret::copyOf(m_solveigs)).now().ok());
    EXPECT_TRUE(m_ward.gate().takeConfirmation());
}

TEST_F(Entering, APassphraseThatWasTypedIsGoneWhenThePageIsOutOfSight) {
    begin();
    asSolveig();
    press("teacher");
    auto* field = gui::shownPart<QLineEdit>(shown(), QStringLiteral("account.old"));
    type("account.old", m_solveigs);
    press("place.1");
    EXPECT_EQ(field->text(), QString());
    press("teacher");
    type("account.old", m_solveigs);
    m_entrance.lock()->lockNow();
    EXPECT_EQ(field->text(), QString()) << "somebody else may come back to it";
}

TEST_F(Entering, OnlyWhoMayVerifiesAndSeesWhoLooked) {
    begin();
    signInAs("Tam Oduya", m_tams);
    press("teacher");
    EXPECT_EQ(gui::shownPart<QAbstractButton>(shown(), QStringLiteral("account.audit")), nullptr);
    press("account.signOut");
    asSolveig();
    press("teacher");
    press("account.audit");
    EXPECT_TRUE(said("audit.verdict").isEmpty());
    type("audit.paper", "some letters");
    press("audit.primary");
    EXPECT_EQ(m_auditor.papers, std::vector<std::string>{"some letters"});
    EXPECT_TRUE(QTest::qWaitFor([this] { return !said("audit.verdict").isEmpty(); }));
}

TEST_F(Entering, TwoPeopleDestroyARecord) {
    const gate::Newcomer vera{"Vera Lund", "VL", record::Role::Auditor};
    const std::string veras = "copper kettle on a raft";
    ASSERT_TRUE(m_ward.gate().admit(vera, seal::Secret::copyOf(veras)).now().ok());
    begin();
    asSolveig();
    press(QStringLiteral("card.") + QString::fromStdString(m_ward.learner().text()));
    press("person.erase");
    EXPECT_TRUE(said("erase.whose").contains(QStringLiteral("born")));
    type("erase.why", "the time to keep it is over");
    type("erase.own", m_solveigs);
    type("erase.second", "Tam Oduya");
    type("erase.others", m_tams);
    press("erase.primary");
    EXPECT_FALSE(m_entrance.desk()->view().cards.empty()) << "a teacher is not an auditor";
    type("erase.own", m_solveigs);
    type("erase.second", "Vera Lund");
    type("erase.others", veras);
    press("erase.primary");
    EXPECT_TRUE(m_entrance.desk()->view().cards.empty());
    EXPECT_FALSE(m_entrance.desk()->view().record);
    EXPECT_EQ(last().body.type, record::ErasePatient::type);
    EXPECT_EQ(last().body.sigs.size(), 2U);
}

TEST(EnteringNothing, WhatCannotBeOpenedIsSaidAtTheDoor) {
    ui::Look::instance();
    QTemporaryDir folder;
    Ward ward("clean-hands", Ward::Record::Sealed);
    ward.gate().signOut();
    ui::GateDoor door(ward.gate());
    ui::Settings settings(folder.filePath(QStringLiteral("settings.ini")));
    FakeAuditor auditor;
    ui::Entrance entrance(door, auditor, ward.clock(), settings,
                          [] { return base::Error{base::Code::StoreDamaged}; });
    entrance.begin();
    gui::typeInto(entrance.signIn(), "signIn.name", QStringLiteral("Solveig Aranda"));
    gui::typeInto(entrance.signIn(), "signIn.passphrase", QStringLiteral("nine slow herons wade"));
    gui::shownPart<QAbstractButton>(entrance.signIn(), QStringLiteral("signIn.primary"))->click();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            return !ward.gate().isSignedIn() &&
                   gui::shownPart<QWidget>(entrance.signIn(), QStringLiteral("errorStrip"));
        },
        60'000));
    EXPECT_EQ(entrance.window(), nullptr);
    EXPECT_TRUE(entrance.signIn().isVisible());
}
