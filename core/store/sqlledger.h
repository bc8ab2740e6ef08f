// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "ledger/cardbook.h"
#include "ledger/ledger.h"
#include "ledger/lineage.h"
#include "ledger/tail.h"
#include "store/database.h"
#include "store/filelock.h"
#include "store/meta.h"
#include "store/recordcheck.h"
#include "store/sqlcardshelf.h"
#include "store/sqlkeyshelf.h"
#include "store/transaction.h"

namespace store {

/// Writes what a new record begins with. The file gets its name afterwards: it is there with all of
/// it or not at all, whenever the program is killed.
using FillNew = std::function<base::Outcome(ledger::Ledger& ledger)>;

/// The ledger in a file of SQLite. One copy of the program has it open to write; another is told
/// so. Belongs to the thread that opened it.
class SqlLedger : public ledger::Ledger {
  public:
    /// Opens the record at this path, or makes one where there is none. When the file or
    /// its folder can't be written it is opened to read, see isReadOnly(). Reads nothing that grows
    /// with the number of entries; the last one is held against the right edge.
    /// Errors: those of inspect() and bringUpToDate(), StoreFences, StoreLocked, StoreOtherKind,
    /// StoreEdgeWrong, StoreDamaged, and of a new one those of `fill`.
    static base::Result<std::unique_ptr<SqlLedger>> open(const std::string& path, OpenMode mode,
                                                         const FillNew& fill = {});
    /// Opens to read beside a copy that writes; `access` is Beside where this very process writes.
    /// head() is that of the moment of opening, or of the last moment().
    static base::Result<std::unique_ptr<SqlLedger>> openToRead(const std::string& path,
                                                               OpenMode mode,
                                                               Access access = Access::ReadOnly);
    /// Opens after making the index and the right edge from the entries again; for a record whose
    /// open() says StoreEdgeWrong. Cards and the open visit are left to rebuild().
    static base::Result<std::unique_ptr<SqlLedger>> openToRebuild(const std::string& path,
                                                                  OpenMode mode);

    /// check() of a record at this path, also of one that open() refuses as damaged. Errors: those
    /// of inspect() and bringUpToDate(), StoreMissing, StoreOtherKind. Sealed bodies stay closed.
    static base::Result<CheckReport> checkFile(const std::string& path, OpenMode mode,
                                               const proof::KnownHeads& heads = {});

    /// While what it gives lives, all that is read is of one moment, whoever else writes, and
    /// head() is that of this moment. Errors: as open() says of the end of the record.
    base::Result<Snapshot> moment();

    bool isReadOnly() const { return m_database->access() != Access::ReadWrite; }

    const base::LedgerId& id() const override { return m_lineage.id(); }
    ledger::Head head() const override { return m_tail.head(); }
    std::vector<ledger::Former> former() const override { return m_lineage.former(); }
    void use(std::shared_ptr<ledger::Codec> codec) override;
    ledger::KeyShelf& keyShelf() override { return m_keys; }
    base::Result<std::vector<ledger::AccessRow>> access() const override;
    base::Result<std::vector<ledger::Entry>> append(const std::vector<ledger::Draft>& drafts,
                                                    const base::Instant& now,
                                                    const ledger::Derived& derived) override;
    base::Result<std::optional<ledger::Entry>> find(const base::CommandId& id) const override;
    base::Result<std::vector<ledger::Entry>> ofSubject(
        const base::PatientId& subject) const override;
    base::Result<std::vector<ledger::Entry>> withoutSubject() const override;
    base::Result<std::vector<ledger::Entry>> readFrom(std::uint64_t seq,
                                                      std::size_t limit) const override;
    base::Result<std::string> putBlob(const std::string& bytes,
                                      const std::optional<base::PatientId>& subject = {}) override;
    base::Result<std::optional<std::string>> blob(const std::string& digest) const override;
    base::Result<ledger::CardPage> cards(const ledger::CardQuery& query) const override;
    base::Result<std::optional<ledger::OpenVisitRow>> openVisit() const override;
    base::Result<int> foldVersion() const override;
    base::Outcome rebuild(const ledger::Derived& all) override;
    ledger::Remains remains() const override;

