// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include "gate/gate.h"
#include "ledger/memoryledger.h"
#include "proof/verifier.h"
#include "record/draft.h"
#include "record/purpose.h"
#include "seal/sealingcodec.h"

namespace support {

/// Who they are and by what they sign in.
struct SealedPeople {
    struct Person {
        const char *name, *initials, *phrase;
        record::Role role;
    };
    static constexpr Person iris{"Iris Mora", "IM", "nine slow herons wade",
                                 record::Role::Educator};
    static constexpr Person tam{"Tam Oduya", "TO", "a cellar full of quinces",
                                record::Role::Teacher};
    static constexpr Person ada{"Ada Lindqvist", "AL", "copper kettles in a row",
                                record::Role::Auditor};

    static seal::Secret phrase(const Person& person) { return seal::Secret::copyOf(person.phrase); }
};

/// A sealed record of invented people that has what verify looks at: an educator, a teacher and an
/// auditor, two patients with a learner each, notes, signed sign-offs and addenda.
template <class Ledger>
class SealedHistoryIn : public SealedPeople {
  public:
    explicit SealedHistoryIn(std::unique_ptr<Ledger> ledger = std::make_unique<Ledger>())
        : m_owned(std::move(ledger)) {
        auto gate = gate::Gate::open(m_ledger, m_clock, {seal::Cost::least(), true});
        EXPECT_TRUE(gate.ok());
        m_gate = std::move(*gate);
        EXPECT_TRUE(m_gate->found({iris.name, iris.initials}, phrase(iris)).now().ok());
        for (const Person& one : {tam, ada})
            EXPECT_TRUE(m_gate->admit({one.name, one.initials, one.role}, phrase(one)).now().ok());
        say(iris, record::SetUnit{.name = "Unit 4"});
        for (int who = 0; who < 2; ++who) beginPatient(who);
        for (int who = 0; who < 2; ++who) teach(who);
    }

    Ledger& ledger() { return m_ledger; }
    gate::Gate& gate() { return *m_gate; }
    const base::Clock& clock() const { return m_clock; }
    const base::PatientId& patient(int who) const { return m_patients.at(who); }
    seal::KeyRows rows() const { return **seal::readKeyRows(*m_ledger.access()); }
    std::shared_ptr<seal::Keyring> ringOf(const Person& person) const {
        const auto handle = seal::nameHandle(person.name, rows().names);
        return std::make_shared<seal::Keyring>(
            *seal::Keyring::signIn(rows(), *handle, phrase(person)));
    }
    void signIn(const Person& person) {
        m_gate->signOut();
        EXPECT_TRUE(m_gate->signIn(person.name, phrase(person)).now().ok());
    }
    /// What somebody with a key verifies by.
    proof::Grounds grounds(std::vector<proof::KnownHead> heads = {}) {
        const auto ring = ringOf(iris);
        return {ledger::Lineage(m_ledger.id(), m_ledger.former()),
                std::make_shared<seal::SealingCodec>(ring, m_ledger.keyShelf()),
                ring,
                rows(),
                &m_ledger.keyShelf(),
                std::move(heads)};
    }
    /// What somebody without one does.
    proof::Grounds keyless(std::vector<proof::KnownHead> heads = {}) {
        auto made = grounds(std::move(heads));
        made.codec = ledger::plainCodec();
        made.ring = nullptr;
        return made;
    }
    void say(const Person& person, const record::Payload& payload,
             std::optional<base::PatientId> subject = std::nullopt) {
        if (!m_gate->person() || m_gate->person()->said.name != person.name) signIn(person);
        m_clock.advanceMs(60'000);
        auto draft = record::draftOf(payload, m_gate->person()->said.staff,
                                     base::nameOf(person.role), m_clock.now());
        draft.subject = std::move(subject);
        if (const auto* signedOff = std::get_if<record::SignOff>(&payload)) {
            draft.body.basis[m_ledger.id()] = m_ledger.head().size;
            if (signedOff->root.empty()) draft.body.tv = 1;  // as an earlier program wrote it
        }
        if (const auto purpose = record::purposeOf(payload)) {
            EXPECT_TRUE(seal::addSignature(draft.body, *m_gate->identity(),
                                           {m_ledger.id(), draft.subject}, *purpose)
                            .ok());
        }
        const auto written = m_ledger.append({draft}, m_clock.now(), {.foldVersion = 2});
        ASSERT_TRUE(written.ok()) << base::english(written.error());
        m_lastId = written->front().body.id;
    }
    void note(const Person& person, int who, const std::string& text) {
        say(person, practice::WriteNote{.step = {}, .text = text}, patient(who));
    }

  private:
    void beginPatient(int who) {
        m_patients.push_back(base::PatientId::random());
        m_learners.push_back(base::LearnerId::random());
        say(tam,
            record::AddPatient{.name = who == 0 ? "Teodor Okonjo" : "Runa Feld",
                               .born = "1961-05-03",
                               .number = "N-104" + std::to_string(who),
                               .language = "en"},
            patient(who));
        say(tam,
            record::AddLearner{.learner = m_learners.back(),
                               .name = who == 0 ? "Amara Okonjo" : "Lasse Feld",
                               .relationship = "wife",
                               .language = "en"},
            patient(who));
    }
    void teach(int who) {
        note(tam, who, "the left hand first");
        say(tam,
            record::SignOff{.learner = m_learners.at(who),
                            .pack = {},
                            .competencies = {"hands"},
                            .statement = "seen by me",
                            .acknowledgement = {}},
            patient(who));
        say(iris, record::AddAddendum{.to = m_lastId, .text = "asked again"}, patient(who));
        note(iris, who, "calm");
    }

    base::ManualClock m_clock{{.wallMs = 1'700'000'000'000, .bootId = "boot", .zone = "UTC"}};
    std::unique_ptr<Ledger> m_owned;
    Ledger& m_ledger = *m_owned;
    std::unique_ptr<gate::Gate> m_gate;
    std::vector<base::PatientId> m_patients;
    std::vector<base::LearnerId> m_learners;
    base::CommandId m_lastId;
};

using SealedHistory = SealedHistoryIn<ledger::MemoryLedger>;

/// The entries as they are stored, each with the place it is stored at.
using Stored = std::vector<std::pair<std::uint64_t, std::string>>;
inline Stored storedIn(const ledger::MemoryLedger& ledger) {
    Stored stored;
    for (const std::string& bytes : ledger.stored()) stored.emplace_back(stored.size(), bytes);
    return stored;
}

inline proof::Report verified(proof::Grounds grounds, const Stored& stored) {
    proof::Verifier verifier(std::move(grounds));
    for (const auto& [seq, bytes] : stored) verifier.look(seq, bytes);
    return verifier.finish();
}

}  // namespace support
