// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Whom the keys of the next epoch would be given to: every public key on the disk has to be one
// that the entries tell of. Rules of our own, no source.
#include "forgedrows.h"
#include "gate/trust.h"
#include "ledger/base64url.h"
#include "support/sealedhistory.h"

namespace gate {

class HeldKeys : public ForgedRows {
  protected:
    /// The row of Tam as it is in `all`.
    seal::WrappedIdentity& rowOfTam(seal::KeyRows& all) const {
        for (seal::WrappedIdentity& one : all.people)
            if (one.handle == *seal::nameHandle("Tam Oduya", all.names)) return one;
        ADD_FAILURE() << "no row";
        return all.people.front();
    }
    static void dropGrants(seal::KeyRows& all, const std::string& boxing) {
        const std::string name = seal::thumbprint(seal::Curve::X25519, boxing);
        std::erase_if(all.grants, [&](const seal::EpochGrant& one) { return one.to == name; });
    }
    /// The same as Iris would have said it before an entry told to which keys epochs are given.
    std::vector<ledger::Entry> ofBefore(std::vector<ledger::Entry> told) const {
        for (ledger::Entry& entry : told) {
            if (entry.body.type != record::ChangeAccess::type) continue;
            entry.body.tv = 2;
            EXPECT_EQ(entry.body.data.erase("box") + entry.body.data.erase("recovery_box"), 2U);
            entry.body.sigs = nlohmann::json::array();
            EXPECT_TRUE(seal::addSignature(entry.body, *m_gate->identity(),
                                           seal::SignedFor::of(entry), seal::Purpose::Author)
                            .ok());
        }
        return told;
    }
    base::Outcome trusted(const std::vector<ledger::Entry>& told, const seal::KeyRows& held) const {
        return trust(told, ledger::Lineage(m_ledger.id()), held, *m_gate->keyring());
    }
};

namespace {

TEST_F(HeldKeys, APersonNobodyLetInIsGivenNothing) {
    seal::KeyRows forged = rows();
    forged.people.push_back(rowOfEve(std::string(16, 'e'), base::StaffId::random()));
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("person"));
    EXPECT_EQ(asTam().error(), changed("person"));
}

TEST_F(HeldKeys, APersonWhoseRowIsGoneIsMissed) {
    seal::KeyRows forged = rows();
    const seal::PublicIdentity tam = rowOfTam(forged).known;
    dropGrants(forged, tam.boxing);
    std::erase_if(forged.people, [&](const auto& one) { return one.known == tam; });
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("person"));
}

TEST_F(HeldKeys, OtherKeysOfAColleagueAreTold) {
    const seal::KeyRows honest = rows();
    seal::KeyRows forged = honest;
    rowOfTam(forged).known.boxing = m_eve.known().boxing;
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("person")) << "the half that epochs are given to";
    forged = honest;
    rowOfTam(forged).known.signing = m_eve.known().signing;
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("person"));
}

TEST_F(HeldKeys, AnotherRecoverySheetIsTold) {
    seal::KeyRows forged = rows();
    dropGrants(forged, forged.recoveryKey);
    forged.recoveryKey = m_eve.known().boxing;
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("recovery"));
}

TEST_F(HeldKeys, AFormerRecoverySheetThatIsPutBackIsTold) {
    const std::string former = rows().recoveryKey;
    ASSERT_TRUE(m_gate->replaceRecovery().ok());
    ASSERT_TRUE(asIris().ok());
    seal::KeyRows forged = rows();
    forged.recoveryKey = former;
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("recovery"));
}

TEST_F(HeldKeys, AnEpochThatWasGivenByNobodyWhoWasToldOfIsTold) {
    const auto ring = m_gate->keyring();
    const auto iris = m_gate->identity()->known();
    seal::KeyRows forged = rows();
    dropGrants(forged, iris.boxing);
    forged.grants.push_back(seal::grantEpoch(ring->current(), m_ledger.id(), iris.boxing, m_eve));
    forged.former.push_back(m_eve.known());
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("grant"));
}

