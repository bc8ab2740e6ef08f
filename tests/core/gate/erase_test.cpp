// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One patient is erased by two people. Rules of our own; that erasure leaves proof of itself and of
// what was there is asked by the design, no source.
#include "record/uselog.h"
#include "support/sealedhistory.h"

namespace gate {

using base::Code;
using support::SealedHistory;

class Erasure : public testing::Test {
  protected:
    SealedHistory m_history;
    const ledger::CardRow m_card{.learner = base::LearnerId::random(),
                                 .patient = m_history.patient(0),
                                 .sortKey = "okonjo",
                                 .searchKeys = {"okonjo", "teodor"},
                                 .json = "{}"};

    static seal::Secret phrase(const SealedHistory::Person& person) {
        return SealedHistory::phrase(person);
    }
    base::Outcome erase(const SealedHistory::Person& first, const SealedHistory::Person& second,
                        const std::string& why = "asked for by the family") {
        m_history.signIn(first);
        return m_history.gate()
            .erase({m_history.patient(0), why, second.name}, phrase(first), phrase(second))
            .now();
    }
    proof::Report verified() {
        return support::verified(m_history.grounds(), support::storedIn(m_history.ledger()));
    }
    std::vector<std::string> stored() { return m_history.ledger().stored(); }
    bool isReadable(int who) {
        const auto entries = m_history.ledger().ofSubject(m_history.patient(who)).value();
        return !entries.empty() && entries.back().isOpen;
    }
};

TEST_F(Erasure, TakesAnEducatorAndAnAuditor) {
    using H = SealedHistory;
    const auto before = stored();
    EXPECT_EQ(erase(H::iris, H::tam).error().code, Code::EraseTwo);
    EXPECT_EQ(erase(H::tam, H::ada).error().code, Code::EraseTwo);
    EXPECT_EQ(erase(H::iris, H::iris).error().code, Code::EraseTwo);
    EXPECT_EQ(stored(), before);
    EXPECT_TRUE(isReadable(0));
    EXPECT_TRUE(erase(H::iris, H::ada).ok());
    EXPECT_FALSE(isReadable(0));
    EXPECT_TRUE(isReadable(1)) << "nobody else's";
}

TEST_F(Erasure, AnAuditorWhoIsSignedInAndAnEducatorDoItAsWell) {
    EXPECT_TRUE(erase(SealedHistory::ada, SealedHistory::iris).ok());
    EXPECT_EQ(verified().findings.back().kind, proof::Kind::Erased);
    EXPECT_FALSE(verified().isWrong());
}

TEST_F(Erasure, AsksForBothPassphrases) {
    m_history.signIn(SealedHistory::iris);
    const Erasing asked{m_history.patient(0), "asked for", SealedHistory::ada.name};
    const auto wrong = [] { return seal::Secret::copyOf("lanterns under the ford"); };
    gate::Gate& gate = m_history.gate();
    EXPECT_EQ(gate.erase(asked, wrong(), phrase(SealedHistory::ada)).now().error().code,
              Code::SealWrongPassphrase);
    EXPECT_EQ(gate.erase(asked, phrase(SealedHistory::iris), wrong()).now().error().code,
              Code::SealWrongPassphrase);
    EXPECT_TRUE(isReadable(0));
    gate.signOut();
    EXPECT_EQ(gate.erase(asked, phrase(SealedHistory::iris), phrase(SealedHistory::ada))
                  .now()
                  .error()
                  .code,
              Code::AccessSignedOut);
}

TEST_F(Erasure, AWrongPassphraseOfTheSecondSlowsTheGuessingOfTheirs) {
    m_history.signIn(SealedHistory::iris);
    gate::Gate& gate = m_history.gate();
    const Erasing asked{m_history.patient(0), "asked for", SealedHistory::ada.name};
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(gate.waitMs(), 0) << i;
        EXPECT_FALSE(gate.erase(asked, phrase(SealedHistory::iris), seal::Secret::copyOf("wrong"))
                         .now()
                         .ok());
        if (i < 2) {
            ASSERT_TRUE(gate.confirm(phrase(SealedHistory::iris)).now().ok());
        }
    }
    EXPECT_GT(gate.waitMs(), 0) << "though Iris's own was right in between";
}

