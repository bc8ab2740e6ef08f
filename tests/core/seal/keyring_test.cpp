// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/keyring.h"

#include <gtest/gtest.h>

#include <functional>

#include "hexbytes.h"
#include "ledger/jcs.h"
#include "seal/sealedbody.h"
#include "seal/signature.h"

namespace seal {
namespace {

using base::Code;

Secret typed(const char* passphrase) { return Secret::copyOf(passphrase); }

/// A ledger with one educator and one patient of whom something was written.
class SealedWard : public testing::Test {
  protected:
    base::LedgerId m_home = base::LedgerId::random();
    Recovery m_sheet = Recovery::generate();
    KeyRows m_rows;
    Keyring m_first =
        *Keyring::found(m_rows, owner('1'), typed("first passphrase"), Cost::least(), m_sheet);
    PatientKey m_patient = PatientKey::generate(base::PatientId::random());
    WrappedPatientKey m_patientRow = m_first.wrap(m_patient);
    Sealed m_said = sealBody(m_patient.key, "said by the learner", "entry 7");

    Owner owner(char handle) const {
        return {m_home, base::StaffId::random(), std::string(16, handle)};
    }
    void add(Admission admission) {
        m_rows.people.push_back(std::move(admission.row));
        std::move(admission.grants.begin(), admission.grants.end(),
                  std::back_inserter(m_rows.grants));
    }
    /// Whether this ring leads to what was said.
    bool canRead(const Keyring& ring) const {
        const auto key = ring.open(m_patientRow);
        return key.ok() && openBody(key->key, m_said, "entry 7") == "said by the learner";
    }
    base::Result<Keyring> signInAs(char handle, const char* passphrase) const {
        return Keyring::signIn(m_rows, std::string(16, handle), typed(passphrase));
    }
};

TEST_F(SealedWard, TheFirstPersonSignsInAndReads) {
    EXPECT_TRUE(canRead(m_first));
    const auto again = signInAs('1', "first passphrase");
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(canRead(*again));
    EXPECT_EQ(again->identity()->known(), m_first.identity()->known());
    EXPECT_EQ(again->refusedGrants(), 0U);
}

TEST_F(SealedWard, AWrongNameSaysTheSameAsAWrongPassphrase) {
    EXPECT_EQ(signInAs('1', "First passphrase").error(), base::Error{Code::SealWrongPassphrase});
    EXPECT_EQ(signInAs('x', "first passphrase").error(), base::Error{Code::SealWrongPassphrase});
    EXPECT_EQ(Keyring::signIn({m_home}, std::string(16, '1'), typed("x")).error(),
              base::Error{Code::SealWrongPassphrase});
}

TEST_F(SealedWard, APersonComesWithoutAnothersPassphrase) {
    add(*m_first.admit(owner('2'), typed("second"), Cost::least()));
    const auto second = signInAs('2', "second");
    ASSERT_TRUE(second.ok());
    EXPECT_TRUE(canRead(*second));
    EXPECT_FALSE(signInAs('2', "first passphrase").ok());
    add(*second->admit(owner('3'), typed("third"), Cost::least()));
    EXPECT_TRUE(canRead(*signInAs('3', "third"))) << "and brings the next one";
}

TEST_F(SealedWard, WhoGoesReadsNothingOfTheNextEpoch) {
    add(*m_first.admit(owner('2'), typed("second"), Cost::least()));
    const auto gone = signInAs('2', "second");
    const auto next = m_first.beginEpoch({m_first.identity()->known().boxing, m_rows.recoveryKey});
    m_rows.grants.insert(m_rows.grants.end(), next.begin(), next.end());
    m_patientRow = m_first.wrap(PatientKey::generate(m_patient.patient));
    EXPECT_EQ(gone->open(m_patientRow).error(), base::Error{Code::SealKeyMissing});
    EXPECT_FALSE(signInAs('2', "second")->open(m_patientRow).ok()) << "nor with a kept copy";
    EXPECT_TRUE(m_first.open(m_patientRow).ok());
    EXPECT_TRUE(signInAs('1', "first passphrase")->open(m_patientRow).ok());
    EXPECT_TRUE(Keyring::unlockWithRecovery(m_rows, m_sheet)->open(m_patientRow).ok());
    EXPECT_EQ(signInAs('1', "first passphrase")->current().number, 2);
    EXPECT_EQ(signInAs('1', "first passphrase")->epochCount(), 2U);
}

TEST_F(SealedWard, WithAllPassphrasesLostOneSheetReadsEverything) {
    const auto next = m_first.beginEpoch({m_first.identity()->known().boxing, m_rows.recoveryKey});
    m_rows.grants.insert(m_rows.grants.end(), next.begin(), next.end());
    const Secret letters = m_sheet.letters();
    const auto sheet = Recovery::fromLetters(letters);
    ASSERT_TRUE(sheet.ok());
    EXPECT_EQ(sheet->kid(), m_sheet.kid());
    const auto ring = Keyring::unlockWithRecovery(m_rows, *sheet);
    ASSERT_TRUE(ring.ok());
    EXPECT_EQ(ring->identity(), nullptr);
    EXPECT_TRUE(canRead(*ring));
    m_rows.former.push_back(m_rows.people[0].known);
    m_rows.people.clear();
    add(*ring->admit(owner('9'), typed("a fresh start"), Cost::least()));
    const auto fresh = signInAs('9', "a fresh start");
    ASSERT_TRUE(fresh.ok());
    EXPECT_TRUE(canRead(*fresh));
    EXPECT_EQ(fresh->epochCount(), 2U);
}

TEST_F(SealedWard, AnotherSheetOpensNothing) {
    EXPECT_EQ(Keyring::unlockWithRecovery(m_rows, Recovery::generate()).error(),
              base::Error{Code::SealKeyMissing});
}

TEST_F(SealedWard, AResetMakesNewKeysAndOldSignaturesStillHold) {
    add(*m_first.admit(owner('2'), typed("forgotten"), Cost::least()));
    const ledger::Body body{.id = base::CommandId::random(), .type = "said"};
    const auto before = signInAs('2', "forgotten");
    const auto signature = *signBody(*before->identity(), m_home, Purpose::Author, body);

    const WrappedIdentity old = m_rows.people[1];
    m_rows.people.erase(m_rows.people.begin() + 1);
    m_rows.former.push_back(old.known);
    add(*m_first.admit({m_home, old.person, old.handle}, typed("chosen anew"), Cost::least()));
    EXPECT_FALSE(signInAs('2', "forgotten").ok());
    const auto after = signInAs('2', "chosen anew");
    ASSERT_TRUE(after.ok());
    EXPECT_TRUE(canRead(*after));
    EXPECT_NE(after->identity()->known().kid(), old.known.kid());
    const auto known = m_rows.identityOf(readSignature(signature)->kid);
    ASSERT_TRUE(known.has_value());
    EXPECT_TRUE(verifyBody(signature, m_home, body, *known).ok());
}

TEST_F(SealedWard, GrantsOfTheRetiredStillCount) {
    add(*m_first.admit(owner('2'), typed("second"), Cost::least()));
    m_rows.former.push_back(m_rows.people[0].known);
    m_rows.people.erase(m_rows.people.begin());
    EXPECT_TRUE(canRead(*signInAs('2', "second")));
}

TEST_F(SealedWard, AnEpochThatNobodyKnownGaveIsLeftOut) {
    const Identity stranger = Identity::generate();
    const EpochKey planted = EpochKey::generate(99);
    m_rows.grants.push_back(
        grantEpoch(planted, m_home, m_first.identity()->known().boxing, stranger));
    auto moved = grantEpoch(planted, base::LedgerId::random(), m_first.identity()->known().boxing,
                            *m_first.identity());
    m_rows.grants.push_back(moved);
    auto feigned = grantEpoch(planted, m_home, m_first.identity()->known().boxing, stranger);
    feigned.by = m_first.identity()->known().kid();
    m_rows.grants.push_back(feigned);
    const auto ring = signInAs('1', "first passphrase");
    ASSERT_TRUE(ring.ok());
    EXPECT_EQ(ring->refusedGrants(), 3U);
    EXPECT_EQ(ring->current().number, 1);
    EXPECT_EQ(ring->epoch(planted.id), nullptr);
}

TEST_F(SealedWard, AChangedPassphraseLeavesTheKeysAsTheyAre) {
    const auto ring = signInAs('1', "first passphrase");
    m_rows.people[0] =
        *rewrapped(m_rows.people[0], *ring->identity(), typed("changed"), Cost::least());
    EXPECT_FALSE(signInAs('1', "first passphrase").ok());
    EXPECT_EQ(signInAs('1', "changed")->identity()->known(), ring->identity()->known());
}

TEST_F(SealedWard, ALowCostIsSeenAndRaised) {
    EXPECT_TRUE(isBelow(m_rows.people[0], {16, 1}));
    m_rows.people[0] =
        *rewrapped(m_rows.people[0], *m_first.identity(), typed("first passphrase"), {16, 1});
    EXPECT_FALSE(isBelow(m_rows.people[0], {16, 1}));
    EXPECT_TRUE(isBelow(m_rows.people[0], Cost{}));
    EXPECT_TRUE(signInAs('1', "first passphrase").ok());
}

TEST_F(SealedWard, ADestroyedPatientKeyIsGoneForEverybody) {
    // What is left when the row is destroyed is the ciphertext and another patient's key.
    const PatientKey other = PatientKey::generate(m_patient.patient);
    EXPECT_FALSE(openBody(other.key, m_said, "entry 7"));
    for (const auto& grant : m_rows.grants) {
        const auto* epoch = m_first.epoch(grant.epoch);
        EXPECT_FALSE(openBody(epoch->key, m_said, "entry 7")) << "not under the epoch's own key";
    }
}

TEST_F(SealedWard, RowsAreReadBackAsTheyWereWritten) {
    for (const EpochGrant& grant : m_rows.grants)
        EXPECT_EQ(*EpochGrant::parse(grant.json()), grant);
    EXPECT_EQ(*WrappedPatientKey::parse(m_patientRow.json()), m_patientRow);
    auto row = m_patientRow.json();
    row["epoch"] = "x";
    EXPECT_EQ(WrappedPatientKey::parse(row).error(), (base::Error{Code::SealBadRow, {"epoch"}}));
    row = m_rows.grants[0].json();
    for (const auto& wrong :
         {nlohmann::json(0), nlohmann::json(-1), nlohmann::json("1"), nlohmann::json(1.0)}) {
        row["number"] = wrong;
        EXPECT_EQ(EpochGrant::parse(row).error(), (base::Error{Code::SealBadRow, {"number"}}));
    }
}

/// The row with each letter of each text changed, one after the other.
int eachChangedText(const nlohmann::json& row,
                    const std::function<void(const nlohmann::json&, const std::string&)>& seen) {
    int tried = 0;
    for (const auto& [member, value] : row.items()) {
        const std::string text = value.is_string() ? value.get<std::string>() : std::string();
        for (std::size_t i = 0; i < text.size(); ++i, ++tried) {
            nlohmann::json changed = row;
            std::string other = text;
            other[i] = other[i] == 'a' ? 'b' : 'a';
            changed[member] = other;
            seen(changed, member);
        }
    }
    return tried;
}

TEST_F(SealedWard, AnyLetterChangedInAGrantIsNoticed) {
    const Identity& first = *m_first.identity();
    const int tried = eachChangedText(
        m_rows.grants[0].json(), [&](const nlohmann::json& changed, const std::string& member) {
            const auto grant = EpochGrant::parse(changed);
            EXPECT_TRUE(!grant.ok() || !grant->holdsBy(first.known())) << member;
        });
    EXPECT_GT(tried, 300);
    EpochGrant grant = m_rows.grants[0];
    grant.number = 2;
    EXPECT_FALSE(grant.holdsBy(first.known()));
}

// Signed again by somebody who is known: the box itself says which epoch and holder it is for.
TEST_F(SealedWard, ABoxCanNotBePutUnderAnotherEpoch) {
    const Identity& first = *m_first.identity();
    EpochGrant grant = m_rows.grants[0];
    ASSERT_TRUE(openGrant(grant, first.known().boxing, first.boxingKey()).ok());
    grant.epoch = EpochId::random();
    EXPECT_EQ(openGrant(grant, first.known().boxing, first.boxingKey()).error(),
              (base::Error{Code::SealRefused, {"epoch"}}));
    grant = m_rows.grants[0];
    grant.number = 2;
    EXPECT_FALSE(openGrant(grant, first.known().boxing, first.boxingKey()).ok());
    EXPECT_FALSE(openGrant(m_rows.grants[1], first.known().boxing, first.boxingKey()).ok())
        << "the recovery sheet's";
}

TEST_F(SealedWard, AnyLetterChangedInAPatientsKeyIsNoticed) {
    const int tried = eachChangedText(
        m_patientRow.json(), [&](const nlohmann::json& changed, const std::string& member) {
            const auto row = WrappedPatientKey::parse(changed);
            EXPECT_FALSE(row.ok() && m_first.open(*row).ok()) << member;
        });
    EXPECT_EQ(tried, 200);
}

}  // namespace
}  // namespace seal
