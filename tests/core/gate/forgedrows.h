// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gatedward.h"
#include "record/draft.h"
#include "seal/sealingcodec.h"
#include "seal/signature.h"

namespace gate {

/// The ward of Iris and Tam, and somebody who writes to its disk.
class ForgedRows : public GatedWard {
  protected:
    /// A person of their own, known to nobody, with an epoch of their own.
    seal::Identity m_eve = seal::Identity::generate();
    seal::EpochKey m_epoch = seal::EpochKey::generate(99);
    std::shared_ptr<const seal::Keyring> m_ring;  ///< some key, so that the ledger takes it

    void SetUp() override {
        GatedWard::SetUp();
        m_ring = m_gate->keyring();
    }

    seal::KeyRows rows() const { return **seal::readKeyRows(*m_ledger.access()); }
    seal::EpochGrant grantTo(const std::string& boxing) const {
        return seal::grantEpoch(m_epoch, m_ledger.id(), boxing, m_eve);
    }
    seal::WrappedIdentity rowOfEve(const std::string& handle, const base::StaffId& person) const {
        return *seal::wrap(m_eve, {m_ledger.id(), person, handle}, phrase(m_fresh),
                           seal::Cost::least());
    }
    void onDisk(const seal::KeyRows& changed) {
        const ledger::Derived derived{.foldVersion = 2,
                                      .access = seal::changedRows(rows(), changed)};
        m_ledger.use(std::make_shared<seal::SealingCodec>(m_ring, m_ledger.keyShelf()));
        ASSERT_TRUE(m_ledger.append({}, m_clock.now(), derived).ok());
        m_gate->signOut();
        m_gate = opened();
    }
    /// Rows with Eve among them, and her epoch given to everybody.
    seal::KeyRows withEve() const {
        seal::KeyRows changed = rows();
        for (const seal::WrappedIdentity& one : rows().people)
            changed.grants.push_back(grantTo(one.known.boxing));
        changed.people.push_back(rowOfEve(std::string(16, 'e'), base::StaffId::random()));
        changed.grants.push_back(grantTo(m_eve.known().boxing));
        return changed;
    }
    void append(const record::Payload& payload, const seal::Identity& by,
                const base::StaffId& speaker) {
        auto draft = record::draftOf(payload, speaker, "educator", m_clock.now());
        ASSERT_TRUE(seal::addSignature(draft.body, by, m_ledger.id(), seal::Purpose::Author).ok());
        ASSERT_TRUE(m_ledger.append({draft}, m_clock.now(), {.foldVersion = 2}).ok());
    }
    static base::Error changed(const char* what) { return {base::Code::AccessChanged, {what}}; }
};

}  // namespace gate
