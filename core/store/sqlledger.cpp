// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlledger.h"

#include "store/derived.h"
#include "store/fences.h"
#include "store/meta.h"
#include "store/recordfile.h"
#include "store/schema.h"
#include "store/transaction.h"
#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;

base::Outcome nameNewRecord(Database& database, OpenMode mode) {
    const auto named =
        database.runOnce(QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
    if (!named) return named;
    if (const auto made = bringUpToDate(database, builtInSteps()); !made) return made.error();
    auto transaction = Transaction::begin(database);
    if (!transaction) return transaction.error();
    const char* const put = "INSERT INTO meta (key, value) VALUES (?, ?)";
    const auto id = base::LedgerId::random();
    for (const auto& [key, value] : {std::pair<std::string, std::string>("ledger", id.text()),
                                     std::pair<std::string, std::string>("kind", wordOf(mode))})
        if (const auto done = database.run(put, {textValue(key), textValue(value)}); !done)
            return done;
    if (const auto done = putTail(database, {}, {}); !done) return done;
    return transaction->commit();
}

}  // namespace

SqlLedger::SqlLedger(std::optional<FileLock> lock, std::unique_ptr<Database> database,
                     ledger::Lineage lineage)
    : m_lock(std::move(lock)),
      m_database(std::move(database)),
      m_keys(*m_database),
      m_cardShelf(*m_database),
      m_cards(m_cardShelf),
      m_lineage(std::move(lineage)) {}

/// Makes a record beside its name and gives it the name when it is whole.
base::Outcome SqlLedger::make(const std::string& path, OpenMode mode, const FillNew& fill) {
    const std::string part = path + ".new";
    removeDatabase(part);  // one that was never finished
    if (const auto made = makeEmptyFile(part); !made) return made;
    {
        auto database = Database::open(part, Access::ReadWrite);
        if (!database) return database.error();
        if (const auto named = nameNewRecord(**database, mode); !named) return named;
        // The lock is that of the final name, which the caller holds.
        const auto ledger = load(std::nullopt, std::move(*database), mode, Edge::Verify);
        if (!ledger) return ledger.error();
        if (fill)
            if (const auto filled = fill(**ledger); !filled) return filled;
        const auto flushed = (*ledger)->m_database->rows("PRAGMA wal_checkpoint(TRUNCATE)");
        if (!flushed) return flushed.error();
    }
    if (hasJournal(part)) return Error{Code::StoreDisk, {"checkpoint"}};
    return settle(part, path);
}

base::Result<std::unique_ptr<SqlLedger>> SqlLedger::open(const std::string& path, OpenMode mode,
                                                         const FillNew& fill) {
    const auto state = inspect(path);
    if (!state) return state.error();
    switch (*state) {
        case FileState::Readable:
            return openToRead(path, mode);
        case FileState::Missing:
        case FileState::Writable:
            return openToWrite(path, mode, Edge::Verify, fill);
    }
    return Error{Code::Internal, {"state of a file"}};
}

base::Result<std::unique_ptr<SqlLedger>> SqlLedger::openToWrite(const std::string& path,
                                                                OpenMode mode, Edge edge,
                                                                const FillNew& fill) {
    if (const auto made = makeFolderOf(path); !made) return made.error();
    auto lock = FileLock::take(path + ".lock");
    if (!lock) return lock.error();
    const auto state = inspect(path);  // again: another copy may just have made or changed it
    if (!state) return state.error();
    if (*state == FileState::Missing)
        if (const auto made = make(path, mode, fill); !made) return made.error();
    keepPrivate(path);
    auto database = Database::open(path, Access::ReadWrite);
    if (!database) return database.error();
    if (const auto ours = askForOurFences(**database); !ours) return ours.error();
    if (const auto ready = bringUpToDate(**database, builtInSteps()); !ready) return ready.error();
    auto ledger = load(std::move(*lock), std::move(*database), mode, edge);
    if (ledger) (*ledger)->dropFormerKeys();
    return ledger;
}

base::Result<std::unique_ptr<SqlLedger>> SqlLedger::openToRead(const std::string& path,
                                                               OpenMode mode, Access access) {
    auto database = readable(path, access);
    if (!database) return database.error();
    return load(std::nullopt, std::move(*database), mode, Edge::Verify);
}

base::Result<std::unique_ptr<Database>> SqlLedger::readable(const std::string& path,
                                                            Access access) {
    if (access != Access::Beside) {
        const auto state = inspect(path);
        if (!state) return state.error();
        if (*state == FileState::Missing) return Error{Code::StoreMissing, {path}};
    }
    auto database = Database::open(path, access);
    if (!database) return database.error();
    if (const auto ready = bringUpToDate(**database, builtInSteps()); !ready) return ready.error();
    return database;
}

