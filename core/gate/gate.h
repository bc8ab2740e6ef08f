// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <utility>

#include "base/clock.h"
#include "gate/keychange.h"
#include "gate/slow.h"
#include "gate/usenotes.h"
#include "gate/wrongpassphrases.h"
#include "ledger/ledger.h"
#include "record/record.h"

/// Who may open a sealed record, and the entries that tell of it.
namespace gate {

struct Terms {
    seal::Cost usual = {};      ///< what a new passphrase costs to guess
    bool takesCheaper = false;  ///< true for invented people alone
    bool notesUse = false;      ///< who signs in and out, and what note() is told, is written down
};

/// What two people erase together: an educator and an auditor.
struct Erasing {
    base::PatientId patient;
    std::string why;     ///< in words that name nobody of the record
    std::string second;  ///< the typed name of the one who is not signed in
};

/// The way into one ledger. While somebody is signed in the ledger seals and opens by their keys;
/// at all other times nothing of it can be read. Every change is an entry, signed by whoever made
/// it. Belongs to the ledger's thread but for the slow halves.
class Gate {
  public:
    /// Both outlive it. Errors: SealBadRow, AccessTooCheap, AccessChanged when entries are sealed
    /// and there are no keys, those of the ledger.
    static base::Result<std::unique_ptr<Gate>> open(ledger::Ledger& ledger,
                                                    const base::Clock& clock, Terms terms);
    ~Gate();

    /// Whether there is anybody who can sign in.
    bool isFounded() const { return m_rows.has_value(); }
    /// The id that the record was begun with; restored, it has others.
    base::LedgerId begunAs() const;
    base::Instant now() const { return m_clock.now(); }
    bool isSignedIn() const { return m_ring != nullptr; }
    /// Who is signed in.
    const record::Staff* person() const;
    /// The staff, as somebody who is signed in may see it.
    const record::House& house() const { return m_house; }
    /// Their keys; null while nobody is signed in.
    std::shared_ptr<const seal::Keyring> keyring() const { return m_ring; }
    /// What they sign with; null while nobody is signed in.
    const seal::Identity* identity() const { return m_ring ? m_ring->identity() : nullptr; }
    /// The public half of every key there is or was.
    std::optional<seal::PublicIdentity> publicKey(const std::string& kid) const;

    /// The first person, as an educator; gives the letters of the recovery sheet, which are kept
    /// nowhere. Errors: AccessFounded, those of founded().
    Slow<seal::Secret> found(const Newcomer& first, seal::Secret passphrase);
    /// Errors: AccessWait, SealWrongPassphrase (alike for a name that nobody has), AccessChanged,
    /// AccessRetired.
    Slow<base::Done> signIn(const std::string& name, seal::Secret passphrase);
    /// By the sheet. Errors: AccessWait, AccessChanged, those of recovered().
    Slow<base::Done> recover(seal::Secret letters, const Newcomer& person, seal::Secret passphrase);
    /// Whether it is the passphrase of the person who is signed in. Errors: AccessSignedOut,
    /// AccessWait, SealWrongPassphrase.
    Slow<base::Done> confirm(seal::Secret passphrase);
    /// Whether confirm() was answered since this was last asked: one passphrase for one signing
    /// act.
    bool takeConfirmation() { return std::exchange(m_isConfirmed, false); }
    /// One's own. Errors: AccessSignedOut, AccessWait, AccessWeak, SealWrongPassphrase.
    Slow<base::Done> changePassphrase(seal::Secret old, seal::Secret passphrase);
    /// Errors: AccessEducators, those of admitted().
    Slow<base::Done> admit(const Newcomer& person, seal::Secret passphrase);
    /// New keys for somebody who lost the passphrase. Errors: AccessEducators, AccessNotOneself,
    /// those of reset().
    Slow<base::Done> reset(const base::StaffId& person, seal::Secret passphrase);
    /// Destroys a patient's key, by an entry that both sign. `own` and `others` are the passphrases
    /// of the one who is signed in and of the second person. Errors: EraseTwo, EraseNames,
    /// EraseVisit, PatientErased, PatientUnknown, TextMissing, AccessSignedOut, AccessWait,
    /// SealWrongPassphrase.
    Slow<base::Done> erase(const Erasing& asked, seal::Secret own, seal::Secret others);
    /// Errors: AccessEducators, AccessNotOneself, AccessRetired.
    base::Outcome retire(const base::StaffId& person);
    /// Gives the letters of a new sheet. Errors: AccessEducators.
    base::Result<seal::Secret> replaceRecovery();
    /// Wipes every key.
    void signOut();

    /// Writes down what the person who is signed in looks at, prints or takes along. Errors:
    /// AccessSignedOut, those of the ledger; what could not be written goes out with the next.
    base::Outcome note(const record::NoteUse& said);

    /// Whether somebody who has no part in this patient's record has to say why they open it: once
    /// each time they sign in, where it is written down.
    bool wantsReason(const base::PatientId& patient) const {
        return isSignedIn() && m_terms.notesUse && !m_notes.has(record::Use::BreakGlass, patient);
    }

    /// Milliseconds until the next passphrase is looked at. Wrong ones are counted as long as the
    /// program runs: whoever has the disk tries them elsewhere, and only their cost slows that.
    std::int64_t waitMs() const { return m_wrong.waitMs(m_clock.now()); }

  private:
    Gate(ledger::Ledger& ledger, const base::Clock& clock, Terms terms)
        : m_ledger(ledger), m_clock(clock), m_terms(terms), m_notes(ledger, clock) {}

    template <class T, class Work, class Take>
    Slow<T> slow(Work work, Take take);
    template <class Work>
    Slow<base::Done> byEducator(Work work);
    base::Outcome mayChangeStaff() const;
    base::Outcome mayTry() const;
    base::Outcome mayConfirm() const;
    base::Outcome counted(const base::Outcome& outcome, const WrongPassphrases::Whose& whose);

    base::Outcome enter(KeyChange change);
    base::Outcome write(KeyChange change);
    base::Outcome append(const KeyChange& change, const seal::Identity& by);
    base::Outcome mayErase(const Erasing& asked, const base::StaffId& second) const;
    base::Outcome finishErasing(const Erasing& asked, const KeyChange& second);
    base::Outcome isTrusted(const seal::Keyring& ring,
                            const std::vector<ledger::Entry>& entries) const;
    base::Outcome mayComeBack(const seal::Keyring& ring) const;
    base::Result<record::House> trustedHouse(const seal::Keyring& ring,
                                             const base::StaffId& person) const;
    void isHere();
    void isLeaving();
    void sealWith(const std::shared_ptr<seal::Keyring>& ring);

    ledger::Ledger& m_ledger;
    const base::Clock& m_clock;
    Terms m_terms;
    UseNotes m_notes;
    std::optional<seal::KeyRows> m_rows;
    std::shared_ptr<seal::Keyring> m_ring;
    std::optional<base::StaffId> m_person;
    record::House m_house;
    bool m_isConfirmed = false;
    WrongPassphrases m_wrong;
    int m_untold = 0;  ///< wrong passphrases that no line of the log tells of yet
};

}  // namespace gate
