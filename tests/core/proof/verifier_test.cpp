// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What verify says of a record by itself, with a key and without. The envelope and who may sign are
// rules of our own; the tree is RFC 9162 section 2.1, signatures are RFC 8037.
#include "proof/verifier.h"

#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "seal/signature.h"
#include "support/sealedhistory.h"

namespace proof {

using ledger::Entry;
using support::SealedHistory;
using support::Stored;
using support::verified;

/// One history for all tests of this file: none of them writes to it.
class Verifying : public testing::Test {
  protected:
    static SealedHistory& history() {
        static SealedHistory made;
        return made;
    }
    Stored m_stored = support::storedIn(history().ledger());

    static std::vector<Finding> found(Grounds grounds, const Stored& stored) {
        return verified(std::move(grounds), stored).findings;
    }
    std::vector<Finding> withKey(std::vector<KnownHead> heads = {}) const {
        return found(history().grounds(std::move(heads)), m_stored);
    }
    std::vector<Finding> withoutKey() const { return found(history().keyless(), m_stored); }
    static std::shared_ptr<ledger::Codec> codec() { return history().grounds().codec; }
    Entry entryAt(std::uint64_t seq) const {
        return *ledger::readEntry(m_stored.at(seq).second, *codec());
    }
    std::uint64_t firstOf(const std::string& type) const {
        for (const auto& [seq, bytes] : m_stored)
            if (entryAt(seq).body.type == type) return seq;
        ADD_FAILURE() << type;
        return 0;
    }
    /// As somebody with the keys would put another entry in its place.
    void put(Entry entry) {
        const auto seq = entry.seq;
        m_stored.at(seq).second = *ledger::entryBytes(entry, *codec());
    }
    void signAgain(Entry& entry, const seal::Identity& by) const {
        entry.body.sigs = nlohmann::json::array();
        ASSERT_TRUE(seal::addSignature(entry.body, by, seal::SignedFor::of(entry),
                                       seal::Purpose::EventWitness)
                        .ok());
    }
};

namespace {

using One = std::vector<Finding>;

TEST_F(Verifying, AWholeRecordIsIntactWithAKeyAndAsFarAsCanBeSeenWithout) {
    const auto head = KnownHead::of(history().ledger().head());
    const Report all = verified(history().grounds({head}), m_stored);
    EXPECT_EQ(all.findings, One());
    EXPECT_FALSE(all.isWrong());
    EXPECT_TRUE(all.isComplete());
    EXPECT_EQ(all.opened, m_stored.size());
    EXPECT_EQ(all.head, history().ledger().head());
    // 3 people came in by two entries each; 2 sign-offs and 2 addenda.
    EXPECT_EQ(all.signatures, 10U);
    const Report seen = verified(history().keyless({head}), m_stored);
    EXPECT_EQ(seen.findings, One());
    EXPECT_FALSE(seen.isComplete());
    EXPECT_EQ(seen.closed, m_stored.size());
    EXPECT_EQ(seen.signatures, 0U);
}

TEST_F(Verifying, AMissingEntryIsAGap) {
    m_stored.erase(m_stored.begin() + 5, m_stored.begin() + 7);
    EXPECT_EQ(withoutKey(), (One{{Kind::Gap, 5, 6}}));
    EXPECT_EQ(withKey(), (One{{Kind::Gap, 5, 6}}));
}

TEST_F(Verifying, BytesThatAreNoEntryAreNamedWithoutAKey) {
    m_stored[4].second = "{}";
    EXPECT_EQ(withoutKey(), (One{at(Kind::Unreadable, 4)}));
    m_stored[4].second = " " + support::storedIn(history().ledger())[4].second;
    EXPECT_EQ(withoutKey(), (One{at(Kind::Unreadable, 4)})) << "not its own canonical form";
}

TEST_F(Verifying, AnEntryOfAnotherPlaceOrLedgerIsNamedWithoutAKey) {
    std::swap(m_stored[4].second, m_stored[5].second);
    EXPECT_EQ(withoutKey(),
              (One{at(Kind::OtherPlace, 4), at(Kind::OtherPlace, 5), at(Kind::TickBack, 5)}));
    SealedHistory other;
    m_stored = support::storedIn(history().ledger());
    m_stored[4].second = other.ledger().stored()[4];
    EXPECT_EQ(withoutKey(), (One{at(Kind::OtherPlace, 4), at(Kind::KeyGone, 4)}))
        << "and nobody here was ever given its key";
}

TEST_F(Verifying, AnOpenEntryInASealedRecordIsNamedWithoutAKey) {
    Entry entry = entryAt(6);
    m_stored[6].second = *ledger::entryBytes(entry, *ledger::plainCodec());
    EXPECT_EQ(withoutKey(), (One{at(Kind::NotSealed, 6)}));
    EXPECT_EQ(withKey(), (One{at(Kind::NotSealed, 6)}));
}

TEST_F(Verifying, ABodyThatDoesNotOpenIsNamedWithAKeyAlone) {
    auto envelope = *ledger::readEnvelope(m_stored[9].second);
    envelope.closed.body[40] ^= 1;
    m_stored[9].second = *ledger::envelopeBytes(envelope);
    EXPECT_EQ(withKey(), (One{at(Kind::Changed, 9)}));
    EXPECT_EQ(withoutKey(), One());
}

TEST_F(Verifying, AnIdThatComesTwiceIsNamed) {
    const auto note = firstOf("noted");
    Entry twin = entryAt(note + 3);
    twin.body.id = entryAt(note).body.id;
    put(twin);
    EXPECT_EQ(withKey(), (One{at(Kind::Doubled, note + 3)}));
}

TEST_F(Verifying, ABasisBehindItsOwnEntryIsNamed) {
    const auto tam = history().ringOf(SealedHistory::tam);
    Entry entry = entryAt(firstOf("signed-off"));
    entry.body.basis[history().ledger().id()] = entry.seq;
    signAgain(entry, *tam->identity());
    put(entry);
    EXPECT_EQ(withKey(), One()) << "all that came before it";
    entry.body.basis[history().ledger().id()] = entry.seq + 1;
    signAgain(entry, *tam->identity());
    put(entry);
    EXPECT_EQ(withKey(), (One{at(Kind::Basis, entry.seq)}));
}

TEST_F(Verifying, ASignOffWithoutItsAuthorsSignatureIsNamed) {
    const auto seq = firstOf("signed-off");
    Entry entry = entryAt(seq);
    entry.body.data["statement"] = "seen by somebody";
    put(entry);
    EXPECT_EQ(withKey(), (One{at(Kind::BadSignature, seq)})) << "other words under the signature";
    entry.body.sigs = nlohmann::json::array();
    put(entry);
    EXPECT_EQ(withKey(), (One{at(Kind::NoSignature, seq)}));
    signAgain(entry, seal::Identity::generate());
    put(entry);
    EXPECT_EQ(withKey(), (One{at(Kind::UnknownKey, seq)})) << "a key nobody was given";
    signAgain(entry, *history().ringOf(SealedHistory::iris)->identity());
    put(entry);
    EXPECT_EQ(withKey(), (One{at(Kind::UnknownKey, seq)})) << "a colleague's key";
    signAgain(entry, *history().ringOf(SealedHistory::tam)->identity());
    put(entry);
    EXPECT_EQ(withKey(), One()) << "whoever has their passphrase can say it again: see the heads";
    EXPECT_EQ(withKey({KnownHead::of(history().ledger().head())}),
              (One{{Kind::Rewritten, 0, m_stored.size() - 1}}));
}

TEST_F(Verifying, WhoLetsPeopleInWithoutBeingAnEducatorIsNamed) {
    const auto seq = firstOf("access-changed") + 4;  // of the auditor
    Entry entry = entryAt(seq);
    ASSERT_EQ(entry.body.type, "access-changed");
    signAgain(entry, *history().ringOf(SealedHistory::tam)->identity());
    put(entry);
    const auto findings = withKey();
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(findings.front(), at(Kind::KeysChanged, seq));
}

TEST_F(Verifying, AnOldSignatureHoldsAfterANewKeyAndTheOldKeySignsNoMore) {
    SealedHistory ward;
    const auto before = ward.ringOf(SealedHistory::tam);
    ward.signIn(SealedHistory::iris);
    const auto tam = ward.gate().house().staff.at(1).said.staff;
    ASSERT_TRUE(ward.gate().reset(tam, seal::Secret::copyOf("lanterns under the ford")).now().ok());
    ward.note(SealedHistory::iris, 0, "later");
    Stored stored = support::storedIn(ward.ledger());
    EXPECT_EQ(found(ward.grounds(), stored), One()) << "by the key of then";
    Entry entry = *ledger::readEntry(stored.back().second, *ward.grounds().codec);
    entry.body.by = tam;
    entry.body.role = "teacher";
    ASSERT_TRUE(seal::addSignature(entry.body, *before->identity(), seal::SignedFor::of(entry),
                                   seal::Purpose::Author)
                    .ok());
    stored.back().second = *ledger::entryBytes(entry, *ward.grounds().codec);
    EXPECT_EQ(found(ward.grounds(), stored), (One{at(Kind::UnknownKey, entry.seq)}));
}

TEST_F(Verifying, AKeyThatIsGoneIsTold) {
    SealedHistory ward;
    ledger::MemoryKeyShelf empty;
    Grounds without = ward.keyless();
    without.shelf = &empty;
    const auto findings = found(without, support::storedIn(ward.ledger()));
    ASSERT_FALSE(findings.empty());
    for (const Finding& one : findings) EXPECT_EQ(one.kind, Kind::KeyGone);
}

TEST_F(Verifying, WithAKeyNothingIsPassedOverThatStaysClosed) {
    SealedHistory ward;
    auto& shelf = ward.ledger().keyShelf();
    auto row = shelf.ofSubject(ward.patient(1)).value().value();
    auto text = nlohmann::json::parse(row.text);
    text["epoch"] = seal::EpochId::random().text();
    row.text = *ledger::jcs(text);
    ASSERT_TRUE(shelf.put(row).ok());
    const Stored stored = support::storedIn(ward.ledger());
    One closed;
    for (const auto& [seq, bytes] : stored)
        if (ledger::readEnvelope(bytes)->subject == ward.patient(1))
            closed.push_back(at(Kind::KeyGone, seq));
    EXPECT_EQ(closed.size(), 6U);
    EXPECT_EQ(found(ward.grounds(), stored), closed) << "wrapped under a key nobody was given";
}

TEST_F(Verifying, WhoWasGivenLessThanAllIsTold) {
    SealedHistory ward;
    ward.signIn(SealedHistory::iris);
    ASSERT_TRUE(ward.gate().retire(ward.gate().house().staff.at(1).said.staff).ok());
    ward.note(SealedHistory::iris, 0, "later");
    Grounds grounds = ward.grounds();
    const std::string first = ledger::readEnvelope(ward.ledger().stored()[0])->closed.key;
    seal::KeyRows rows = ward.rows();
    const std::string iris = seal::thumbprint(
        seal::Curve::X25519, ward.ringOf(SealedHistory::iris)->identity()->known().boxing);
    std::erase_if(rows.grants, [&](const seal::EpochGrant& grant) {
        return grant.to == iris && grant.epoch.text() == first;
    });
    const auto handle = seal::nameHandle(SealedHistory::iris.name, rows.names);
    grounds.ring = std::make_shared<seal::Keyring>(
        *seal::Keyring::signIn(rows, *handle, SealedHistory::phrase(SealedHistory::iris)));
    grounds.codec = std::make_shared<seal::SealingCodec>(grounds.ring, ward.ledger().keyShelf());
    const Stored stored = support::storedIn(ward.ledger());
    const auto findings = found(std::move(grounds), stored);
    for (const auto& [seq, bytes] : stored) {
        if (ledger::readEnvelope(bytes)->closed.key != first) continue;
        EXPECT_NE(std::find(findings.begin(), findings.end(), at(Kind::KeyGone, seq)),
                  findings.end())
            << seq;
    }
}

TEST_F(Verifying, ASealedRecordNobodyCanComeIntoIsToldWithoutAKey) {
    Grounds grounds = history().keyless();
    grounds.rows.reset();
    EXPECT_EQ(found(std::move(grounds), m_stored), (One{at(Kind::KeysChanged, 0)}));
}

// Nobody needs a key to write a record that lies open; patients' records never do.
TEST_F(Verifying, AnOpenRecordInThePlaceOfAPatientsIsTold) {
    ledger::MemoryLedger plain;
    auto draft =
        record::draftOf(record::SetUnit{.name = "Unit 4"}, {}, "system", history().clock().now());
    ASSERT_TRUE(plain.append({draft}, history().clock().now(), {}).ok());
    Grounds grounds{.lineage = ledger::Lineage(plain.id()), .isOfPatients = true};
    EXPECT_EQ(found(grounds, support::storedIn(plain)), (One{at(Kind::NotSealed, 0)}));
    EXPECT_EQ(found(grounds, {}), One()) << "one that nobody founded yet";
}

TEST_F(Verifying, KeysWithoutTheEntriesThatTellOfThemAreToldWithoutAKey) {
    EXPECT_EQ(found(history().keyless(), {}), (One{at(Kind::KeysChanged, 0)}));
}

TEST_F(Verifying, APlainRecordIsWholeWithoutAnyKey) {
    ledger::MemoryLedger plain;
    for (int i = 0; i < 3; ++i) {
        auto draft = record::draftOf(record::SetUnit{.name = std::to_string(i)}, {}, "system",
                                     history().clock().now());
        ASSERT_TRUE(plain.append({draft}, history().clock().now(), {}).ok());
    }
    const Report report =
        verified({.lineage = ledger::Lineage(plain.id())}, support::storedIn(plain));
    EXPECT_EQ(report.findings, One());
    EXPECT_TRUE(report.isComplete());
}

}  // namespace
}  // namespace proof
