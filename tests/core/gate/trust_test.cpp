// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody who can write to the disk, but has nobody's passphrase, or a teacher's alone, can
// put there; each has to be told at the next sign-in.
#include "gate/trust.h"

#include "forgedrows.h"
#include "ledger/base64url.h"
#include "seal/sealingcodec.h"

namespace gate {

using base::Code;

/// A member of staff who makes new keys for themselves, or for somebody else, and says that they
/// came in by the recovery sheet.
class ForgedRecovery : public ForgedRows {
  protected:
    void sign(ledger::Draft& draft, const seal::Identity& by, seal::Purpose purpose) const {
        EXPECT_TRUE(seal::addSignature(draft.body, by, m_ledger.id(), purpose).ok());
    }
    /// Tam, with a program of his own; `sheet`: what he signs by in the place of the sheet.
    base::Outcome irisAfterTamSaid(const seal::Recovery* sheet) {
        EXPECT_TRUE(asTam().ok());
        const auto iris = idOf("Iris Mora");
        auto draft = record::draftOf(
            record::ChangeAccess{
                iris, record::AccessChange::Recovered, m_eve.known().kid(), {}, {}},
            iris, "educator", m_clock.now());
        sign(draft, m_eve, seal::Purpose::Author);
        if (sheet) sign(draft, sheet->signer(), seal::Purpose::Verification);
        const seal::KeyRows before = rows();
        seal::KeyRows forged = before;
        for (seal::WrappedIdentity& one : forged.people) {
            if (one.person != iris) continue;
            forged.former.push_back(one.known);
            one = rowOfEve(one.handle, iris);
        }
        auto ring = seal::Keyring::signIn(before, *seal::nameHandle("Tam Oduya", before.names),
                                          phrase(m_tams));
        for (seal::EpochGrant& grant : ring->grantAll(m_eve.known().boxing))
            forged.grants.push_back(std::move(grant));
        const ledger::Derived derived{.foldVersion = 2,
                                      .access = seal::changedRows(before, forged)};
        EXPECT_TRUE(m_ledger.append({draft}, m_clock.now(), derived).ok());
        m_gate->signOut();
        m_gate = opened();
        return signIn("Iris Mora", m_fresh);
    }
};

namespace {

TEST_F(ForgedRows, ARowOfAPersonAloneOpensNothing) {
    seal::KeyRows forged = rows();
    forged.people.push_back(
        rowOfEve(*seal::nameHandle("Eve", forged.names), base::StaffId::random()));
    onDisk(forged);
    EXPECT_EQ(signIn("Eve", m_fresh).error().code, Code::SealKeyMissing);
    EXPECT_EQ(asIris().error(), changed("person")) << "the next epoch would be given to her";
}

TEST_F(ForgedRows, AnEpochThatNobodyBeganIsToldAtSignIn) {
    onDisk(withEve());
    EXPECT_EQ(asIris().error(), changed("epoch"));
    EXPECT_EQ(asTam().error(), changed("epoch"));
    EXPECT_FALSE(m_gate->isSignedIn());
    for (const ledger::Entry& entry : entries()) EXPECT_FALSE(entry.isOpen);
}

TEST_F(ForgedRows, AnEpochThatIsToldOfUnderItselfIsToldToo) {
    onDisk(withEve());
    const seal::KeyRows all = rows();
    auto ring = std::make_shared<seal::Keyring>(
        *seal::Keyring::signIn(all, std::string(16, 'e'), phrase(m_fresh)));
    m_ledger.use(std::make_shared<seal::SealingCodec>(ring, m_ledger.keyShelf()));
    // The list of learners does not open for her; whoever has the disk can put another in its
    // place.
    ASSERT_TRUE(m_ledger.rebuild({.foldVersion = 2}).ok());
    const auto eve = all.people.back().person;
    append(record::AddStaff{eve, "Eve", "E", record::Role::Educator}, m_eve, eve);
    append(record::ChangeAccess{eve, record::AccessChange::Recovered, m_eve.known().kid(),
                                m_epoch.id.text(), m_epoch.digest()},
           m_eve, eve);
    m_gate = opened();
    EXPECT_EQ(asIris().error(), changed("epoch"));
}

TEST_F(ForgedRows, AnotherKeyUnderTheIdOfAnEpochIsRefused) {
    m_epoch.id = seal::EpochId(*seal::EpochId::parse(entries().front().key));
    m_epoch.number = 1;
    seal::KeyRows forged = rows();
    forged.grants.clear();
    for (const seal::WrappedIdentity& one : rows().people)
        forged.grants.push_back(grantTo(one.known.boxing));
    forged.people.push_back(rowOfEve(std::string(16, 'e'), base::StaffId::random()));
    onDisk(forged);
    EXPECT_FALSE(asIris().ok());
}

TEST_F(ForgedRows, WhoTakesTheRowOfAnotherReadsNothing) {
    const auto iris = idOf("Iris Mora");
    seal::KeyRows forged = rows();
    for (seal::WrappedIdentity& one : forged.people)
        if (one.person == iris) one = rowOfEve(one.handle, iris);
    forged.grants.push_back(grantTo(m_eve.known().boxing));
    onDisk(forged);
    EXPECT_EQ(signIn("Iris Mora", m_fresh).error(), changed("epoch"));
}

TEST_F(ForgedRows, ATeacherMakesNobodyAnEducator) {
    ASSERT_TRUE(asTam().ok());
    const auto tam = idOf("Tam Oduya"), eve = base::StaffId::random();
    append(record::AddStaff{eve, "Eve", "E", record::Role::Educator}, *m_gate->identity(), tam);
    append(record::ChangeAccess{eve, record::AccessChange::Admitted, m_eve.known().kid(), {}, {}},
           *m_gate->identity(), tam);
    EXPECT_EQ(asIris().error(), changed("signature"));
}

TEST_F(ForgedRows, AnEntryThatNobodySignedIsTold) {
    const auto iris = idOf("Iris Mora");
    auto draft = record::draftOf(
        record::AddStaff{base::StaffId::random(), "Eve", "E", record::Role::Educator}, iris,
        "educator", m_clock.now());
    ASSERT_TRUE(m_ledger.append({draft}, m_clock.now(), {.foldVersion = 2}).ok());
    EXPECT_EQ(asIris().error(), changed("signature"));
}

TEST_F(ForgedRows, SomebodyOnTheListWhomNobodyLetInIsTold) {
    const auto eve = base::StaffId::random();
    ASSERT_TRUE(asTam().ok());
    append(record::AddStaff{eve, "Eve", "E", record::Role::Educator}, *m_gate->identity(),
           idOf("Tam Oduya"));
    EXPECT_EQ(asIris().error(), changed("staff"));
}

TEST_F(ForgedRecovery, WithoutTheSheetIsTold) {
    EXPECT_EQ(irisAfterTamSaid(nullptr).error(), changed("signature"));
    EXPECT_EQ(asTam().error(), changed("signature")) << "to everybody";
}

TEST_F(ForgedRecovery, ByASheetOfTheirOwnIsTold) {
    const auto sheet = seal::Recovery::generate();
    EXPECT_EQ(irisAfterTamSaid(&sheet).error(), changed("signature"));
}

TEST_F(ForgedRecovery, ByAFormerSheetIsTold) {
    const auto sheet = seal::Recovery::fromLetters(phrase(m_sheet));
    ASSERT_TRUE(m_gate->replaceRecovery().ok());
    EXPECT_EQ(irisAfterTamSaid(&*sheet).error(), changed("signature"));
}

// What the tests above would not see if they refused everything.
TEST_F(ForgedRecovery, WithTheSheetInHandIsTaken) {
    const auto sheet = seal::Recovery::fromLetters(phrase(m_sheet));
    EXPECT_TRUE(irisAfterTamSaid(&*sheet).ok());
}

TEST_F(ForgedRows, NobodyTellsOfASheetInPassing) {
    ASSERT_TRUE(asTam().ok());
    const auto tam = idOf("Tam Oduya");
    record::ChangeAccess said{
        tam, record::AccessChange::RaisedCost, m_gate->identity()->known().kid(), {}, {}};
    said.recovery = ledger::toBase64Url(m_eve.known().signing);
    append(said, *m_gate->identity(), tam);
    EXPECT_EQ(asIris().error(), changed("recovery"));
}

TEST_F(ForgedRows, NobodyBecomesAnEducatorWithoutTheSheet) {
    ASSERT_TRUE(asTam().ok());
    const auto tam = idOf("Tam Oduya");
    record::ChangeAccess said{
        tam, record::AccessChange::RaisedCost, m_gate->identity()->known().kid(), {}, {}};
    said.role = record::Role::Educator;
    append(said, *m_gate->identity(), tam);
    EXPECT_EQ(asIris().error(), changed("role"));
}

TEST_F(ForgedRows, APublicKeyThatIsGoneIsMissed) {
    const auto tam = idOf("Tam Oduya");
    ASSERT_TRUE(m_gate->reset(tam, phrase(m_fresh)).now().ok());
    ASSERT_TRUE(signIn("Tam Oduya", m_fresh).ok());
    ASSERT_TRUE(
        m_gate->changePassphrase(phrase(m_fresh), phrase("copper kettles sing")).now().ok());
    ASSERT_TRUE(asIris().ok());
    ASSERT_TRUE(m_gate->retire(tam).ok());
    ASSERT_TRUE(asIris().ok()) << "an honest history holds";
    m_ring = m_gate->keyring();
    seal::KeyRows forged = rows();
    forged.former.clear();
    onDisk(forged);
    EXPECT_FALSE(asIris().ok());
}

}  // namespace
}  // namespace gate