    /// Goes on under a new id after what was restored. The next entry tells of it.
    base::Outcome continueAs(const base::LedgerId& id);

    /// Looks at everything again by the codec in use; `ring` has its keys. Errors: VerifyStopped.
    base::Result<CheckReport> check(const proof::KnownHeads& heads = {},
                                    const std::shared_ptr<const seal::Keyring>& ring = {},
                                    const proof::Pace& pace = {}) const;
    /// The root over the first `size` entries; nothing when there are not so many.
    base::Result<std::optional<ledger::Head>> headAt(std::uint64_t size) const;
    /// Whether cards, search keys, open visit and fold version are exactly these. Errors:
    /// SealKeyMissing.
    base::Result<bool> areDerived(const ledger::Derived& all) const;
    /// All derived rows as text; equal texts, equal rows. Of what can't be opened only that.
    base::Result<std::string> derivedRows() const;

    /// The connection, for tests that go behind the ledger's back.
    Database& database() { return *m_database; }

  private:
    enum class Edge { Verify, Rebuild };
    static base::Result<std::unique_ptr<Database>> readable(const std::string& path, Access access);
    static base::Result<std::unique_ptr<SqlLedger>> load(std::optional<FileLock> lock,
                                                         std::unique_ptr<Database> database,
                                                         OpenMode mode, Edge edge);
    static base::Result<std::unique_ptr<SqlLedger>> openToWrite(const std::string& path,
                                                                OpenMode mode, Edge edge,
                                                                const FillNew& fill);
    static base::Outcome make(const std::string& path, OpenMode mode, const FillNew& fill);
    SqlLedger(std::optional<FileLock> lock, std::unique_ptr<Database> database,
              ledger::Lineage lineage);

    base::Result<std::vector<ledger::Entry>> write(const std::vector<ledger::Draft>& drafts,
                                                   const base::Instant& now,
                                                   const ledger::Derived& derived);
    base::Outcome writeEntries(std::vector<ledger::WrittenEntry>& written,
                               const ledger::Tail& next);
    base::Outcome writeCards(const ledger::Derived& derived, const ledger::RightEdge& after);
    base::Outcome rebuildAll(const ledger::Derived& all);
    base::Outcome forgetRows(const base::PatientId& patient, const ledger::RightEdge& edge);
    /// Calls with the edge that the rows of this moment belong to.
    template <class Read>
    auto atOneMoment(const Read& read) const -> decltype(read(ledger::RightEdge()));
    base::Result<ledger::RightEdge> storedEdge() const;
    base::Result<std::string> cardText(const ledger::RightEdge& edge) const;
    base::Outcome verifyTail();
    base::Outcome reindex();
    void dropFormerKeys();
    base::Result<std::vector<ledger::Entry>> known(const std::vector<ledger::Draft>& drafts) const;
    base::Result<std::vector<ledger::Entry>> entries(const char* sql, const Values& values) const;

    std::optional<FileLock> m_lock;  ///< none when opened to read
    std::unique_ptr<Database> m_database;
    SqlKeyShelf m_keys;
    SqlCardShelf m_cardShelf;
    mutable ledger::CardBook m_cards;    ///< reads when it is asked
    mutable std::string m_edgeWhenRead;  ///< of a record that another may write to
    ledger::Lineage m_lineage;
    ledger::Tail m_tail;
    bool m_isSealed = false;  ///< its last entry is
    /// The journal may hold a secret wrapped under a former passphrase, or a destroyed key. Tried
    /// again at each append until it is emptied, and at opening, for a copy that was killed.
    bool m_keepsFormerKeys = true;
    std::shared_ptr<ledger::Codec> m_codec = ledger::plainCodec();
};

}  // namespace store
