// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "base/fields.h"
#include "base/id.h"

/// What was done with the ledger itself: who looked at what, and from where it was restored.
namespace record {

/// What somebody did without saying anything to a record.
enum class Use {
    SignedIn,
    SignedOut,
    Searched,    ///< for a learner by name or number; the words are not kept
    Opened,      ///< a patient's record
    BreakGlass,  ///< before it, by somebody who has no part in it; says why
    Printed,
    Saved,  ///< a paper, as a file
    Exported,
    Verified,
    ReadLog,  ///< this log
};

/// Why somebody opens a record they have no part in; all else is told in words of their own.
enum class Reason {
    TakesOver,  ///< the teaching
    Cares,      ///< for the patient today, without teaching
    Checks,     ///< the record itself
    Emergency,
};

/// It is in the log of the ledger, never in a patient's record; see record/uselog.h.
struct NoteUse {
    static constexpr const char* type = "use-noted";
    static constexpr int version = 3;  ///< 1 counted no wrong passphrases, 2 no ReadLog
    Use what = Use::SignedIn;
    std::optional<base::PatientId> patient = {};  ///< whose record; none: nobody's
    std::string object;  ///< what was printed, saved or exported, by its kind; "" for all else
    std::string reason;  ///< of BreakGlass: the name of a Reason, or as it was typed; "" for others
    /// Of SignedIn: the passphrases that were wrong since the line before, whoever typed them.
    std::int64_t wrongBefore = 0;
    bool operator==(const NoteUse&) const = default;
    template <class V>
    void fields(V& v) {
        v("what", what), v("patient", patient), v("object", object), v("reason", reason);
        v("wrong_before", wrongBefore);
    }
};

/// From here on the ledger has another id: it was restored from a backup, and what the former one
/// went on to say, if it did, is not in here. Its own id is that of its entry's envelope.
struct ContinueLedger {
    static constexpr const char* type = "ledger-continued";
    base::LedgerId from;    ///< the id up to here
    std::int64_t size = 0;  ///< entries that were restored
    std::string root;       ///< theirs, 64 hex digits
    bool operator==(const ContinueLedger&) const = default;
    template <class V>
    void fields(V& v) {
        v("from", from), v("size", size), v("root", root);
    }
};

}  // namespace record

namespace base {

template <>
struct Names<record::Use> {
    static constexpr std::array<std::pair<record::Use, const char*>, 10> all{{
        {record::Use::SignedIn, "signed-in"},
        {record::Use::SignedOut, "signed-out"},
        {record::Use::Searched, "searched"},
        {record::Use::Opened, "opened"},
        {record::Use::BreakGlass, "break-glass"},
        {record::Use::Printed, "printed"},
        {record::Use::Saved, "saved"},
        {record::Use::Exported, "exported"},
        {record::Use::Verified, "verified"},
        {record::Use::ReadLog, "read-log"},
    }};
};

template <>
struct Names<record::Reason> {
    static constexpr std::array<std::pair<record::Reason, const char*>, 4> all{{
        {record::Reason::TakesOver, "takes-over"},
        {record::Reason::Cares, "cares"},
        {record::Reason::Checks, "checks"},
        {record::Reason::Emergency, "emergency"},
    }};
};

}  // namespace base