// Who was retired has the keys of before: if nobody is given the newest one, all that is written
// goes out under one of theirs.
TEST_F(HeldKeys, ANewestEpochThatNobodyIsGivenIsMissed) {
    ASSERT_TRUE(m_gate->retire(idOf("Tam Oduya")).ok());
    seal::KeyRows forged = rows();
    std::erase_if(forged.grants, [](const seal::EpochGrant& one) { return one.number == 2; });
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("epoch"));
    EXPECT_FALSE(m_gate->isSignedIn());
}

TEST_F(HeldKeys, AnEpochThatTheSheetOrAColleagueIsNotGivenIsMissed) {
    const seal::KeyRows honest = rows();
    seal::KeyRows forged = honest;
    dropGrants(forged, forged.recoveryKey);
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("recovery")) << "before anybody needs the sheet";
    forged = honest;
    dropGrants(forged, rowOfTam(forged).known.boxing);
    onDisk(forged);
    EXPECT_EQ(asIris().error(), changed("grant"));
    onDisk(honest);
    EXPECT_TRUE(asIris().ok());
}

TEST_F(HeldKeys, WhatNoEntryOfBeforeSaysIsHeldAgainstWhoGaveIt) {
    const std::vector<ledger::Entry> told = ofBefore(*m_ledger.withoutSubject());
    EXPECT_TRUE(trusted(told, rows()).ok()) << "a record of then opens";
    seal::KeyRows held = rows();
    rowOfTam(held).known.boxing = m_eve.known().boxing;
    EXPECT_EQ(trusted(told, held).error(), changed("person"));
    held.grants.push_back(seal::grantEpoch(m_ring->current(), m_ledger.id(), m_eve.known().boxing,
                                           *m_ring->identity()));
    EXPECT_TRUE(trusted(told, held).ok()) << "by somebody of the staff: then nothing tells";
    held.grants.back().number = 2;
    EXPECT_EQ(trusted(told, held).error(), changed("person")) << "not what was signed";
    held = rows();
    held.recoveryKey = m_eve.known().boxing;
    EXPECT_EQ(trusted(told, held).error(), changed("recovery"));
    held = rows();
    held.people.push_back(rowOfEve(std::string(16, 'e'), base::StaffId::random()));
    EXPECT_EQ(trusted(told, held).error(), changed("person"));
}

TEST_F(HeldKeys, InARecordOfBeforeWhoLeftIsGivenNothingByAFormerEpoch) {
    seal::KeyRows old = rows();
    const seal::PublicIdentity tam = rowOfTam(old).known;
    ASSERT_TRUE(m_gate->retire(idOf("Tam Oduya")).ok());
    const std::vector<ledger::Entry> told = ofBefore(*m_ledger.withoutSubject());
    seal::KeyRows held = rows();
    EXPECT_TRUE(trusted(told, held).ok());
    held.recoveryKey = tam.boxing;
    for (const seal::EpochGrant& one : old.grants)
        if (one.to == seal::thumbprint(seal::Curve::X25519, tam.boxing)) held.grants.push_back(one);
    EXPECT_EQ(trusted(told, held).error(), changed("recovery"));
}

TEST_F(HeldKeys, WhoTakesANewPassphraseSaysTheirsFromThenOn) {
    std::vector<ledger::Entry> told = ofBefore(*m_ledger.withoutSubject());
    ASSERT_TRUE(asTam().ok());
    ASSERT_TRUE(m_gate->changePassphrase(phrase(m_tams), phrase(m_fresh)).now().ok());
    told.push_back(m_ledger.withoutSubject()->back());
    seal::KeyRows held = rows();
    EXPECT_TRUE(trusted(told, held).ok());
    rowOfTam(held).known.boxing = m_eve.known().boxing;
    EXPECT_EQ(trusted(told, held).error(), changed("person"));
}

