// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/gate.h"

#include "gatedward.h"
#include "seal/signature.h"

namespace gate {
namespace {

using base::Code;

TEST_F(GatedWard, TheFounderIsAnEducatorAndSignedIn) {
    ASSERT_NE(m_gate->person(), nullptr);
    EXPECT_EQ(m_gate->person()->said.name, "Iris Mora");
    EXPECT_EQ(m_gate->person()->said.role, record::Role::Educator);
    EXPECT_EQ(m_gate->found({"Eve", "E"}, phrase(m_fresh)).now().error().code, Code::AccessFounded);
}

TEST_F(GatedWard, NothingIsReadableWhileNobodyIsSignedIn) {
    m_gate->signOut();
    EXPECT_EQ(m_gate->person(), nullptr);
    EXPECT_TRUE(m_gate->house().staff.empty());
    ASSERT_EQ(entries().size(), 4U);
    for (const ledger::Entry& entry : entries()) EXPECT_FALSE(entry.isOpen);
    ASSERT_TRUE(asTam().ok());
    for (const ledger::Entry& entry : entries()) EXPECT_TRUE(entry.isOpen);
    EXPECT_EQ(m_gate->person()->said.name, "Tam Oduya");
}

TEST_F(GatedWard, OpensAgainByWhatIsStoredAlone) {
    m_gate = nullptr;
    m_gate = opened();
    EXPECT_TRUE(m_gate->isFounded());
    EXPECT_TRUE(signIn(" iris  MORA", m_irises).ok()) << "names are folded";
}

TEST_F(GatedWard, EveryChangeIsSignedByWhoeverMadeIt) {
    for (const ledger::Entry& entry : entries()) {
        ASSERT_EQ(entry.body.sigs.size(), 1U) << entry.body.type;
        const auto& signature = entry.body.sigs[0];
        const auto claim = seal::readSignature(signature);
        ASSERT_TRUE(claim.ok());
        const auto key = m_gate->publicKey(claim->kid);
        ASSERT_TRUE(key.has_value());
        EXPECT_EQ(claim->kid, m_gate->person()->kids.back());
        ledger::Body body = entry.body;
        EXPECT_TRUE(seal::verifyBody(signature, m_ledger.id(), body, *key).ok());
        body.role = "auditor";
        EXPECT_FALSE(seal::verifyBody(signature, m_ledger.id(), body, *key).ok());
    }
}

TEST_F(GatedWard, AnUnknownNameAndAWrongPassphraseSayTheSame) {
    EXPECT_EQ(signIn("Iris Mora", m_tams).error(), base::Error{Code::SealWrongPassphrase});
    EXPECT_EQ(signIn("Iris Moro", m_irises).error(), base::Error{Code::SealWrongPassphrase});
    EXPECT_FALSE(m_gate->isSignedIn());
}

TEST_F(GatedWard, WrongPassphrasesSlowDownAndNeverLockOut) {
    for (int i = 0; i < 20; ++i) {
        EXPECT_EQ(signIn("Iris Mora", "wrong").error().code, Code::SealWrongPassphrase) << i;
        const auto wait = m_gate->waitMs();
        EXPECT_EQ(wait > 0, i >= 2) << i;
        if (wait == 0) continue;
        m_clock.advanceMs(wait - 1);
        EXPECT_EQ(asIris().error(), (base::Error{Code::AccessWait, {"1"}})) << i;
        m_clock.advanceMs(1);
    }
    EXPECT_TRUE(asIris().ok()) << "the right one is let in after twenty wrong ones";
    EXPECT_FALSE(signIn("Iris Mora", "wrong").ok());
    EXPECT_EQ(m_gate->waitMs(), 0) << "and the count begins anew";
}

// Else whoever knows one passphrase tries a colleague's as fast as their own lets them.
TEST_F(GatedWard, ARightPassphraseEndsTheSlowingOfNobodyElse) {
    std::int64_t longest = 0;
    for (int i = 0; i < 8; ++i) {
        EXPECT_EQ(signIn("Iris Mora", "wrong").error().code, Code::SealWrongPassphrase) << i;
        EXPECT_GE(m_gate->waitMs(), longest) << i;
        longest = m_gate->waitMs();
        m_clock.advanceMs(longest);
        ASSERT_TRUE(asTam().ok()) << i;
        EXPECT_EQ(m_gate->waitMs(), 0) << "nor does Tam wait for it any longer";
        ASSERT_TRUE(m_gate->confirm(phrase(m_tams)).now().ok());
    }
    EXPECT_GE(longest, 32'000);
    ASSERT_TRUE(asIris().ok());
    EXPECT_FALSE(signIn("Iris Mora", "wrong").ok());
    EXPECT_EQ(m_gate->waitMs(), 0) << "her own ends it";
}

TEST_F(GatedWard, NamesThatNobodyHasAreSlowedDownTogether) {
    for (const char* name : {"Iris Moro", "Tam", "Nobody"})
        EXPECT_EQ(signIn(name, "wrong").error().code, Code::SealWrongPassphrase);
    EXPECT_GT(m_gate->waitMs(), 0);
    m_clock.advanceMs(m_gate->waitMs());
    ASSERT_TRUE(asTam().ok());
    EXPECT_FALSE(signIn("Nobody", "wrong").ok());
    EXPECT_EQ(m_gate->waitMs(), 0) << "slips of the day";
}

TEST_F(GatedWard, ConfirmsOnlyThePersonWhoIsSignedIn) {
    EXPECT_TRUE(m_gate->confirm(phrase(m_irises)).now().ok());
    EXPECT_EQ(m_gate->confirm(phrase(m_tams)).now().error().code, Code::SealWrongPassphrase);
    m_gate->signOut();
    EXPECT_EQ(m_gate->confirm(phrase(m_irises)).now().error().code, Code::AccessSignedOut);
}

TEST_F(GatedWard, ANewPassphraseTakesThePlaceOfTheOld) {
    const auto size = m_ledger.head().size;
    EXPECT_EQ(m_gate->changePassphrase(phrase(m_tams), phrase(m_fresh)).now().error().code,
              Code::SealWrongPassphrase);
    EXPECT_EQ(m_gate->changePassphrase(phrase(m_irises), phrase("short")).now().error().code,
              Code::AccessWeak);
    EXPECT_FALSE(grewFrom(size));
    ASSERT_TRUE(m_gate->changePassphrase(phrase(m_irises), phrase(m_fresh)).now().ok());
    EXPECT_TRUE(grewFrom(size));
    EXPECT_FALSE(asIris().ok());
    EXPECT_TRUE(signIn("Iris Mora", m_fresh).ok());
}

TEST_F(GatedWard, OnlyAnEducatorLetsPeopleInAndOut) {
    ASSERT_TRUE(asTam().ok());
    const auto size = m_ledger.head().size;
    const auto iris = idOf("Iris Mora");
    EXPECT_EQ(m_gate->admit({"Eve", "E"}, phrase(m_fresh)).now().error().code,
              Code::AccessEducators);
    EXPECT_EQ(m_gate->reset(iris, phrase(m_fresh)).now().error().code, Code::AccessEducators);
    EXPECT_EQ(m_gate->retire(iris).error().code, Code::AccessEducators);
    EXPECT_EQ(m_gate->replaceRecovery().error().code, Code::AccessEducators);
    m_gate->signOut();
    EXPECT_EQ(m_gate->retire(iris).error().code, Code::AccessSignedOut);
    EXPECT_FALSE(grewFrom(size));
}

TEST_F(GatedWard, ANameIsTakenOnce) {
    EXPECT_EQ(m_gate->admit({"TAM oduya", "T"}, phrase(m_fresh)).now().error().code,
              Code::AccessNameTaken);
}

TEST_F(GatedWard, NobodyResetsOrRetiresThemselves) {
    const auto iris = idOf("Iris Mora");
    EXPECT_EQ(m_gate->reset(iris, phrase(m_fresh)).now().error().code, Code::AccessNotOneself);
    EXPECT_EQ(m_gate->retire(iris).error().code, Code::AccessNotOneself);
}

TEST_F(GatedWard, AResetGivesNewKeysAndKeepsTheOldPublicOnes) {
    const auto tam = idOf("Tam Oduya");
    const auto former = m_gate->house().person(tam)->kids.back();
    ASSERT_TRUE(m_gate->reset(tam, phrase(m_fresh)).now().ok());
    EXPECT_EQ(m_gate->house().person(tam)->kids.size(), 2U);
    EXPECT_TRUE(m_gate->publicKey(former).has_value());
    EXPECT_FALSE(asTam().ok());
    ASSERT_TRUE(signIn("Tam Oduya", m_fresh).ok());
    EXPECT_NE(m_gate->identity()->known().kid(), former);
    EXPECT_EQ(entries().size(), 5U);
    for (const ledger::Entry& entry : entries()) EXPECT_TRUE(entry.isOpen);
}

TEST_F(GatedWard, TheRetiredSignInNoMoreAndTheOthersReadOn) {
    const auto tam = idOf("Tam Oduya");
    ASSERT_TRUE(m_gate->retire(tam).ok());
    EXPECT_TRUE(m_gate->house().person(tam)->isRetired);
    EXPECT_EQ(m_gate->retire(tam).error().code, Code::AccessRetired);
    EXPECT_FALSE(asTam().ok());
    ASSERT_TRUE(asIris().ok());
    for (const ledger::Entry& entry : entries()) EXPECT_TRUE(entry.isOpen);
    ASSERT_TRUE(m_gate->admit({"Tam Oduya", "TO"}, phrase(m_fresh)).now().ok())
        << "the name is free again";
}

TEST_F(GatedWard, TheSheetOpensEverythingWhenAllPassphrasesAreLost) {
    const auto iris = idOf("Iris Mora");
    m_gate = nullptr;
    m_gate = opened();
    const Newcomer again{"Iris Mora", "IM"};
    EXPECT_FALSE(
        m_gate->recover(phrase(std::string(m_sheet).replace(0, 1, "?")), again, phrase(m_fresh))
            .now()
            .ok());
    ASSERT_TRUE(m_gate->recover(phrase(m_sheet), again, phrase(m_fresh)).now().ok());
    EXPECT_EQ(m_gate->person()->said.staff, iris) << "the same person with new keys";
    for (const ledger::Entry& entry : entries()) EXPECT_TRUE(entry.isOpen);
    EXPECT_FALSE(asIris().ok());
    EXPECT_TRUE(signIn("Iris Mora", m_fresh).ok());
    EXPECT_TRUE(m_gate->retire(idOf("Tam Oduya")).ok()) << "she is an educator";
}

TEST_F(GatedWard, TheSheetLetsInSomebodyNew) {
    m_gate->signOut();
    ASSERT_TRUE(m_gate->recover(phrase(m_sheet), {"Ravi Sund", "RS"}, phrase(m_fresh)).now().ok());
    EXPECT_EQ(m_gate->person()->said.role, record::Role::Educator);
    EXPECT_EQ(m_gate->house().staff.size(), 3U);
    EXPECT_TRUE(signIn("Ravi Sund", m_fresh).ok());
    EXPECT_TRUE(asTam().ok());
}

// Else there would be nobody to let people in or to print the next sheet.
TEST_F(GatedWard, WhoComesInByTheSheetIsAnEducatorWhateverTheyWere) {
    const auto tam = idOf("Tam Oduya");
    m_gate->signOut();
    const Newcomer again{"Tam Oduya", "TO", record::Role::Teacher};
    ASSERT_TRUE(m_gate->recover(phrase(m_sheet), again, phrase(m_fresh)).now().ok());
    EXPECT_EQ(m_gate->person()->said.staff, tam) << "the same person with new keys";
    EXPECT_EQ(m_gate->person()->said.role, record::Role::Educator);
    EXPECT_EQ(entries().back().body.role, "educator");
    EXPECT_TRUE(m_gate->admit({"Ravi Sund", "RS"}, phrase("copper kettles sing")).now().ok());
    EXPECT_TRUE(m_gate->replaceRecovery().ok());
    EXPECT_TRUE(asIris().ok()) << "and is one to everybody";
    EXPECT_EQ(m_gate->house().person(tam)->said.role, record::Role::Educator);
    EXPECT_TRUE(signIn("Ravi Sund", "copper kettles sing").ok());
}

TEST_F(GatedWard, ANewSheetTakesThePlaceOfTheFormer) {
    const auto sheet = m_gate->replaceRecovery();
    ASSERT_TRUE(sheet.ok());
    const Newcomer person{"Ravi Sund", "RS"};
    EXPECT_EQ(m_gate->recover(phrase(m_sheet), person, phrase(m_fresh)).now().error().code,
              Code::SealKeyMissing);
    EXPECT_TRUE(
        m_gate->recover(phrase(std::string(sheet->view())), person, phrase(m_fresh)).now().ok());
}

TEST_F(GatedWard, ADearerDefaultIsTakenOnAtSignIn) {
    const seal::Cost dearer{16, 2};
    m_gate = opened({dearer, true});
    ASSERT_TRUE(asIris().ok());
    EXPECT_EQ(entries().back().body.data["what"], "raised-cost");
    const auto size = m_ledger.head().size;
    ASSERT_TRUE(asIris().ok());
    EXPECT_FALSE(grewFrom(size)) << "once";
    const auto rows = seal::readKeyRows(*m_ledger.access());
    EXPECT_FALSE(seal::isBelow(*seal::rowOf(**rows, idOf("Iris Mora")), dearer));
    EXPECT_TRUE(seal::isBelow(*seal::rowOf(**rows, idOf("Tam Oduya")), dearer));
}

TEST_F(GatedWard, AFullDiskChangesNothingAndKeepsNobodyOut) {
    m_ledger.isFull = true;
    EXPECT_EQ(m_gate->retire(idOf("Tam Oduya")).error().code, Code::StoreFull);
    EXPECT_EQ(m_gate->changePassphrase(phrase(m_irises), phrase(m_fresh)).now().error().code,
              Code::StoreFull);
    m_gate = opened({{16, 2}, true});
    EXPECT_TRUE(asIris().ok());
    EXPECT_TRUE(asTam().ok());
    m_ledger.isFull = false;
    ASSERT_TRUE(asIris().ok());
    EXPECT_TRUE(m_gate->admit({"Eve Lind", "EL"}, phrase(m_fresh)).now().ok());
    ASSERT_TRUE(signIn("Eve Lind", m_fresh).ok());
    for (const ledger::Entry& entry : entries()) EXPECT_TRUE(entry.isOpen);
}

TEST_F(GatedWard, CheapPassphrasesAreRefusedWhereRealPeopleAre) {
    const auto real = Gate::open(m_ledger, m_clock, {});
    ASSERT_FALSE(real.ok());
    EXPECT_EQ(real.error().code, Code::AccessTooCheap);
}

}  // namespace
}  // namespace gate