base::Result<std::unique_ptr<SqlLedger>> SqlLedger::openToRebuild(const std::string& path,
                                                                  OpenMode mode) {
    const auto state = inspect(path);
    if (!state) return state.error();
    switch (*state) {
        case FileState::Missing:
            return Error{Code::StoreMissing, {path}};
        case FileState::Readable:
            return Error{Code::StoreReadOnly};
        case FileState::Writable:
            break;
    }
    return openToWrite(path, mode, Edge::Rebuild, {});
}

base::Result<std::unique_ptr<SqlLedger>> SqlLedger::load(std::optional<FileLock> lock,
                                                         std::unique_ptr<Database> database,
                                                         OpenMode mode, Edge edge) {
    auto lineage = identify(*database, mode);
    if (!lineage) return lineage.error();
    std::unique_ptr<SqlLedger> ledger(
        new SqlLedger(std::move(lock), std::move(database), std::move(*lineage)));
    if (edge == Edge::Rebuild) {
        auto transaction = Transaction::begin(*ledger->m_database);
        if (!transaction) return transaction.error();
        if (const auto done = ledger->reindex(); !done) return done.error();
        if (const auto done = transaction->commit(); !done) return done.error();
    }
    if (const auto fits = ledger->verifyTail(); !fits) return fits.error();
    return ledger;
}

base::Outcome SqlLedger::verifyTail() {
    // The end and the last entry are of one moment, whoever writes in between.
    const auto moment = Snapshot::begin(*m_database);
    if (!moment) return moment.error();
    const auto rows = m_database->rows("SELECT edge, previous, tick FROM right_edge");
    if (!rows) return rows.error();
    if (rows->size() != 1) return Error{Code::StoreEdgeWrong};
    const auto edge = ledger::RightEdge::parse(textOf(rows->front()[0]));
    auto previous = ledger::RightEdge::parse(textOf(rows->front()[1]));
    if (!edge || !previous) return Error{Code::StoreEdgeWrong};
    m_tail = {countOf(rows->front()[2]), *edge};
    const auto last = m_database->rows("SELECT seq, bytes FROM entry ORDER BY seq DESC LIMIT 1");
    if (!last) return last.error();
    if (last->empty())
        return m_tail == ledger::Tail{} ? base::Outcome(base::Done{}) : Error{Code::StoreEdgeWrong};
    const std::uint64_t seq = countOf(last->front()[0]);
    const std::string bytes = bytesOf(last->front()[1]);
    const auto entry = ledger::readEnvelope(bytes);
    if (!entry || entry->seq != seq || entry->ledger != m_lineage.at(seq))
        return Error{Code::StoreDamaged, {std::to_string(seq)}};
    m_isSealed = !entry->closed.key.empty();
    if (previous->size() != seq) return Error{Code::StoreEdgeWrong};
    previous->append(ledger::leafHash(bytes));
    if (*previous != *edge || entry->tick != m_tail.tick) return Error{Code::StoreEdgeWrong};
    return base::Done{};
}

base::Outcome SqlLedger::reindex() {
    if (const auto done = clearIndex(*m_database); !done) return done;
    ledger::Tail tail;
    ledger::RightEdge previous;
    base::Outcome outcome = base::Done{};
    const auto read = eachEntry(*m_database, [&](std::uint64_t seq, std::string_view bytes) {
        const auto entry = ledger::readEntry(bytes, *m_codec);
        if (!entry || entry->seq != seq || tail.edge.size() != seq ||
            entry->ledger != m_lineage.at(seq)) {
            outcome = Error{Code::StoreDamaged, {std::to_string(tail.edge.size())}};
            return false;
        }
        previous = tail.edge;
        tail.edge.append(ledger::leafHash(bytes));
        tail.tick = entry->tick;
        outcome = remakeIndex(*m_database, *entry);
        return outcome.ok();
    });
    if (!read) return read;
    if (!outcome) return outcome;
    return putTail(*m_database, tail, previous);
}

base::Result<std::vector<ledger::Entry>> SqlLedger::append(const std::vector<ledger::Draft>& drafts,
                                                           const base::Instant& now,
                                                           const ledger::Derived& derived) {
    auto entries = write(drafts, now, derived);
    if (!entries) m_cards.forgetRead();  // what was put was undone
    return entries;
}

