// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>
#include <vector>

/// What an auditor is shown, as plain values: whoever has verified fills them in.
namespace ui {

/// What can be wrong with a record, or has to be known about it.
enum class AuditKind {
    Gap,           ///< an entry is missing
    Unreadable,    ///< its bytes are no entry
    OtherPlace,    ///< it says another place or another ledger
    Doubled,       ///< it is there twice
    Changed,       ///< a body is not what was sealed
    BadSignature,  ///< does not hold
    UnknownKey,    ///< signed by a key nobody was given
    Derived,       ///< what is shown was not made from the entries
    Blob,          ///< a drawing or pack is not what its digest says
    Rewritten,     ///< entries between two known heads are not those of then
    CutOff,        ///< a known head speaks of more entries than there are
    OtherPaper,    ///< the paper is not of this record
    Erased,        ///< on purpose, by two people; not wrong
};

struct AuditFinding {
    AuditKind kind;
    std::uint64_t from = 0, to = 0;  ///< the entries it is about; from == to: one
    bool operator==(const AuditFinding&) const = default;
};

/// What one run of verify looked at and found.
struct AuditResult {
    std::uint64_t entries = 0, signatures = 0, bodiesOpened = 0, bodiesClosed = 0, blobs = 0,
                  knownHeads = 0;
    QString size, root;  ///< the head that everything was held against, as on papers
    std::vector<AuditFinding> findings;

    /// Whether anything is wrong: an erasure is not.
    bool isWrong() const;
    /// Whether everything there is could be looked into.
    bool isComplete() const { return bodiesClosed == 0; }
};

enum class Looking {
    SignedIn,
    SignedOut,
    Searched,
    Opened,      ///< a patient's record
    BreakGlass,  ///< opened by somebody who had said that it was an emergency
    Printed,
    Saved,
    Exported,
    Verified,
};

/// Somebody looked at something, printed it or took it along.
struct Looked {
    std::int64_t wallMs = 0;  ///< when; UTC
    int offsetMinutes = 0;    ///< local time minus UTC then
    QString who, about;       ///< about: the patient, or the paper; may be empty
    Looking what = Looking::Opened;
};

}  // namespace ui
