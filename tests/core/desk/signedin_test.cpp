// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The desk where people sign in: who may speak, what is signed, what is sealed.
#include <gtest/gtest.h>

#include "desk/bounds.h"
#include "seal/signature.h"
#include "support/ward.h"

namespace desk {
namespace {

using base::Code;
using support::Ward;

/// A sealed ward whose learner has shown and answered everything.
class SignedInDesk : public testing::Test {
  protected:
    Ward m_ward{"clean-hands", Ward::Record::Sealed};

    record::SignOff signOff() const { return m_ward.signOff(); }
    void demonstrate() {
        m_ward.demonstrateAsAsked();
        m_ward.answerAllPrompts();
    }
    bool confirm() { return m_ward.gate().confirm(Ward::passphrase()).now().ok(); }
    ledger::Entry last() {
        return m_ward.ledger().readFrom(m_ward.ledger().head().size - 1, 1)->front();
    }
};

TEST_F(SignedInDesk, ASignOffAsksForThePassphraseOnce) {
    demonstrate();
    EXPECT_EQ(m_ward.desk().say(signOff()).error().code, Code::AccessConfirm);
    EXPECT_FALSE(m_ward.gate().confirm(seal::Secret::copyOf("another")).now().ok());
    EXPECT_EQ(m_ward.desk().say(signOff()).error().code, Code::AccessConfirm);
    record::SignOff first = signOff(), second = signOff();
    first.competencies.resize(1);
    second.competencies.erase(second.competencies.begin());
    ASSERT_TRUE(confirm());
    EXPECT_TRUE(m_ward.desk().say(first).ok());
    EXPECT_EQ(m_ward.desk().say(second).error().code, Code::AccessConfirm) << "once";
}

// A passphrase is typed for what is shown then: it stays for nothing that comes later.
TEST_F(SignedInDesk, APassphraseThatWasNotUsedAtOnceIsUsedUp) {
    demonstrate();
    record::SignOff nothing = signOff();
    nothing.competencies.clear();
    ASSERT_TRUE(confirm());
    EXPECT_EQ(m_ward.desk().say(nothing).error().code, Code::NothingToSign);
    EXPECT_EQ(m_ward.desk().say(signOff()).error().code, Code::AccessConfirm) << "refused";
    ASSERT_TRUE(confirm());
    EXPECT_TRUE(m_ward.desk().say(record::AskAllergies{}).ok());
    EXPECT_EQ(m_ward.desk().say(signOff()).error().code, Code::AccessConfirm)
        << "something else was done";
    ASSERT_TRUE(confirm());
    EXPECT_TRUE(m_ward.desk().say(signOff()).ok());
}

// ASTM E1762 calls it event witness: it was observed and is attested.
TEST_F(SignedInDesk, ASignOffIsSignedByWhoeverSawIt) {
    demonstrate();
    ASSERT_TRUE(confirm());
    ASSERT_TRUE(m_ward.desk().say(signOff()).ok());
    const ledger::Entry entry = last();
    ASSERT_EQ(entry.body.sigs.size(), 1U);
    const auto& known = m_ward.gate().identity()->known();
    ledger::Body body = entry.body;
    const auto claim =
        seal::verifyBody(entry.body.sigs[0], seal::SignedFor::of(entry), body, known);
    ASSERT_TRUE(claim.ok());
    EXPECT_EQ(claim->purpose, seal::Purpose::EventWitness);
    EXPECT_EQ(claim->kid, m_ward.gate().person()->kids.back());
    body.data["competencies"].push_back("another");
    EXPECT_FALSE(
        seal::verifyBody(entry.body.sigs[0], seal::SignedFor::of(entry), body, known).ok());
}

TEST_F(SignedInDesk, AnAddendumIsSignedAsOneAndAStepIsNot) {
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    EXPECT_TRUE(last().body.sigs.empty());
    m_ward.must(record::AddAddendum{.to = last().body.id, .text = "it was the left hand"});
    EXPECT_EQ(seal::readSignature(last().body.sigs.at(0))->purpose, seal::Purpose::Addendum);
}

// ASTM E1762, 1.2.840.10065.1.12.1.17: administrative error, "for instance the wrong chart".
TEST_F(SignedInDesk, AMarkOfTheWrongChartIsSignedAsAnAdministrativeError) {
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto opened = m_ward.visit().origin.entry;
    m_ward.must(practice::StopVisit{});
    m_ward.must(record::MarkWrongChart{.to = opened, .why = "of the next bed"});
    EXPECT_EQ(last().body.type, "wrong-chart-marked");
    EXPECT_EQ(last().body.sigs.at(0)["purpose"], "1.2.840.10065.1.12.1.17");
    EXPECT_EQ(seal::readSignature(last().body.sigs.at(0))->purpose,
              seal::Purpose::AdministrativeError);
}

TEST_F(SignedInDesk, NobodySpeaksForAnotherOrWhileSignedOut) {
    Command note = m_ward.desk().command(record::AskAllergies{});
    note.by = base::StaffId::random();
    EXPECT_EQ(m_ward.desk().handle(note).error().code, Code::AccessAnother);
    m_ward.gate().signOut();
    EXPECT_EQ(m_ward.desk().say(record::AskAllergies{}).error().code, Code::AccessSignedOut);
}

TEST_F(SignedInDesk, StaffCannotBeAddedByACommandAlone) {
    const record::ChangeAccess said{m_ward.teacher(), record::AccessChange::Retired, {}, {}, {}};
    EXPECT_EQ(m_ward.desk().say(said).error().code, Code::AccessByKeysOnly);
    const record::AddStaff eve{.staff = base::StaffId::random(), .name = "Eve", .initials = "E"};
    EXPECT_EQ(m_ward.desk().say(eve).error().code, Code::AccessByKeysOnly);
}

TEST_F(SignedInDesk, ADrawingIsReadOnlyByWhoeverReadsTheRecord) {
    const std::string drawn =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 160\"><path fill=\"none\" "
        "stroke=\"#000\" stroke-width=\"2\" d=\"M1 2L3 4\"/></svg>";
    ASSERT_TRUE(m_ward.desk().openRecord(m_ward.desk().view().cards.front().patient, {}).ok());
    const auto digest = m_ward.desk().keepDrawing(drawn);
    ASSERT_TRUE(digest.ok());
    EXPECT_EQ(m_ward.desk().drawing(*digest), drawn);
    m_ward.gate().signOut();
    EXPECT_EQ(m_ward.desk().drawing(*digest), "");
    ASSERT_TRUE(m_ward.gate().signIn("Solveig Aranda", Ward::passphrase()).now().ok());
    EXPECT_EQ(m_ward.desk().drawing(*digest), drawn);
    ASSERT_TRUE(m_ward.ledger().keyShelf().erase(m_ward.desk().view().record->id).ok());
    m_ward.gate().signOut();
    ASSERT_TRUE(m_ward.gate().signIn("Solveig Aranda", Ward::passphrase()).now().ok());
    EXPECT_EQ(m_ward.desk().drawing(*digest), "") << "erased with its patient's key";
}

TEST_F(SignedInDesk, WhoIsErasedLeavesTheListAndTheView) {
    const seal::Secret others = seal::Secret::copyOf("copper kettles in a row");
    const gate::Newcomer ada{"Ada Lindqvist", "AL", record::Role::Auditor};
    ASSERT_TRUE(m_ward.gate().admit(ada, seal::Secret::copyOf(others.view())).now().ok());
    const auto patient = m_ward.desk().view().cards.front().patient;
    ASSERT_TRUE(m_ward.desk().openRecord(patient, {}).ok());
    Command late = m_ward.desk().command(record::AskAllergies{});
    ASSERT_TRUE(m_ward.gate()
                    .erase({patient, "asked for", ada.name}, Ward::passphrase(),
                           seal::Secret::copyOf(others.view()))
                    .now()
                    .ok());
    ASSERT_TRUE(m_ward.desk().readErased().ok());
    EXPECT_TRUE(m_ward.desk().view().cards.empty());
    EXPECT_FALSE(m_ward.desk().view().record.has_value());
    ASSERT_TRUE(m_ward.desk().lookFor("teodor").ok());
    EXPECT_TRUE(m_ward.desk().view().cards.empty());
    EXPECT_EQ(m_ward.desk().openRecord(patient, {}).error().code, Code::PatientErased);
    EXPECT_EQ(m_ward.desk().handle(late).error().code, Code::PatientErased);
}

}  // namespace
}  // namespace desk