base::Result<std::vector<ledger::Entry>> SqlLedger::write(const std::vector<ledger::Draft>& drafts,
                                                          const base::Instant& now,
                                                          const ledger::Derived& derived) {
    auto transaction = Transaction::begin(*m_database);
    if (!transaction) return transaction.error();
    auto repeated = known(drafts);
    if (!repeated || !repeated->empty()) return repeated;
    if (m_isSealed && !m_codec->seals()) return Error{Code::SealKeyMissing};
    ledger::Tail next = m_tail;
    auto written = ledger::extend(next, id(), drafts, now, *m_codec);
    if (!written) return written.error();
    if (const auto done = writeEntries(*written, next); !done) return done.error();
    if (const auto done = putDerived(*m_database, derived); !done) return done.error();
    if (const auto done = writeCards(derived, next.edge); !done) return done.error();
    if (derived.forgets)
        if (const auto gone = forgetRows(*derived.forgets, next.edge); !gone) return gone.error();
    if (const auto done = transaction->commit(); !done) return done.error();
    m_tail = std::move(next);
    m_isSealed = m_codec->seals();
    if (!derived.access.empty() || derived.forgets) m_keepsFormerKeys = true;
    dropFormerKeys();
    std::vector<ledger::Entry> entries;
    for (ledger::WrittenEntry& item : *written) entries.push_back(std::move(item.entry));
    return entries;
}

base::Outcome SqlLedger::writeEntries(std::vector<ledger::WrittenEntry>& written,
                                      const ledger::Tail& next) {
    ledger::RightEdge previous = m_tail.edge;
    for (const ledger::WrittenEntry& item : written) {
        const auto put = m_database->putOne("INSERT INTO entry (seq, bytes) VALUES (?, ?)",
                                            {countValue(item.entry.seq), bytesValue(item.bytes)});
        if (!put) return put;
        if (const auto done = putIndex(*m_database, item.entry); !done) return done;
        if (item.entry.seq + 1 < next.edge.size()) previous.append(item.leaf);
    }
    return written.empty() ? base::Outcome(base::Done{}) : putTail(*m_database, next, previous);
}

/// Cards that an older program left to be made again are not begun in the middle: the fold's
/// version goes on saying that they are missing.
base::Outcome SqlLedger::writeCards(const ledger::Derived& derived,
                                    const ledger::RightEdge& after) {
    const auto areKept = m_cards.isKept(m_tail.edge);
    if (!areKept) return areKept.error();
    if (!*areKept) return base::Done{};
    if (const auto put = m_cards.put(derived.cards, m_tail.edge, after); !put) return put;
    return putFold(*m_database, derived.foldVersion);
}

void SqlLedger::dropFormerKeys() {
    // What was asked for is stored already: a failure here is no failure of that.
    if (m_keepsFormerKeys) m_keepsFormerKeys = !emptyJournal(*m_database).ok();
}

base::Outcome SqlLedger::continueAs(const base::LedgerId& id) {
    auto next = m_lineage.continued(id, head());
    auto transaction = Transaction::begin(*m_database);
    if (!transaction) return transaction.error();
    if (const auto put = putLineage(*m_database, next); !put) return put;
    if (const auto done = transaction->commit(); !done) return done;
    m_lineage = std::move(next);
    return base::Done{};
}

void SqlLedger::use(std::shared_ptr<ledger::Codec> codec) {
    m_codec = codec;
    m_cards.use(std::move(codec));
}

base::Outcome SqlLedger::rebuild(const ledger::Derived& all) {
    auto done = rebuildAll(all);
    if (!done) m_cards.forgetRead();
    return done ? verifyTail() : done;
}

base::Outcome SqlLedger::rebuildAll(const ledger::Derived& all) {
    if (m_isSealed && !m_codec->seals()) return Error{Code::SealKeyMissing};
    auto transaction = Transaction::begin(*m_database);
    if (!transaction) return transaction.error();
    if (const auto done = clearDerived(*m_database); !done) return done;
    if (const auto done = reindex(); !done) return done;
    if (const auto done = putDerived(*m_database, all); !done) return done;
    const auto edge = storedEdge();
    if (!edge) return edge.error();
    if (const auto done = m_cards.rebuild(all.cards, *edge); !done) return done;
    if (const auto done = putFold(*m_database, all.foldVersion); !done) return done;
    return transaction->commit();
}

base::Outcome SqlLedger::forgetRows(const base::PatientId& patient, const ledger::RightEdge& edge) {
    if (const auto done = m_cards.forget(patient, edge); !done) return done;
    const auto closed =
        m_database->run("DELETE FROM open_visit WHERE patient = ?", {textValue(patient.text())});
    if (!closed) return closed;
    return m_keys.erase(patient);
}

}  // namespace store
