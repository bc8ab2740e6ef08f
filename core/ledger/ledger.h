// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "ledger/access.h"
#include "ledger/entry.h"

namespace ledger {

/// One learner as the list of learners shows them. Remade from the entries at any time.
struct CardRow {
    base::LearnerId learner;
    base::PatientId patient;
    std::string sortKey = {};                  ///< cards come in the order of its bytes
    std::vector<std::string> searchKeys = {};  ///< folded words; a search matches their beginnings
    std::string json = {};                     ///< record::Card as canonical JSON

    bool operator==(const CardRow&) const = default;
};

/// The one visit that is open on this workstation.
struct OpenVisitRow {
    base::VisitId visit;
    base::PatientId patient;

    bool operator==(const OpenVisitRow&) const = default;
};

/// Rows derived from the entries that are written in the same transaction as these.
struct Derived {
    int foldVersion = 1;
    std::vector<CardRow> cards = {};             ///< put in place of the cards of these learners
    bool setsOpenVisit = false;                  ///< whether openVisit below is to be stored
    std::optional<OpenVisitRow> openVisit = {};  ///< none: no visit is open
    /// Put in place of the rows of the same kind and id. They stay in a rebuild(), as no entry has
    /// what they hold.
    std::vector<AccessRow> access = {};
    /// Who is erased with it: every key of theirs is destroyed, their cards and open visit are
    /// taken away, and what named them beside others is closed anew. Their entries stay and nobody
    /// can open them.
    std::optional<base::PatientId> forgets = {};

    bool operator==(const Derived&) const = default;
};

struct CardQuery {
    /// Folded; each must begin some search key of the card. Empty ones are left out, and all that
    /// come after the sixteenth.
    std::vector<std::string> words = {};
    std::uint32_t offset = 0;
    std::uint32_t limit = 50;
};

struct CardPage {
    std::vector<CardRow> rows = {};
    std::uint64_t total = 0;  ///< cards that match, on all pages
};

/// An id that a ledger had before it was restored from a backup, and the head it went on from.
struct Former {
    base::LedgerId ledger;
    Head head;

    bool operator==(const Former&) const = default;
};

/// Where an erasure did not reach, as far as the ledger can tell. Backups it knows nothing of.
struct Remains {
    std::vector<std::string> copies =
        {};                ///< names of files beside the record that hold older ones
    bool journal = false;  ///< the journal may still have a destroyed key: somebody was reading
};

/// An append-only Merkle log of entries with the rows derived from it. Everything that returns has
/// reached the disk; what is refused has changed nothing.
class Ledger {
  public:
    virtual ~Ledger() = default;

    virtual const base::LedgerId& id() const = 0;
    virtual Head head() const = 0;
    /// The ids its entries have, up to which size each, in their order; none for a ledger that was
    /// never restored. The entries after them have id().
    virtual std::vector<Former> former() const { return {}; }

    /// How bodies are closed and opened from now on: the sealing codec at sign-in, plainCodec() at
    /// sign-out. Before the first call bodies are left as they are.
    virtual void use(std::shared_ptr<Codec> codec) = 0;
    /// The wrapped keys of its subjects; lives as long as the ledger.
    virtual KeyShelf& keyShelf() = 0;

    /// The rows by which people sign in, ordered by kind and id.
    virtual base::Result<std::vector<AccessRow>> access() const = 0;

    /// Writes all drafts and the derived rows, or nothing, in one durable transaction, and returns
    /// the entries as written. A draft whose body.id is already in the ledger makes the whole call
    /// harmless: nothing is written and the entries found are returned. Errors: SealKeyMissing when
    /// the ledger is sealed and its codec is not, SealRefused, those of extend() and of the disk.
    virtual base::Result<std::vector<Entry>> append(const std::vector<Draft>& drafts,
                                                    const base::Instant& now,
                                                    const Derived& derived) = 0;
    virtual base::Result<std::optional<Entry>> find(const base::CommandId& id) const = 0;
    virtual base::Result<std::vector<Entry>> ofSubject(const base::PatientId& subject) const = 0;
    /// Entries that concern nobody's record: the staff, the workstation.
    virtual base::Result<std::vector<Entry>> withoutSubject() const = 0;
    /// At most `limit` entries in the order of seq, from `seq` on.
    virtual base::Result<std::vector<Entry>> readFrom(std::uint64_t seq,
                                                      std::size_t limit) const = 0;

    /// Keeps bytes under their SHA-256 (hex): packs, which anybody may read, and a patient's drawn
    /// signatures, which are sealed as their entries are. Errors: SealKeyMissing as of append().
    virtual base::Result<std::string> putBlob(
        const std::string& bytes, const std::optional<base::PatientId>& subject = {}) = 0;
    /// Nothing where there is none, or when its key is not at hand.
    virtual base::Result<std::optional<std::string>> blob(const std::string& digest) const = 0;

    virtual base::Result<CardPage> cards(const CardQuery& query) const = 0;
    virtual base::Result<std::optional<OpenVisitRow>> openVisit() const = 0;
    /// The version of the fold the derived rows were made with; 0 when there are none yet.
    virtual base::Result<int> foldVersion() const = 0;
    /// Puts these in the place of all derived rows. Errors: SealKeyMissing when the ledger is
    /// sealed and its codec is not.
    virtual base::Outcome rebuild(const Derived& all) = 0;
    virtual Remains remains() const { return {}; }
};

}  // namespace ledger
