// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the desk writes into the log of who looked at what.
#include <gtest/gtest.h>

#include "record/uselog.h"
#include "support/ward.h"

namespace desk {

using record::Use;

/// A sealed ward whose gate writes down what is looked at; Solveig has signed in.
class LoggedDesk : public testing::Test {
  protected:
    support::Ward m_ward{"clean-hands", support::Ward::Record::Sealed};
    procedure::Shelf m_shelf;
    std::unique_ptr<gate::Gate> m_gate;
    std::unique_ptr<Desk> m_desk;
    base::PatientId m_patient;

    void SetUp() override {
        m_patient = m_ward.desk().view().record->id;
        m_ward.gate().signOut();
        m_gate =
            *gate::Gate::open(m_ward.ledger(), m_ward.clock(), {seal::Cost::least(), true, true});
        ASSERT_TRUE(m_gate->signIn("Solveig Aranda", support::Ward::passphrase()).now().ok());
        m_desk =
            *Desk::open(m_ward.ledger(), m_shelf, m_ward.clock(), desk::Ward::Real, m_gate.get());
    }
    std::vector<Use> uses() const {
        std::vector<Use> said;
        const auto log = m_desk->useLog();
        for (const record::UseLine& one : *log) said.push_back(one.used.said.what);
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
    EXPECT_EQ(log[0].used.said.object, "chart");
    EXPECT_EQ(log[1].used.said.patient, m_patient);
    EXPECT_EQ(log[2].whose, "") << "words that were typed are not kept";
    EXPECT_EQ(m_desk->view().head, m_ward.ledger().head());
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

TEST_F(LoggedDesk, NobodyWritesALineByACommand) {
    const auto said = m_desk->command(record::NoteUse{.what = Use::Opened});
    EXPECT_EQ(m_desk->handle(said).error().code, base::Code::NotByCommand);
    const auto from = m_desk->command(record::ContinueLedger{m_ward.ledger().id(), 1, "00"});
    EXPECT_EQ(m_desk->handle(from).error().code, base::Code::NotByCommand);
}

}  // namespace desk
