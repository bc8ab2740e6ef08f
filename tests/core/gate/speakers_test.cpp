// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Who says what about staff and keys, and when an epoch begins: entries and rows of somebody who
// has a key, but not the right to it. Rules of our own, no source.
#include "forgedrows.h"
#include "gate/trust.h"
#include "ledger/base64url.h"
#include "ledger/jcs.h"

namespace gate {

using record::AccessChange;

class Speakers : public ForgedRows {
  protected:
    /// Somebody comes onto the list as `by` says, who is not let in.
    void addNoor(const base::StaffId& noor, const seal::Identity& signer, const base::StaffId& by) {
        append(record::AddStaff{noor, "Noor Abadi", "NA", record::Role::Teacher}, signer, by);
    }
    base::Outcome trusted(const std::vector<ledger::Entry>& told) const {
        return trust(told, ledger::Lineage(m_ledger.id()), rows(), *m_gate->keyring());
    }
    /// Gives Iris the epoch of now once more, under another number.
    void numberAgain(std::int64_t number) {
        const auto iris = m_gate->identity()->known();
        ASSERT_TRUE(asTam().ok());
        seal::EpochKey again = m_gate->keyring()->current().copy();
        again.number = number;
        seal::KeyRows forged = rows();
        std::erase_if(forged.grants, [&](const seal::EpochGrant& one) {
            return one.to == seal::thumbprint(seal::Curve::X25519, iris.boxing);
        });
        forged.grants.push_back(
            seal::grantEpoch(again, m_ledger.id(), iris.boxing, *m_gate->identity()));
        onDisk(forged);
    }
};

namespace {

TEST_F(Speakers, NobodySpeaksForWhoWasRetired) {
    const auto tam = idOf("Tam Oduya");
    ASSERT_TRUE(m_gate->retire(tam).ok());
    addNoor(base::StaffId::random(), *m_gate->identity(), tam);
    EXPECT_EQ(asIris().error(), changed("signature"));
}

TEST_F(Speakers, NobodySpeaksForWhoNeverWas) {
    addNoor(base::StaffId::random(), *m_gate->identity(), base::StaffId::random());
    EXPECT_EQ(asIris().error(), changed("signature"));
}

TEST_F(Speakers, NobodyComesOntoTheListByTheKeyOfAnother) {
    const auto noor = base::StaffId::random();
    addNoor(noor, *m_gate->identity(), noor);
    EXPECT_EQ(asIris().error(), changed("signature"));
}

TEST_F(Speakers, WhoComesBackBySheetSaysSoThemselves) {
    const auto sheet = seal::Recovery::fromLetters(phrase(m_sheet));
    const auto tam = idOf("Tam Oduya");
    ASSERT_TRUE(m_gate->recover(phrase(m_sheet), {"Iris Mora", "IM"}, phrase(m_fresh)).now().ok());
    std::vector<ledger::Entry> told = *m_ledger.withoutSubject();
    EXPECT_TRUE(trusted(told).ok());
    ledger::Entry& last = told.back();
    last.body.by = tam;
    last.body.sigs = nlohmann::json::array();
    for (const auto& [by, purpose] : {std::pair(m_gate->identity(), seal::Purpose::Author),
                                      {&sheet->signer(), seal::Purpose::Verification}})
        ASSERT_TRUE(seal::addSignature(last.body, *by, seal::SignedFor::of(last), purpose).ok());
    EXPECT_EQ(trusted(told).error(), changed("signature"));
}

TEST_F(Speakers, NobodyBeginsAnEpochInPassing) {
    ASSERT_TRUE(asTam().ok());
    const auto tam = idOf("Tam Oduya");
    for (const auto what : {AccessChange::NewPassphrase, AccessChange::RaisedCost}) {
        std::vector<ledger::Entry> told = *m_ledger.withoutSubject();
        append(record::ChangeAccess{tam, what, m_gate->identity()->known().kid(), m_epoch.id.text(),
                                    m_epoch.digest()},
               *m_gate->identity(), tam);
        told.push_back(m_ledger.withoutSubject()->back());
        EXPECT_EQ(trusted(told).error(), changed("epoch")) << base::nameOf(what);
    }
    EXPECT_EQ(asIris().error(), changed("epoch"));
}

TEST_F(Speakers, NobodyLeavesWithoutAnotherEpoch) {
    append(record::ChangeAccess{idOf("Tam Oduya"), AccessChange::Retired, {}, {}, {}},
           *m_gate->identity(), idOf("Iris Mora"));
    EXPECT_EQ(asIris().error(), changed("epoch"));
}

// Written by a program for which no epoch began then.
TEST_F(Speakers, ANewSheetWithoutAnotherEpochHolds) {
    const auto iris = idOf("Iris Mora");
    append(
        record::ChangeAccess{
            iris, AccessChange::NewRecovery, m_gate->identity()->known().kid(), {}, {}},
        *m_gate->identity(), iris);
    EXPECT_TRUE(asIris().ok());
}

// The next epoch would have a number that no JSON number of the record can hold (RFC 8785, section
// 3.2.2.3, by way of I-JSON, RFC 7493, section 2.2), so that its rows could not be read again.
TEST_F(Speakers, AnEpochUnderAnotherNumberIsToldBeforeTheNextOneBegins) {
    const seal::KeyRows honest = rows();
    numberAgain(ledger::largestInteger);
    EXPECT_EQ(asIris().error(), changed("epoch"));
    onDisk(honest);
    ASSERT_TRUE(asIris().ok()) << "nothing was written by it";
    EXPECT_EQ(m_gate->keyring()->current().number, 1);
    ASSERT_TRUE(m_gate->retire(idOf("Tam Oduya")).ok());
    EXPECT_EQ(m_gate->keyring()->current().number, 2);
    EXPECT_TRUE(asIris().ok());
}

TEST_F(Speakers, TheNumberBesideIsToldAsWell) {
    numberAgain(2);
    EXPECT_EQ(asIris().error(), changed("epoch"));
}

}  // namespace
}  // namespace gate
