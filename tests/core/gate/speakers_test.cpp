// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Who says what about staff and keys: entries of somebody who has a key, but not the right to it. Rules of our own, no source.
#include "forgedrows.h"
#include "gate/trust.h"

namespace gate {

class Speakers : public ForgedRows {
  protected:
    /// Somebody comes onto the list as `by` says, who is not let in.
    void addNoor(const base::StaffId& noor, const seal::Identity& signer, const base::StaffId& by) {
        append(record::AddStaff{noor, "Noor Abadi", "NA", record::Role::Teacher}, signer, by);
    }
    base::Outcome trusted(const std::vector<ledger::Entry>& told) const {
        return trust(told, ledger::Lineage(m_ledger.id()), rows(), *m_gate->keyring());
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

}  // namespace
}  // namespace gate
