// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the desk writes into the log of who looked at what.
#include <gtest/gtest.h>

#include <algorithm>

#include "record/uselog.h"
#include "support/ward.h"

namespace desk {

using base::Code;
using record::Use;

/// A sealed ward whose gate writes down what is looked at; Solveig has signed in.
class LoggedDesk : public testing::Test {
  protected:
    support::Ward m_ward{"clean-hands", support::Ward::Record::Sealed};
    procedure::Shelf m_shelf;
    std::unique_ptr<gate::Gate> m_gate;
    std::unique_ptr<Desk> m_desk;
    base::PatientId m_patient;
    base::StaffId m_tam;
    bool m_isTamHere = false;

    void SetUp() override {
        m_patient = m_ward.desk().view().record->id;
        m_ward.gate().signOut();
        m_gate =
            *gate::Gate::open(m_ward.ledger(), m_ward.clock(), {seal::Cost::least(), true, true});
        ASSERT_TRUE(m_gate->signIn("Solveig Aranda", support::Ward::passphrase()).now().ok());
        m_desk =
            *Desk::open(m_ward.ledger(), m_shelf, m_ward.clock(), desk::Ward::Real, m_gate.get());
    }
    void signIn(const char* name, seal::Secret passphrase) {
        m_gate->signOut();
        ASSERT_TRUE(m_gate->signIn(name, std::move(passphrase)).now().ok());
        m_desk =
            *Desk::open(m_ward.ledger(), m_shelf, m_ward.clock(), desk::Ward::Real, m_gate.get());
    }
    void asSolveig() { signIn("Solveig Aranda", support::Ward::passphrase()); }
    /// A colleague who never saw the patient.
    void asTam() {
        const auto own = [] { return seal::Secret::copyOf("a cellar full of quinces"); };
        const gate::Newcomer tam{"Tam Oduya", "TO", record::Role::Teacher};
        if (!m_isTamHere) {
            ASSERT_TRUE(m_gate->admit(tam, own()).now().ok());
        }
        m_isTamHere = true;
        signIn("Tam Oduya", own());
        m_tam = m_desk->view().teacher.value();
    }
    std::vector<Use> uses() const {
        std::vector<Use> said;
        const auto log = m_desk->useLog();
        for (const record::UseLine& one : *log)
            if (one.use()) said.push_back(one.use()->what);
        return said;
    }
};

TEST_F(LoggedDesk, SaysWhoseRecordWasOpenedAndWhatWasMadeOfIt) {
    ASSERT_TRUE(m_desk->lookFor("ok").ok());
    ASSERT_TRUE(m_desk->lookFor("okonjo").ok());
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    m_desk->noteUse(Use::Printed, "chart");
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    ASSERT_EQ(uses(), (std::vector<Use>{Use::Printed, Use::Opened, Use::Searched, Use::SignedIn}));
    const auto log = *m_desk->useLog();
    EXPECT_EQ(log[0].who, "Solveig Aranda");
    EXPECT_EQ(log[0].whose, "Teodor Okonjo");
    EXPECT_EQ(log[0].use()->object, "chart");
    EXPECT_EQ(log[1].use()->patient, m_patient);
    EXPECT_EQ(log[2].whose, "") << "words that were typed are not kept";
    EXPECT_EQ(m_desk->view().head, m_ward.ledger().head());
}

TEST_F(LoggedDesk, WhoReadsTheLogIsOfNobodysRecordAndStandsInItOnce) {
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    m_desk->noteUse(Use::ReadLog, {});
    m_desk->noteUse(Use::ReadLog, {});
    EXPECT_EQ(uses(), (std::vector<Use>{Use::ReadLog, Use::Opened, Use::SignedIn}));
    EXPECT_FALSE(m_desk->useLog()->front().use()->patient);
}

TEST_F(LoggedDesk, ChangesOfTheStaffStandInItToo) {
    asTam();
    std::vector<record::AccessChange> changes;
    const auto log = *m_desk->useLog();
    for (const record::UseLine& one : log)
        if (one.change()) changes.push_back(one.change()->what);
    EXPECT_EQ(changes, (std::vector<record::AccessChange>{record::AccessChange::Admitted,
                                                          record::AccessChange::Founded}));
    ASSERT_EQ(log[0].use()->what, Use::SignedIn);
    const auto letIn = std::ranges::find_if(log, [](const auto& one) { return one.change(); });
    EXPECT_EQ(letIn->who, "Solveig Aranda");
    EXPECT_EQ(letIn->whose, "Tam Oduya");
}

TEST_F(LoggedDesk, LooksAtNobodyInTheListAlone) {
    ASSERT_TRUE(m_desk->lookFor("").ok());
    EXPECT_EQ(uses(), std::vector<Use>{Use::SignedIn});
}

TEST_F(LoggedDesk, ARecordThatIsNotThereIsNotOpened) {
    EXPECT_FALSE(m_desk->openRecord(base::PatientId::random(), std::nullopt).ok());
    EXPECT_EQ(uses(), std::vector<Use>{Use::SignedIn});
}

TEST_F(LoggedDesk, DrawsNoCardOfItsOwn) {
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    ASSERT_TRUE(m_desk->lookFor("").ok());
    EXPECT_EQ(m_desk->view().cardTotal, 1U);
}

// design.md says nothing of who has a part: common practice, no source.
TEST_F(LoggedDesk, WhoHasNoPartInARecordSaysWhyOnceASignIn) {
    asTam();
    EXPECT_EQ(m_desk->openRecord(m_patient, std::nullopt).error().code, Code::ReasonWanted);
    EXPECT_EQ(m_desk->openRecord(m_patient, {}, " - ").error().code, Code::ReasonWanted);
    EXPECT_FALSE(m_desk->view().record);
    EXPECT_EQ(uses().front(), Use::SignedIn) << "nothing was opened";
    ASSERT_TRUE(m_desk->openRecord(m_patient, {}, "emergency").ok());
    ASSERT_TRUE(m_desk->view().record);
    EXPECT_EQ(m_desk->view().record->id, m_patient);
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    const auto log = *m_desk->useLog();
    ASSERT_GE(log.size(), 3U);
    EXPECT_EQ(log[0].use()->what, Use::Opened);
    EXPECT_EQ(*log[1].use(), (record::NoteUse{Use::BreakGlass, m_patient, "", "emergency"}));
    EXPECT_EQ(log[1].who, "Tam Oduya");
    EXPECT_EQ(log[1].whose, "Teodor Okonjo");
    EXPECT_EQ(log[2].use()->what, Use::SignedIn);
    asTam();
    EXPECT_EQ(m_desk->openRecord(m_patient, std::nullopt).error().code, Code::ReasonWanted);
}

TEST_F(LoggedDesk, WhyIsKeptAsItWasTypedAndNotWithoutEnd) {
    asTam();
    EXPECT_EQ(m_desk->openRecord(m_patient, {}, std::string(100'000, 'x')).error().code,
              Code::TextBad);
    ASSERT_TRUE(m_desk->openRecord(m_patient, {}, "asked by the \u202ewife").ok());
    EXPECT_EQ((*m_desk->useLog())[1].use()->reason, "asked by the wife");
}

// The log is erased by nobody, so a name in it would outlive its patient.
TEST_F(LoggedDesk, WhyNamesNobodyOfTheRecord) {
    asTam();
    for (const char* why : {"Okonjo calls", "for OKONJO, Teodor", "asked by Amara", "of n 1042"})
        EXPECT_EQ(m_desk->openRecord(m_patient, {}, why).error().code, Code::ReasonNames) << why;
    EXPECT_FALSE(m_desk->view().record);
    EXPECT_EQ(uses().front(), Use::SignedIn) << "nothing was written down";
    EXPECT_TRUE(m_desk->openRecord(m_patient, {}, "asked by the wife").ok());
}

TEST_F(LoggedDesk, WhoTaughtIsNotAsked) {
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    EXPECT_EQ(uses(), (std::vector<Use>{Use::Opened, Use::SignedIn}));
}

TEST_F(LoggedDesk, WhoWroteInItIsNotAskedAndWhoMadeAPaperIs) {
    m_shelf.put(support::readPack("clean-hands"));
    asTam();
    ASSERT_TRUE(m_desk->openRecord(m_patient, {}, "takes-over").ok());
    ASSERT_TRUE(m_desk->say(m_ward.paper(record::PaperKind::ChartNote)).ok());
    asTam();
    EXPECT_EQ(m_desk->openRecord(m_patient, std::nullopt).error().code, Code::ReasonWanted);
    ASSERT_TRUE(m_desk->openRecord(m_patient, {}, "takes-over").ok());
    ASSERT_TRUE(m_desk->say(record::AskAllergies{}).ok());
    asTam();
    EXPECT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
}

TEST_F(LoggedDesk, WhoWritesWithoutReadingIsNotHeldUp) {
    asTam();
    auto said = m_desk->command(record::AskAllergies{});
    said.patient = m_patient;
    ASSERT_TRUE(m_desk->handle(said).ok());
    EXPECT_EQ(uses()[0], Use::Opened);
    EXPECT_EQ(uses()[1], Use::SignedIn);
}

TEST_F(LoggedDesk, WhatIsRefusedLeavesNoRecordOpen) {
    asTam();
    auto said = m_desk->command(record::AddAddendum{.to = base::CommandId::random(), .text = " "});
    said.patient = m_patient;
    EXPECT_EQ(m_desk->handle(said).error().code, Code::TextMissing);
    EXPECT_FALSE(m_desk->view().record);
    EXPECT_FALSE(m_desk->view().learner);
}

TEST_F(LoggedDesk, NobodyIsAskedBesideAVisitThatRunsNorOnceItWasHandedOver) {
    ASSERT_TRUE(m_desk->openRecord(m_patient, m_ward.learner()).ok());
    const auto opening = m_ward.opening(practice::Way::Guided, practice::On::PracticeArm);
    m_shelf.put(support::readPack("clean-hands"));
    ASSERT_TRUE(m_desk->say(opening).ok());
    asTam();
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    asSolveig();
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    ASSERT_TRUE(m_desk->say(practice::HandOver{.to = m_tam}).ok());
    asTam();
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    m_ward.clock().advanceMs(1000);
    asSolveig();
    ASSERT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok());
    ASSERT_TRUE(m_desk->say(practice::HandOver{.to = m_desk->view().teacher.value()}).ok());
    ASSERT_TRUE(m_desk->say(practice::StopVisit{.why = practice::StopReason::CalledAway}).ok());
    ASSERT_FALSE(m_desk->view().openVisit);
    asTam();
    EXPECT_TRUE(m_desk->openRecord(m_patient, std::nullopt).ok()) << "it was in their hands";
    for (const Use what : uses()) EXPECT_NE(what, Use::BreakGlass);
}

TEST_F(LoggedDesk, NobodyWritesALineByACommand) {
    const auto said = m_desk->command(record::NoteUse{.what = Use::Opened});
    EXPECT_EQ(m_desk->handle(said).error().code, base::Code::NotByCommand);
    const auto from = m_desk->command(record::ContinueLedger{m_ward.ledger().id(), 1, "00"});
    EXPECT_EQ(m_desk->handle(from).error().code, base::Code::NotByCommand);
}

}  // namespace desk