TEST_F(Erasure, WhoSignedOutMeanwhileErasesNothing) {
    m_history.signIn(SealedHistory::iris);
    const auto slow =
        m_history.gate().erase({m_history.patient(0), "asked for", SealedHistory::ada.name},
                               phrase(SealedHistory::iris), phrase(SealedHistory::ada));
    slow.work();
    m_history.signIn(SealedHistory::tam);
    EXPECT_EQ(slow.finish().error().code, Code::AccessSignedOut);
    EXPECT_TRUE(isReadable(0));
}

TEST_F(Erasure, TheReasonIsSaidAndNamesNobody) {
    using H = SealedHistory;
    EXPECT_EQ(erase(H::iris, H::ada, " ").error().code, Code::TextMissing);
    for (const char* why : {"Okonjo moved away", "of OKONJO, Teodor", "asked by Amara",
                            "wrong number N-1040", "of n 1040"})
        EXPECT_EQ(erase(H::iris, H::ada, why).error().code, Code::EraseNames) << why;
    EXPECT_TRUE(erase(H::iris, H::ada, "twice on the list, the other stays").ok());
    const auto& erased = m_history.gate().house().erased.at(0);
    EXPECT_EQ(erased.said.why, "twice on the list, the other stays");
    EXPECT_EQ(erased.said.patient, m_history.patient(0));
    EXPECT_EQ(erased.origin.by, m_history.gate().person()->said.staff);
}

TEST_F(Erasure, EntriesAndLeavesStayAndVerifySaysErased) {
    const auto before = stored();
    const auto head = m_history.ledger().head();
    ASSERT_TRUE(erase(SealedHistory::iris, SealedHistory::ada).ok());
    auto after = stored();
    ASSERT_EQ(after.size(), before.size() + 1);
    after.pop_back();
    EXPECT_EQ(after, before) << "ciphertext and leaf are those of before";
    const auto told = support::verified(m_history.grounds({proof::KnownHead::of(head)}),
                                        support::storedIn(m_history.ledger()));
    EXPECT_FALSE(told.isWrong());
    EXPECT_TRUE(told.isComplete());
    EXPECT_EQ(told.erased, 6U) << "2 when they came, 4 of teaching";
    for (const proof::Finding& one : told.findings) EXPECT_EQ(one.kind, proof::Kind::Erased);
    const auto seen = support::verified(m_history.keyless(), support::storedIn(m_history.ledger()));
    EXPECT_FALSE(seen.isWrong());
    EXPECT_EQ(seen.erased, 6U) << "also seen without a key";
    EXPECT_FALSE(seen.findings.empty());
    for (const proof::Finding& one : seen.findings)
        EXPECT_EQ(one.kind, proof::Kind::Emptied) << "but not by whom";
}

TEST_F(Erasure, CardsAndSearchForget) {
    m_history.signIn(SealedHistory::tam);
    auto draft = record::draftOf(practice::WriteNote{.step = {}, .text = "x"}, {}, "teacher",
                                 m_history.clock().now());
    draft.subject = m_history.patient(0);
    auto& ledger = m_history.ledger();
    ASSERT_TRUE(ledger.append({draft}, m_history.clock().now(), {.cards = {m_card}}).ok());
    ASSERT_EQ(ledger.cards({.words = {"teodor"}})->total, 1U);
    ASSERT_TRUE(erase(SealedHistory::iris, SealedHistory::ada).ok());
    EXPECT_EQ(ledger.cards({.words = {"teodor"}})->total, 0U);
    EXPECT_EQ(ledger.cards({})->total, 0U);
}

