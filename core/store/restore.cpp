// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The way back of backup.h.
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>

#include "store/backup.h"
#include "store/recordfile.h"
#include "store/rowstream.h"
#include "store/schema.h"
#include "store/transaction.h"

namespace store {
namespace {

using base::Code;
using base::Error;
using ledger::Head;

bool isDamage(Code code) {
    return code == Code::StoreCutShort || code == Code::StoreDamaged ||
           code == Code::StoreEdgeWrong;
}

/// It may be the newer one, and what is left of it the only copy.
Error overDamaged(const std::string& record) { return {Code::BackupOverDamaged, {record}}; }

/// Of one ledger the longer record is the newer one; which of two is right, no program can tell.
base::Result<std::optional<Head>> olderThere(const std::string& record, const BackupHead& head) {
    const auto state = inspect(record);
    if (!state) return isDamage(state.error().code) ? overDamaged(record) : state.error();
    if (*state == FileState::Missing) return std::optional<Head>();
    const auto ledger = SqlLedger::openToRead(record, head.kind);
    if (!ledger && ledger.error().code == Code::StoreOtherKind)
        return Error{Code::BackupOverOther, {record}};
    if (!ledger) return isDamage(ledger.error().code) ? overDamaged(record) : ledger.error();
    const auto& former = (*ledger)->former();
    const bool wentOn = std::any_of(former.begin(), former.end(), [&](const auto& one) {
        return one.ledger == head.ledger.ledger;
    });
    if ((*ledger)->id() != head.ledger.ledger && !wentOn)
        return Error{Code::BackupOverOther, {record}};
    const Head there = (*ledger)->head();
    if (wentOn || there.size > head.ledger.head.size)
        return Error{Code::BackupOverNewer,
                     {std::to_string(there.size), std::to_string(head.ledger.head.size)}};
    return std::optional<Head>(there);
}

base::Outcome putRows(Database& database, BackupReader& reader) {
    auto transaction = Transaction::begin(database);
    if (!transaction) return transaction.error();
    RowReceiver rows(database);
    for (;;) {
        const auto piece = reader.next();
        if (!piece) return piece.error();
        if (piece->empty()) break;
        if (const auto done = rows.take(*piece); !done) return done;
    }
    if (const auto done = rows.finish(); !done) return done;
    return transaction->commit();
}

/// A record of the version the backup was made from, and then of the newest.
base::Outcome fill(const std::string& part, BackupReader& reader) {
    auto database = Database::open(part, Access::ReadWrite);
    if (!database) return database.error();
    const auto named =
        (*database)->runOnce(QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
    if (!named) return named;
    auto steps = builtInSteps();
    const int schema = reader.head().schema;
    if (schema > newestVersion(steps))
        return Error{Code::StoreNewer,
                     {std::to_string(schema), std::to_string(newestVersion(steps))}};
    std::erase_if(steps, [&](const SchemaStep& step) { return step.version > schema; });
    if (const auto made = bringUpToDate(**database, steps); !made) return made.error();
    return putRows(**database, reader);
}

/// The whole of it against the head, and the older record of the same ledger against its part.
base::Outcome holdAgainst(const SqlLedger& restored, const BackupHead& head,
                          const std::optional<Head>& older) {
    const auto report = restored.check();
    if (!report) return report.error();
    const bool isIntact = report->isIntact() && report->head == head.ledger.head &&
                          restored.id() == head.ledger.ledger;
    if (!isIntact) return Error{Code::BackupChanged};
    if (!older) return base::Done{};
    const auto then = restored.headAt(older->size);
    if (!then) return then.error();
    if (*then != older) return Error{Code::BackupOverOther, {"record"}};
    return base::Done{};
}

base::Outcome makePart(const std::string& part, BackupReader& reader,
                       const std::optional<Head>& older, const GoOn& goOn) {
    removeDatabase(part);
    if (const auto made = makeEmptyFile(part); !made) return made;
    if (const auto filled = fill(part, reader); !filled) return filled;
    const auto ledger = SqlLedger::open(part, reader.head().kind);
    if (!ledger) return ledger.error();
    if (const auto fits = holdAgainst(**ledger, reader.head(), older); !fits) return fits;
    if (const auto done = goOn(**ledger); !done) return done;
    return emptyJournal((*ledger)->database());
}

/// Brings the journal of what is there into its file: beside another file it would be applied to
/// that one. Then a second name for it.
base::Outcome keepOlder(const std::string& record, const Head& older) {
    {
        const auto database = Database::open(record, Access::ReadWrite);
        if (!database) return database.error();
        if (const auto done = emptyJournal(**database); !done) return done;
    }
    if (hasJournal(record)) return Error{Code::StoreBusy};
    const std::string kept = keptBesideRestored(record, older.size);
    ::unlink(kept.c_str());
    if (::link(record.c_str(), kept.c_str()) != 0)
        return Error{Code::FileUnwritable, {kept, std::strerror(errno)}};
    return base::Done{};
}

}  // namespace

base::Outcome restoreBackup(const std::string& file, const std::string& record,
                            const OpenKey& openKey, const GoOn& goOn) {
    auto reader = BackupReader::open(file);
    if (!reader) return reader.error();
    if (const auto made = makeFolderOf(record); !made) return made;
    const auto lock = FileLock::take(record + ".lock");
    if (!lock) return lock.error();
    const auto older = olderThere(record, reader->head());
    if (!older) return older.error();
    const auto key = openKey(reader->head());
    if (!key) return key.error();
    reader->unlock(*key);
    const std::string part = record + ".restoring";
    auto done = makePart(part, *reader, *older, goOn);
    if (done && hasJournal(part)) done = Error{Code::StoreDisk, {"checkpoint"}};
    if (done && *older) done = keepOlder(record, **older);
    if (done) done = settle(part, record);
    if (!done) removeDatabase(part);
    ::unlink((part + ".lock").c_str());
    return done;
}

}  // namespace store
