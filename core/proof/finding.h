// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "base/names.h"
#include "ledger/entry.h"
#include "record/payload.h"

/// What can be proven about a record: by anybody, and by whoever has a key.
namespace proof {

/// What can be wrong with a record, or has to be known about it.
enum class Kind {
    Gap,           ///< an entry is missing
    Unreadable,    ///< its bytes are no entry in canonical form
    OtherPlace,    ///< it says another place or another ledger
    TickBack,      ///< its count is not above the one before
    Doubled,       ///< its id is that of an earlier entry
    NotSealed,     ///< it lies open in a record that is sealed
    Changed,       ///< its body does not open: it, its place or its key is another one
    NoSignature,   ///< it says what is always signed, and is not
    BadSignature,  ///< a signature does not hold
    UnknownKey,    ///< signed by a key that its author did not have then, or for another purpose
    NoSpeaker,     ///< said by somebody who could not sign in then
    OtherRole,     ///< said in a role that its author did not have then
    KeysChanged,   ///< who can open the record was changed by nobody who may
    KeyGone,       ///< its key is not to be had, and no entry says that two people erased it
    NotErased,     ///< two people erased it, and its key is there again
    Basis,         ///< signed on the ground of entries that are not, or not all, those before it
    Index,         ///< it can't be found by its command or its subject
    Fences,        ///< its tables, or the rules that guard them, are not those of the program
    RightEdge,     ///< the stored end is not that of the entries
    Derived,       ///< what is shown was not made from the entries
    Blob,          ///< a drawing or pack it names is not what its digest says
    Paper,         ///< a paper that it says was issued is not what the record shows of then
    Rewritten,     ///< entries between two known heads are not those of then
    CutOff,        ///< a known head speaks of more entries than there are
    Forked,        ///< two known heads can't both be of one record
    OtherRecord,   ///< a known head is of another record
    Emptied,       ///< its key was destroyed; who said so is seen with a key alone; not wrong
    Erased,        ///< on purpose, by two people; not wrong
};

/// One thing and where: an entry, or all from one to another.
struct Finding {
    Kind kind = Kind::Gap;
    std::uint64_t from = 0, to = 0;  ///< seq of the first and the last; the same for one
    std::optional<record::PaperKind> paper = {};  ///< which kind it is that Paper is about

    bool operator==(const Finding&) const = default;
};
/// Whether that is something wrong; what was erased is not.
inline bool isWrong(Kind kind) { return kind != Kind::Erased && kind != Kind::Emptied; }
inline Finding at(Kind kind, std::uint64_t seq) { return {kind, seq, seq}; }

/// The papers that were issued: their data is gathered once more from the record of then.
struct Papers {
    std::uint64_t checked = 0;
    std::uint64_t before = 0;  ///< issued before entries said what a paper was made of
    std::uint64_t others = 0;  ///< made by another form of papers than this program's
    bool operator==(const Papers&) const = default;
};

/// What one run looked at and found.
struct Report {
    ledger::Head head;             ///< over the entries that were read
    std::uint64_t signatures = 0;  ///< that hold
    std::uint64_t opened = 0;      ///< bodies that were read
    std::uint64_t closed = 0;      ///< bodies whose key is not at hand
    std::uint64_t erased = 0;      ///< bodies whose key was destroyed
    std::uint64_t blobs = 0;
    std::uint64_t knownHeads = 0;
    /// Nothing where none could be looked at: something else is wrong, or a key is missing.
    std::optional<Papers> papers = {};
    std::vector<Finding> findings;

    /// Whether anything is wrong.
    bool isWrong() const;
    /// Whether everything there is could be looked into.
    bool isComplete() const { return closed == 0; }
};

}  // namespace proof

namespace base {

/// As the command line says them.
template <>
struct Names<proof::Kind> {
    static constexpr std::array<std::pair<proof::Kind, const char*>, 28> all{{
        {proof::Kind::Gap, "gap"},
        {proof::Kind::Unreadable, "unreadable"},
        {proof::Kind::OtherPlace, "other-place"},
        {proof::Kind::TickBack, "tick-back"},
        {proof::Kind::Doubled, "doubled-id"},
        {proof::Kind::NotSealed, "not-sealed"},
        {proof::Kind::Changed, "changed"},
        {proof::Kind::NoSignature, "no-signature"},
        {proof::Kind::BadSignature, "bad-signature"},
        {proof::Kind::UnknownKey, "unknown-key"},
        {proof::Kind::NoSpeaker, "no-speaker"},
        {proof::Kind::OtherRole, "other-role"},
        {proof::Kind::KeysChanged, "keys-changed"},
        {proof::Kind::KeyGone, "key-gone"},
        {proof::Kind::NotErased, "not-erased"},
        {proof::Kind::Basis, "basis"},
        {proof::Kind::Index, "index"},
        {proof::Kind::Fences, "fences"},
        {proof::Kind::RightEdge, "right-edge"},
        {proof::Kind::Derived, "derived"},
        {proof::Kind::Blob, "blob"},
        {proof::Kind::Paper, "paper"},
        {proof::Kind::Rewritten, "rewritten"},
        {proof::Kind::CutOff, "cut-off"},
        {proof::Kind::Forked, "forked"},
        {proof::Kind::OtherRecord, "other-record"},
        {proof::Kind::Emptied, "emptied"},
        {proof::Kind::Erased, "erased"},
    }};
};

}  // namespace base
