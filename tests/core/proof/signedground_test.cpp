// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a signature is on: who signs off names the root (RFC 6962 section 2.1) of all that was there
// before, so that nobody with a key makes it another afterwards, nor moves the signature behind
// what the signer had not seen. And who says what is not signed.
#include "support/sealedhistory.h"

namespace proof {
namespace {

using ledger::Entry;
using support::SealedHistory;
using support::Stored;
using One = std::vector<Finding>;

class SignedGround : public testing::Test {
  protected:
    SealedHistory m_history;
    std::uint64_t m_signed = 0;

    void SetUp() override {
        m_history.note(SealedHistory::tam, 0, "scrubbed the hub for 15 seconds");
        m_signed = m_history.ledger().head().size;
        m_history.say(SealedHistory::tam,
                      record::SignOff{.learner = base::LearnerId::random(),
                                      .pack = {},
                                      .competencies = {"hands"},
                                      .statement = "seen by me",
                                      .acknowledgement = {},
                                      .root = m_history.ledger().head().root},
                      m_history.patient(0));
        m_history.note(SealedHistory::tam, 0, "touched the hub");
    }
    Entry entryAt(std::uint64_t seq) {
        return *ledger::readEntry(m_history.ledger().stored().at(seq), *m_history.grounds().codec);
    }
    static std::string bytesOf(Entry entry, SealedHistory& history) {
        return *ledger::entryBytes(entry, *history.grounds().codec);
    }
    static void signAgain(Entry& entry, const seal::Identity& by, seal::Purpose purpose) {
        entry.body.sigs = nlohmann::json::array();
        ASSERT_TRUE(seal::addSignature(entry.body, by, seal::SignedFor::of(entry), purpose).ok());
    }
    One found(const Stored& stored) {
        return support::verified(m_history.grounds(), stored).findings;
    }
    /// The record with another entry in the place of one, and every hash made anew.
    One foundWith(Entry entry) {
        Stored stored = support::storedIn(m_history.ledger());
        const auto seq = entry.seq;
        stored.at(seq).second = bytesOf(std::move(entry), m_history);
        return found(stored);
    }
};

TEST_F(SignedGround, AsItWasWrittenIsWell) {
    EXPECT_EQ(found(support::storedIn(m_history.ledger())), One());
}

TEST_F(SignedGround, NothingBeforeItCanBeAnotherThoughNoOtherHeadIsKnown) {
    int notes = 0;
    for (std::uint64_t seq = 0; seq < m_signed; ++seq) {
        Entry entry = entryAt(seq);
        if (entry.body.type != "noted") continue;
        entry.body.data["text"] = "unprompted";
        EXPECT_EQ(foundWith(entry), (One{at(Kind::Basis, m_signed)})) << seq;
        ++notes;
    }
    EXPECT_GE(notes, 5);
}

TEST_F(SignedGround, NothingBeforeItCanBeTakenOut) {
    Stored stored = support::storedIn(m_history.ledger());
    stored.erase(stored.begin() + std::ptrdiff_t(m_signed) - 1);
    for (std::uint64_t seq = m_signed - 1; seq < stored.size(); ++seq) {
        Entry entry = entryAt(seq + 1);
        entry.seq = seq;
        stored[seq] = {seq, bytesOf(entry, m_history)};
    }
    EXPECT_EQ(found(stored), (One{at(Kind::Basis, m_signed - 1)}));
}

TEST_F(SignedGround, ItCanNotComeAfterWhatWasNotSeenThen) {
    Stored stored = support::storedIn(m_history.ledger());
    Entry signOff = entryAt(m_signed), later = entryAt(m_signed + 1);
    std::swap(signOff.seq, later.seq);
    std::swap(signOff.tick, later.tick);
    stored[m_signed].second = bytesOf(later, m_history);
    stored[m_signed + 1].second = bytesOf(signOff, m_history);
    EXPECT_EQ(found(stored), (One{at(Kind::Basis, m_signed + 1)}));
}

TEST_F(SignedGround, WhatIsSignedForAnotherPurposeIsNamed) {
    Entry entry = entryAt(m_signed);
    entry.body.sigs = nlohmann::json::array();
    const auto tam = m_history.ringOf(SealedHistory::tam);
    ASSERT_TRUE(seal::addSignature(entry.body, *tam->identity(), seal::SignedFor::of(entry),
                                   seal::Purpose::Review)
                    .ok());
    EXPECT_EQ(foundWith(entry), (One{at(Kind::UnknownKey, m_signed)}));
}

TEST_F(SignedGround, ASecondSignatureIsOfSomebodyWhoCanSignThen) {
    m_history.signIn(SealedHistory::iris);
    const auto tam = m_history.ringOf(SealedHistory::tam);
    const auto id = m_history.gate().house().staff.at(1).said.staff;
    ASSERT_TRUE(m_history.gate().retire(id).ok());
    m_history.note(SealedHistory::iris, 0, "calm");
    Entry entry = entryAt(m_history.ledger().head().size - 1);
    const auto iris = m_history.ringOf(SealedHistory::iris);
    for (const auto* by : {iris->identity(), tam->identity()})
        ASSERT_TRUE(
            seal::addSignature(entry.body, *by, seal::SignedFor::of(entry), seal::Purpose::Author)
                .ok());
    EXPECT_EQ(foundWith(entry), (One{at(Kind::UnknownKey, entry.seq)}));
}

TEST_F(SignedGround, NobodySaysAnythingUnsignedForWhoIsRetiredOrWasNeverThere) {
    m_history.signIn(SealedHistory::iris);
    const auto id = m_history.gate().house().staff.at(1).said.staff;
    ASSERT_TRUE(m_history.gate().retire(id).ok());
    m_history.note(SealedHistory::iris, 0, "calm");
    Entry entry = entryAt(m_history.ledger().head().size - 1);
    for (const std::optional<base::StaffId>& by :
         {std::optional(id), std::optional(base::StaffId::random()),
          std::optional<base::StaffId>()}) {
        entry.body.by = by;
        EXPECT_EQ(foundWith(entry), (One{at(Kind::NoSpeaker, entry.seq)}));
        Entry unknown = entry;
        unknown.body.type = "from-a-later-program";
        EXPECT_EQ(foundWith(unknown), by ? One{at(Kind::NoSpeaker, entry.seq)} : One());
    }
}

// A paper prints the role beside the name.
TEST_F(SignedGround, NobodySaysAnythingInARoleTheyDoNotHave) {
    m_history.note(SealedHistory::tam, 0, "calm");
    Entry entry = entryAt(m_history.ledger().head().size - 1);
    for (const char* role : {"educator", "auditor", "system", "", "chief of everything"}) {
        entry.body.role = role;
        EXPECT_EQ(foundWith(entry), (One{at(Kind::OtherRole, entry.seq)})) << role;
        Entry unknown = entry;
        unknown.body.type = "from-a-later-program";
        EXPECT_EQ(foundWith(unknown), (One{at(Kind::OtherRole, entry.seq)})) << role;
    }
    entry.body.role = "teacher";
    EXPECT_EQ(foundWith(entry), One());
}

TEST_F(SignedGround, NorUnderTheirOwnSignature) {
    Entry entry = entryAt(m_signed);
    entry.body.role = "educator";
    signAgain(entry, *m_history.ringOf(SealedHistory::tam)->identity(),
              seal::Purpose::EventWitness);
    EXPECT_EQ(foundWith(entry), (One{at(Kind::OtherRole, m_signed)}));
    m_history.signIn(SealedHistory::iris);
    const gate::Newcomer ravi{"Ravi Sund", "RS", record::Role::Teacher};
    ASSERT_TRUE(
        m_history.gate().admit(ravi, seal::Secret::copyOf("lanterns under the ford")).now().ok());
    entry = entryAt(m_history.ledger().head().size - 1);
    ASSERT_EQ(entry.body.role, "educator");
    entry.body.role = "auditor";
    signAgain(entry, *m_history.gate().identity(), seal::Purpose::Author);
    EXPECT_EQ(foundWith(entry), (One{at(Kind::OtherRole, entry.seq)}));
}

// Before version 4 whoever came back by the sheet kept their role, and said it in none.
TEST_F(SignedGround, WhoComesBackByTheSheetHasTheRoleItGives) {
    m_history.signIn(SealedHistory::iris);
    const auto letters = m_history.gate().replaceRecovery();
    const auto sheet = seal::Recovery::fromLetters(*letters);
    ASSERT_TRUE(m_history.gate()
                    .recover(seal::Secret::copyOf(letters->view()),
                             {SealedHistory::tam.name, SealedHistory::tam.initials},
                             seal::Secret::copyOf("lanterns under the ford"))
                    .now()
                    .ok());
    Entry entry = entryAt(m_history.ledger().head().size - 1);
    EXPECT_EQ(entry.body.role, "educator");
    EXPECT_EQ(foundWith(entry), One());
    const auto say = [&](const char* role) {
        entry.body.role = role;
        signAgain(entry, *m_history.gate().identity(), seal::Purpose::Author);
        EXPECT_TRUE(seal::addSignature(entry.body, sheet->signer(), seal::SignedFor::of(entry),
                                       seal::Purpose::Verification)
                        .ok());
        return foundWith(entry);
    };
    const One wrong{at(Kind::OtherRole, entry.seq)};
    EXPECT_EQ(say("system"), wrong);
    entry.body.tv = 3;
    entry.body.data.erase("role");
    EXPECT_EQ(say("system"), One()) << "of an earlier program";
    EXPECT_EQ(say("teacher"), One());
    EXPECT_EQ(say("educator"), wrong);
}

// Nor is it left out by a program that somebody made themselves.
TEST_F(SignedGround, ASignOffWithoutARootIsNamed) {
    const auto tam = m_history.ringOf(SealedHistory::tam);
    const auto without = [&](std::uint64_t seq, int tv) {
        Entry entry = entryAt(seq);
        entry.body.tv = tv;
        entry.body.data["root"] = "";
        entry.body.sigs = nlohmann::json::array();
        EXPECT_TRUE(seal::addSignature(entry.body, *tam->identity(), seal::SignedFor::of(entry),
                                       seal::Purpose::EventWitness)
                        .ok());
        return entry;
    };
    EXPECT_EQ(foundWith(without(m_signed, 2)), (One{at(Kind::Basis, m_signed)}));
    EXPECT_EQ(foundWith(without(m_signed, 1)), One()) << "of an earlier program, so far as is seen";
    const auto later = m_history.ledger().head().size;
    m_history.say(SealedHistory::tam,
                  record::SignOff{.learner = base::LearnerId::random(),
                                  .pack = {},
                                  .competencies = {"hands"},
                                  .statement = "seen by me",
                                  .acknowledgement = {}},
                  m_history.patient(0));
    EXPECT_EQ(foundWith(without(later, 1)), (One{at(Kind::Basis, later)}))
        << "after one that named its root";
}

// Until version 4 papers were not signed: what was written then stands, until one was.
TEST_F(SignedGround, EveryPaperIsSignedFromTheFirstThatWasOn) {
    const auto paper = [&](int tv, bool isSigned) {
        m_history.say(SealedHistory::tam, record::IssuePaper{.learner = base::LearnerId::random()},
                      m_history.patient(0));
        Entry entry = entryAt(m_history.ledger().head().size - 1);
        entry.body.tv = tv;
        entry.body.sigs = nlohmann::json::array();
        const auto tam = m_history.ringOf(SealedHistory::tam);
        if (!isSigned) return entry;
        EXPECT_TRUE(seal::addSignature(entry.body, *tam->identity(), seal::SignedFor::of(entry),
                                       seal::Purpose::Author)
                        .ok());
        return entry;
    };
    EXPECT_EQ(foundWith(paper(3, false)), One()) << "of then";
    Entry entry = paper(4, false);
    EXPECT_EQ(foundWith(entry), (One{at(Kind::NoSignature, entry.seq)}));
    EXPECT_EQ(foundWith(paper(4, true)), One());
    entry = paper(3, false);
    EXPECT_EQ(foundWith(entry), (One{at(Kind::NoSignature, entry.seq)}))
        << "as if it had come from an older program";
}

}  // namespace
}  // namespace proof
