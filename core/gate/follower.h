// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <set>

#include "ledger/lineage.h"
#include "record/housepayloads.h"
#include "record/usepayloads.h"
#include "seal/keyring.h"

namespace gate {

/// Goes through the entries about staff and keys from the first on, and knows who could sign at
/// each. See trust().
class Follower {
  public:
    /// `rows` has the public keys; both outlive it.
    Follower(const ledger::Lineage& lineage, const seal::KeyRows& rows)
        : m_lineage(lineage), m_rows(rows) {}

    /// The next of the house's own entries. One that may not be is left out. Errors:
    /// AccessChanged, naming what; SealBadSignature.
    base::Outcome take(const ledger::Entry& entry);
    /// Whether the epochs of this ring are all that were told of. Errors: AccessChanged.
    base::Outcome knows(const seal::Keyring& ring) const;
    /// Whether every public key of the rows that an epoch is given to or was given by was told of.
    /// And whether everybody, and the sheet, is given every epoch. Only after all entries: a
    /// missing one may be the one that tells. Errors: AccessChanged.
    base::Outcome knowsRows() const;
    /// Whether everybody on the list was let in and every former id was told of.
    bool isSettled() const { return !m_isWaiting && m_continued == m_lineage.former().size(); }

    /// What this person signs by now; "" for nobody and for who can't sign.
    std::string kidOf(const base::StaffId& person) const;
    /// Whether somebody signs by this now.
    bool isOfNow(const std::string& kid) const;
    /// Their role; nothing for nobody.
    std::optional<record::Role> roleOf(const base::StaffId& person) const;

  private:
    base::Result<std::string> signerOf(const ledger::Entry& entry) const;
    bool holdsSheet(const ledger::Entry& entry) const;
    bool speaks(const ledger::Entry& entry, const std::string& kid,
                const record::AddStaff* adds) const;
    bool isEducator(const std::string& kid) const;
    base::Outcome take(const record::ContinueLedger& said, std::uint64_t seq);
    base::Outcome take(const record::AddStaff& said, const std::string& kid);
    base::Outcome take(const record::ChangeAccess& said, const std::string& kid,
                       const std::string& epoch);
    bool maySay(const record::ChangeAccess& said, const std::string& kid) const;
    bool takeEpoch(const record::ChangeAccess& said, const std::string& sealedUnder);
    bool fitsKeys(const record::ChangeAccess& said) const;
    static bool fitsRole(const record::ChangeAccess& said);
    void takeKeys(const record::ChangeAccess& said);
    bool areThePeople() const;
    bool isGivenAll(const std::string& boxing) const;
    bool isKnown(const std::string& boxing, const std::string& told) const;

    struct Known {
        std::string kid = {};  ///< "" while they can't sign
        record::Role role = record::Role::Teacher;
        std::string box = {};  ///< what they are given epochs by, in base 64; "": nobody said
    };
    const ledger::Lineage& m_lineage;
    std::size_t m_continued = 0;  ///< former ids that were told of
    const seal::KeyRows& m_rows;
    std::map<base::StaffId, Known> m_people;
    /// Number and digest of the epochs that were told of, by id. They are counted: a number in a
    /// row that was put there would go on into every later one.
    std::map<std::string, std::pair<std::int64_t, std::string>> m_epochs;
    std::set<std::string> m_kids;  ///< everybody's, of now or from before
    std::string m_recovery;        ///< what the sheet of now signs with
    std::string m_recoveryBox;     ///< what it is given epochs by, in base 64; "": nobody said
    /// Somebody was put onto the list by a key nobody has yet: the next entry has to let them in.
    bool m_isWaiting = false;
    std::pair<base::StaffId, std::string> m_waiting;
};

}  // namespace gate
