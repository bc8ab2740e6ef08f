// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <random>

#include "support/sealedhistory.h"

namespace support {

/// The ways in which somebody could change a record. The first group takes a hand on the disk, the
/// second the keys of a member of staff and a program of their own.
enum class Forgery {
    Flip,             ///< one bit of an entry
    Drop,             ///< an entry is gone, and its place with it
    Gap,              ///< an entry is gone, its place is left empty
    Swap,             ///< two entries change places
    Truncate,         ///< the last entries are gone
    Duplicate,        ///< an entry is there a second time
    OtherPlace,       ///< what an entry holds is put into another one of the same patient
    OtherLearner,     ///< an entry is said to be of the other patient
    OtherLedger,      ///< an entry of another record
    OtherLedgerHere,  ///< the same, said to be of this one
    OldCopy,          ///< an older copy is put back, and goes on from there
    Unsigned,         ///< other words, sealed anew, without a signature
    OldSignature,     ///< other words, sealed anew, under the signature of before
    AnotherKey,       ///< other words, sealed anew and signed by a key that nobody was given
    Colleague,        ///< other words, sealed anew and signed by somebody else of the staff
    Oneself,          ///< other words, sealed anew and signed by their author
    MovedLearner,     ///< an entry sealed anew for the other patient, its signature kept
    Twin,             ///< an entry sealed anew at a later place, its id and signature kept
};
inline constexpr int forgeries = static_cast<int>(Forgery::Twin) + 1;

/// What somebody made of a record, and how verify has to name it without any known head: one of
/// these kinds at this place. No kind: only a known head can tell.
struct Forged {
    Stored stored = {};
    std::vector<proof::Kind> named = {};
    std::uint64_t place = 0;
};

/// Forges by a seed. Never changes the history it is given.
class Forger {
  public:
    Forger(SealedHistory& of, SealedHistory& other, unsigned seed);

    Forged forge(Forgery how);
    const char* nameOf(Forgery how) const;

  private:
    /// 0 to `size` - 1.
    std::uint64_t below(std::uint64_t size) { return m_random() % size; }
    std::uint64_t anyPlace() { return below(m_stored.size()); }
    /// One of those that are signed and no change of keys.
    std::uint64_t signedPlace() { return m_signed.at(below(m_signed.size())); }
    std::uint64_t patientsPlace() { return m_patients.at(below(m_patients.size())); }

    Forged flip();
    Forged drop(bool leavesGap);
    Forged swapped();
    Forged truncated();
    Forged duplicated();
    Forged otherPlace();
    Forged otherLearner();
    Forged otherLedger(bool saysThis);
    Forged oldCopy();
    Forged otherWords(Forgery how);
    Forged movedLearner();
    Forged twin();
    ledger::Entry read(std::uint64_t place) const;
    void write(Stored& stored, ledger::Entry entry) const;

    SealedHistory& m_of;
    Stored m_stored, m_other;
    std::shared_ptr<ledger::Codec> m_codec;
    std::shared_ptr<seal::Keyring> m_iris, m_tam;
    std::vector<std::uint64_t> m_signed, m_patients;
    std::mt19937_64 m_random;
};

}  // namespace support
