// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

#include "base/id.h"
#include "base/result.h"
#include "gate/slow.h"
#include "record/housepayloads.h"
#include "render/papers/recoverysheet.h"
#include "seal/secret.h"

namespace ui {

/// Somebody who is being let in.
struct Newcomer {
    QString name, initials;
};

/// Somebody who can sign in, or could before they were retired.
struct Member {
    base::StaffId staff;
    QString name, initials;
    record::Role role = record::Role::Teacher;
    bool isRetired = false;
};

/// A patient's record that two people destroy together.
struct Erasing {
    base::PatientId patient;
    std::string why;     ///< in words that name nobody of the record
    std::string second;  ///< the typed name of the one who is not signed in
};

/// What the windows need of the program to let people in and out. All of it is called on the
/// windows' thread. What takes a passphrase takes as long as Argon2id is meant to: its slow half
/// runs on a thread of its own, one at a time, and nothing else is called meanwhile. Whoever is
/// refused is told so by an error, and nothing was changed.
class Door {
  public:
    using Slow = gate::Slow<base::Done>;

    virtual ~Door() = default;

    /// Whether anybody was ever let in; until then there is nothing to sign in to.
    virtual bool isFounded() const = 0;
    /// Makes the first educator and the keys, and signs them in. Gives the four lines of the
    /// recovery sheet with a line end between them; they are kept nowhere.
    virtual gate::Slow<seal::Secret> found(const Newcomer& first, seal::Secret passphrase) = 0;

    /// Who is signed in; nobody after signOut() and before anyone signed in.
    virtual std::optional<Member> who() const = 0;
    /// Signs this person in and whoever was signed in before out, in this order: refused, the one
    /// before stays. Errors: SealWrongPassphrase, alike for an unknown name and a wrong passphrase;
    /// AccessWait, AccessRetired, AccessChanged.
    virtual Slow signIn(const QString& name, seal::Secret passphrase) = 0;
    /// Whether this is the passphrase of who(), after a lock. Errors: SealWrongPassphrase.
    virtual Slow unlock(seal::Secret passphrase) = 0;
    /// The same just before a signature, for all that is signed at once; nothing else lets anybody
    /// sign.
    virtual Slow confirm(seal::Secret passphrase) = 0;
    /// Wipes the keys; who() is nobody afterwards.
    virtual void signOut() = 0;
    /// Milliseconds until the next passphrase is looked at; 0 while none was typed wrong. Grows
    /// with wrong ones of every kind, never to a lock; a call before then is refused unlooked-at.
    virtual std::int64_t waitMs() const = 0;

    /// Opens by the recovery sheet's lines and lets this person in as an educator, signed in.
    /// Errors: SealCodeLine and its like, SealKeyMissing when the sheet is of another record.
    virtual Slow recover(seal::Secret letters, const Newcomer& person, seal::Secret passphrase) = 0;
    /// A new passphrase for who(), same keys. Errors: SealWrongPassphrase for the old one.
    virtual Slow changePassphrase(seal::Secret old, seal::Secret fresh) = 0;

    /// Everybody, the retired too, in the order of their names. Empty unless an educator or an
    /// auditor is signed in.
    virtual std::vector<Member> people() const = 0;
    /// Lets somebody new in. The passphrase is typed by them, on this computer. An educator's to
    /// do, as are reset() and retire().
    virtual Slow admit(const Newcomer& person, record::Role role, seal::Secret passphrase) = 0;
    /// New keys under a new passphrase for somebody else whose own is lost; what they signed still
    /// verifies by the keys from before.
    virtual Slow reset(const base::StaffId& person, seal::Secret passphrase) = 0;
    /// They can't sign in any more and read nothing that is written from now on; what they wrote
    /// and signed stays.
    virtual base::Outcome retire(const base::StaffId& person) = 0;
    /// What a sheet made now, or the one that opens this record, says besides its lines.
    virtual render::SheetMark sheetMark() const = 0;
    /// The lines of a new recovery sheet; the old one opens nothing that is written from now on.
    virtual base::Result<seal::Secret> newSheet() = 0;
    /// By an educator and an auditor together, each with their own passphrase: `own` is that of
    /// who(). Errors: EraseTwo and its like, SealWrongPassphrase.
    virtual Slow erase(const Erasing& asked, seal::Secret own, seal::Secret others) = 0;
};

}  // namespace ui