TEST_F(HeldKeys, NobodySaysOtherKeysOfThemselvesInPassing) {
    ASSERT_TRUE(asTam().ok());
    const auto tam = idOf("Tam Oduya");
    record::ChangeAccess said{
        tam, record::AccessChange::NewPassphrase, m_gate->identity()->known().kid(), {}, {}};
    said.box = ledger::toBase64Url(m_eve.known().boxing);
    append(said, *m_gate->identity(), tam);
    EXPECT_EQ(asIris().error(), changed("person"));
}

TEST_F(HeldKeys, VerifyTellsOfThem) {
    const auto kindsOf = [&](const seal::KeyRows& held) {
        const proof::Grounds grounds{
            ledger::Lineage(m_ledger.id()),
            std::make_shared<seal::SealingCodec>(m_gate->keyring(), m_ledger.keyShelf()),
            m_gate->keyring(),
            held,
            &m_ledger.keyShelf(),
            {}};
        std::vector<proof::Kind> kinds;
        for (const auto& one : support::verified(grounds, support::storedIn(m_ledger)).findings)
            kinds.push_back(one.kind);
        return kinds;
    };
    const std::vector<proof::Kind> none, wrong = {proof::Kind::KeysChanged};
    seal::KeyRows held = rows();
    EXPECT_EQ(kindsOf(held), none);
    held.recoveryKey = m_eve.known().boxing;
    EXPECT_EQ(kindsOf(held), wrong) << "another sheet";
    held = rows();
    rowOfTam(held).known.boxing = m_eve.known().boxing;
    EXPECT_EQ(kindsOf(held), wrong) << "other keys of a colleague";
    held = rows();
    held.people.push_back(rowOfEve(std::string(16, 'e'), base::StaffId::random()));
    EXPECT_EQ(kindsOf(held), wrong) << "another person";
    held = rows();
    dropGrants(held, held.recoveryKey);
    EXPECT_EQ(kindsOf(held), wrong) << "a sheet that opens nothing";
}

TEST_F(HeldKeys, TheSheetLetsNobodyInBesideWhoWasNotToldOf) {
    seal::KeyRows forged = rows();
    forged.people.push_back(rowOfEve(std::string(16, 'e'), base::StaffId::random()));
    onDisk(forged);
    const auto size = m_ledger.head().size;
    const auto back = m_gate->recover(phrase(m_sheet), {"Iris Mora", "IM"}, phrase(m_fresh)).now();
    EXPECT_EQ(back.error(), changed("person"));
    EXPECT_FALSE(m_gate->isSignedIn());
    EXPECT_FALSE(grewFrom(size)) << "nothing was written";
}

// What the tests above would not see if everything were refused.
TEST_F(HeldKeys, AnHonestHistoryOfComingAndGoingHolds) {
    const auto tam = idOf("Tam Oduya");
    ASSERT_TRUE(m_gate->reset(tam, phrase(m_fresh)).now().ok());
    const auto sheet = m_gate->replaceRecovery();
    ASSERT_TRUE(sheet.ok());
    ASSERT_TRUE(m_gate->retire(tam).ok());
    const Newcomer noor{"Noor Abadi", "NA", record::Role::Educator};
    ASSERT_TRUE(m_gate->admit(noor, phrase("copper kettles sing")).now().ok());
    ASSERT_TRUE(signIn("Noor Abadi", "copper kettles sing").ok());
    m_gate->signOut();
    ASSERT_TRUE(
        m_gate->recover(phrase(std::string(sheet->view())), {"Iris Mora", "IM"}, phrase(m_fresh))
            .now()
            .ok());
    EXPECT_TRUE(signIn("Iris Mora", m_fresh).ok());
    EXPECT_TRUE(signIn("Noor Abadi", "copper kettles sing").ok());
}

}  // namespace
}  // namespace gate
