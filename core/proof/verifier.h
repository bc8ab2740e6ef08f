// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <memory_resource>
#include <set>
#include <unordered_set>

#include "gate/follower.h"
#include "ledger/tail.h"
#include "proof/knownhead.h"
#include "proof/looker.h"

namespace proof {

/// What a record is verified by.
struct Grounds {
    ledger::Lineage lineage;
    std::shared_ptr<ledger::Codec> codec = ledger::plainCodec();  ///< plain: without a key
    /// The keys of that codec, to be held against what the record tells of; null: not looked at.
    std::shared_ptr<const seal::Keyring> ring = nullptr;
    /// What lies open beside the entries for people to sign in by; none: nobody ever did, and
    /// nothing is signed.
    std::optional<seal::KeyRows> rows = {};
    /// The patients' keys; null where there are none. Outlives the verifier.
    const ledger::KeyShelf* shelf = nullptr;
    std::vector<KnownHead> heads = {};
    bool isOfPatients = false;  ///< real people's: none of its entries lies open
};

/// Looks at the entries of a record one after the other. With a codec that seals it opens the
/// bodies, holds signatures against the keys that their authors had at that moment, and follows who
/// could open the record.
class Verifier {
  public:
    explicit Verifier(Grounds grounds);

    /// The next stored entry; `seq` rises.
    void look(std::uint64_t seq, std::string_view bytes) { take(m_looker.look(seq, bytes)); }
    /// The same of what was looked at already, by looker() or another one. Whether it is an entry
    /// that could be read, as far as there is a key.
    bool take(const Seen& seen);
    const Looker& looker() const { return m_looker; }
    /// One that may look on another thread, with the patients' keys of `shelf`, which outlives it;
    /// nothing where there is none.
    std::optional<Looker> lookerWith(ledger::KeyShelf& shelf) const;
    const ledger::Tail& tail() const { return m_tail; }
    /// What blobs the entries name, and which entry does so first.
    const std::map<std::string, std::uint64_t>& namedBlobs() const { return m_blobs; }
    void find(const Finding& finding) { m_report.findings.push_back(finding); }
    void countBlob() { ++m_report.blobs; }

    /// After the last entry; findings come in the order of entries.
    Report finish();

  private:
    void findAt(Kind kind) { find(at(kind, m_seq)); }
    void takePlace(const Seen& seen);
    bool isInPlace(const ledger::Envelope& envelope);
    bool isGranted(const std::string& epoch) const;
    void takeClosed(const ledger::Envelope& entry);
    const ledger::KeyRow* rowOf(const std::string& key);
    void takeOpen(const Seen& seen);
    void noteReadable(const base::PatientId& patient);
    void takeBasis(const Seen& seen);
    void takeSigned(const Seen& seen);
    bool isSpoken(const ledger::Body& body) const;
    bool isInRole(const ledger::Body& body) const;
    bool isMissing(const Seen& seen);
    bool takeSignatures(const Seen& seen);
    void follow(const ledger::Entry& entry, const record::Payload& said);
    bool isByTheTwo(const ledger::Body& body, const record::ErasePatient& said) const;
    void finishErased();

    Grounds m_grounds;
    std::shared_ptr<const Looker::Keys> m_keys;  ///< null where nothing is signed
    Looker m_looker;
    std::optional<gate::Follower> m_staff;  ///< none where nothing is signed
    std::optional<ledger::KeyRow> m_row;    ///< that was looked at last
    ledger::Tail m_tail;
    Roots m_roots;
    std::uint64_t m_seq = 0, m_next = 0;
    bool m_isSealed = false;  ///< some entry was
    std::string m_before;     ///< the root before the entry of now, where that entry names one
    bool m_arePapersSigned = false, m_areRootsNamed = false;  ///< from some entry on
    std::pmr::monotonic_buffer_resource m_memory;             ///< for what only grows
    std::pmr::unordered_set<std::pmr::string> m_ids{&m_memory};
    std::map<std::string, std::uint64_t> m_blobs;
    /// Entries of patients whose key was destroyed.
    std::map<base::PatientId, std::vector<std::uint64_t>> m_erased;
    /// Entries of one patient that could be read, one behind the other.
    struct Readable {
        base::PatientId patient;
        std::uint64_t from = 0, to = 0;
    };
    std::vector<Readable> m_readable;
    /// Who was erased by whom it takes.
    std::set<base::PatientId> m_erasures;
    Report m_report;
};

}  // namespace proof
