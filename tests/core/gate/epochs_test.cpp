// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What keys that count no more still open: what was written before, and nothing after, also of a
// patient who was there before.
#include "gatedward.h"
#include "ledger/jcs.h"
#include "record/card.h"
#include "seal/guarding.h"
#include "seal/sealingcodec.h"
#include "support/ledgerdrafts.h"

namespace gate {
namespace {

using base::Code;
using Ring = std::shared_ptr<const seal::Keyring>;

class LeftBehind : public GatedWard {
  protected:
    base::PatientId m_patient = base::PatientId::random();

    void use(const Ring& ring) {
        m_ledger.use(std::make_shared<seal::SealingCodec>(ring, m_ledger.keyShelf()));
    }
    /// One more entry of the patient; its place.
    std::uint64_t written(const std::string& word) {
        const auto size = m_ledger.head().size;
        EXPECT_TRUE(m_ledger
                        .append({support::draftSaying(word, m_patient)}, m_clock.now(),
                                {.foldVersion = record::foldVersion})
                        .ok());
        return size;
    }
    bool opens(const Ring& ring, std::uint64_t place) {
        use(ring);
        const bool isOpen = entries().at(place).isOpen;
        use(m_gate->keyring());
        return isOpen;
    }
    /// Keys as they can be had from a copy of the rows of now.
    Ring copyOfTams() {
        const auto rows = seal::readKeyRows(*m_ledger.access());
        const auto handle = seal::nameHandle("Tam Oduya", (*rows)->names);
        return std::make_shared<seal::Keyring>(
            *seal::Keyring::signIn(**rows, *handle, phrase(m_tams)));
    }
    Ring copyBySheet() {
        const auto rows = seal::readKeyRows(*m_ledger.access());
        const auto sheet = seal::Recovery::fromLetters(phrase(m_sheet));
        return std::make_shared<seal::Keyring>(*seal::Keyring::unlockWithRecovery(**rows, *sheet));
    }
};

TEST_F(LeftBehind, TheRetiredReadNothingThatIsWrittenAfterwardsOfAnybody) {
    const auto before = written("before");
    const Ring kept = copyOfTams();
    ASSERT_TRUE(m_gate->retire(idOf("Tam Oduya")).ok());
    const auto after = written("after");
    EXPECT_TRUE(opens(kept, before)) << "what they could read they may have kept";
    EXPECT_FALSE(opens(kept, after));
    EXPECT_TRUE(opens(m_gate->keyring(), before));
    EXPECT_TRUE(opens(m_gate->keyring(), after));
    const auto again = written("again");
    EXPECT_EQ(entries().at(after).key, entries().at(again).key) << "one key an epoch";
    EXPECT_TRUE(opens(copyBySheet(), after));
}

TEST_F(LeftBehind, KeysFromBeforeAResetReadNothingThatIsWrittenAfterwards) {
    const auto before = written("before");
    const Ring kept = copyOfTams();
    ASSERT_TRUE(m_gate->reset(idOf("Tam Oduya"), phrase(m_fresh)).now().ok());
    const auto after = written("after");
    EXPECT_TRUE(opens(kept, before));
    EXPECT_FALSE(opens(kept, after));
    ASSERT_TRUE(signIn("Tam Oduya", m_fresh).ok());
    EXPECT_TRUE(opens(m_gate->keyring(), before)) << "Tam reads all with the new ones";
    EXPECT_TRUE(opens(m_gate->keyring(), after));
    EXPECT_TRUE(asIris().ok());
}

TEST_F(LeftBehind, AFormerSheetWithAnOldCopyReadsNothingThatIsWrittenAfterwards) {
    const auto before = written("before");
    const Ring kept = copyBySheet();
    const auto fresh = m_gate->replaceRecovery();
    ASSERT_TRUE(fresh.ok());
    const auto after = written("after");
    EXPECT_TRUE(opens(kept, before));
    EXPECT_FALSE(opens(kept, after));
    m_sheet = fresh->view();
    EXPECT_TRUE(opens(copyBySheet(), before));
    EXPECT_TRUE(opens(copyBySheet(), after));
    EXPECT_TRUE(asTam().ok());
    EXPECT_TRUE(opens(m_gate->keyring(), after));
}

// Whoever has the key of a former epoch can wrap a key of their own under it and put the row in.
TEST_F(LeftBehind, NothingIsSealedUnderAKeyThatAFormerEpochOpens) {
    written("before");
    const Ring kept = copyOfTams();
    ASSERT_TRUE(m_gate->retire(idOf("Tam Oduya")).ok());
    for (const base::PatientId& patient : {m_patient, base::PatientId::random()}) {
        const auto own = seal::PatientKey::generate(patient);
        const auto row = seal::wrapPatientKey(own, kept->current(), m_ledger.id());
        const std::string text = *ledger::jcs(row.json());
        ASSERT_TRUE(m_ledger.keyShelf().put({own.id.text(), patient, text}).ok());
        m_patient = patient;
        const auto after = written("after");
        EXPECT_NE(entries().at(after).key, own.id.text());
        EXPECT_FALSE(opens(kept, after));
    }
}

// What a guess costs may rise with a later program: records of before open by what was enough then.
TEST(RealCost, ADearerDefaultOpensARecordOfBeforeAndRaisesIt) {
    base::ManualClock clock{{.wallMs = 1'700'000'000'000, .bootId = "boot", .zone = "UTC"}};
    ledger::MemoryLedger ledger;
    const std::string passphrase = "nine slow herons wade";
    {
        const auto gate = Gate::open(ledger, clock, {seal::leastForReal, false});
        ASSERT_TRUE(gate.ok());
        ASSERT_TRUE((*gate)->found({"Iris Mora", "IM"}, phrase(passphrase)).now().ok());
    }
    const seal::Cost dearer{seal::leastForReal.memKiB, seal::leastForReal.passes + 1};
    auto gate = Gate::open(ledger, clock, {dearer, false});
    ASSERT_TRUE(gate.ok()) << "nobody is kept out";
    ASSERT_TRUE((*gate)->signIn("Iris Mora", phrase(passphrase)).now().ok());
    const auto rows = seal::readKeyRows(*ledger.access());
    EXPECT_FALSE(seal::isBelow((*rows)->people.front(), dearer));
}

}  // namespace
}  // namespace gate