TEST_F(Erasure, IsDoneOnceAndNothingIsAddedAfterwards) {
    ASSERT_TRUE(erase(SealedHistory::iris, SealedHistory::ada).ok());
    EXPECT_EQ(erase(SealedHistory::iris, SealedHistory::ada).error().code, Code::PatientErased);
    auto draft = record::draftOf(practice::WriteNote{.step = {}, .text = "x"}, {}, "teacher",
                                 m_history.clock().now());
    draft.subject = m_history.patient(0);
    EXPECT_EQ(m_history.ledger().append({draft}, m_history.clock().now(), {}).error().code,
              Code::SealKeyMissing);
    EXPECT_EQ(m_history.gate()
                  .erase({base::PatientId::random(), "why", SealedHistory::ada.name},
                         phrase(SealedHistory::iris), phrase(SealedHistory::ada))
                  .now()
                  .error()
                  .code,
              Code::PatientUnknown);
}

TEST_F(Erasure, APatientWithAnOpenVisitIsNotErased) {
    m_history.signIn(SealedHistory::tam);
    const ledger::Derived open{
        .setsOpenVisit = true,
        .openVisit = ledger::OpenVisitRow{base::VisitId::random(), m_history.patient(0)}};
    ASSERT_TRUE(m_history.ledger().append({}, m_history.clock().now(), open).ok());
    EXPECT_EQ(erase(SealedHistory::iris, SealedHistory::ada).error().code, Code::EraseVisit);
    EXPECT_TRUE(isReadable(0));
}

TEST_F(Erasure, AKeyThatOneAloneDestroyedIsTold) {
    ASSERT_TRUE(m_history.ledger().keyShelf().erase(m_history.patient(0)).ok());
    const auto report = verified();
    EXPECT_TRUE(report.isWrong());
    for (const proof::Finding& one : report.findings) EXPECT_EQ(one.kind, proof::Kind::KeyGone);
}

TEST_F(Erasure, AnErasureThatOneAloneSaidIsTold) {
    m_history.say(SealedHistory::iris,
                  record::ErasePatient{m_history.patient(0), base::StaffId::random(), "so"});
    ASSERT_TRUE(m_history.ledger().keyShelf().erase(m_history.patient(0)).ok());
    const auto report = verified();
    EXPECT_EQ(report.findings.back().kind, proof::Kind::KeysChanged);
    EXPECT_EQ(report.findings.front().kind, proof::Kind::KeyGone);
}

// The two together could otherwise take out what tells of them.
TEST_F(Erasure, TheLogOfWhoLookedIsErasedByNobody) {
    using H = SealedHistory;
    auto& ledger = m_history.ledger();
    const auto log = record::useLogOf(ledger.id());
    m_history.say(H::tam, record::NoteUse{.what = record::Use::Opened}, log);
    m_history.signIn(H::iris);
    EXPECT_EQ(m_history.gate()
                  .erase({log, "too long", H::ada.name}, phrase(H::iris), phrase(H::ada))
                  .now()
                  .error()
                  .code,
              Code::PatientUnknown);
    const auto ada = m_history.ringOf(H::ada);
    m_history.signIn(H::ada);
    const auto second = m_history.gate().person()->said.staff;
    m_history.signIn(H::iris);
    auto draft =
        record::draftOf(record::ErasePatient{log, second, "too long"},
                        m_history.gate().person()->said.staff, "educator", m_history.clock().now());
    for (const auto* by : {m_history.gate().identity(), ada->identity()})
        ASSERT_TRUE(seal::addSignature(draft.body, *by, ledger.id(), seal::Purpose::Author).ok());
    ASSERT_TRUE(
        ledger.append({draft}, m_history.clock().now(), {.foldVersion = 2, .forgets = log}).ok());
    const auto report = verified();
    EXPECT_EQ(report.findings.front().kind, proof::Kind::KeyGone);
    EXPECT_EQ(report.findings.back().kind, proof::Kind::KeysChanged);
}

TEST_F(Erasure, AKeyThatIsPutBackAfterwardsIsTold) {
    const auto key = m_history.ledger().keyShelf().ofSubject(m_history.patient(0)).value().value();
    ASSERT_TRUE(erase(SealedHistory::iris, SealedHistory::ada).ok());
    ASSERT_TRUE(m_history.ledger().keyShelf().put(key).ok());
    const auto report = verified();
    EXPECT_TRUE(report.isWrong());
    EXPECT_EQ(report.findings.front().kind, proof::Kind::NotErased);
}

}  // namespace gate
