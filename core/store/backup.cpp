// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include <unistd.h>

#include <cerrno>
#include <cstring>

#include "seal/accessrows.h"
#include "store/derived.h"
#include "store/recordfile.h"
#include "store/rowstream.h"
#include "store/schema.h"
#include "store/transaction.h"
#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;
using ledger::Head;

/// Opens to read as the schema has to be.
base::Result<std::unique_ptr<Database>> openSource(const std::string& record) {
    const auto state = inspect(record);
    if (!state) return state.error();
    if (*state == FileState::Missing) return Error{Code::StoreMissing, {record}};
    auto database = Database::open(record, Access::ReadOnly);
    if (!database) return database.error();
    if (const auto ready = bringUpToDate(**database, builtInSteps()); !ready) return ready.error();
    return database;
}

base::Result<Head> storedHead(Database& database) {
    const auto text = database.value("SELECT edge FROM right_edge");
    if (!text) return text.error();
    const auto edge = ledger::RightEdge::parse(textOf(*text));
    if (!edge) return Error{Code::StoreEdgeWrong};
    return Head{edge->size(), ledger::toHex(edge->root())};
}

base::Result<BackupHead> headOf(Database& database) {
    BackupHead head;
    const auto kind = kindOf(database);
    if (!kind) return kind.error();
    const auto lineage = identify(database, *kind);
    if (!lineage) return lineage.error();
    const auto stored = storedHead(database);
    if (!stored) return stored.error();
    const auto schema = schemaVersion(database);
    if (!schema) return schema.error();
    auto rows = accessRowsIn(database);
    if (!rows) return rows.error();
    head.ledger = {lineage->id(), *stored};
    head.kind = *kind;
    head.schema = *schema;
    for (ledger::AccessRow& row : *rows)
        if (row.kind == "ledger" || row.kind == "person") head.access.push_back(std::move(row));
    return head;
}

/// A copy of what is not sound does not take the place of one that is.
base::Outcome isSound(Database& database, const Head& head) {
    ledger::RightEdge edge;
    const auto read = eachEntry(database, [&](std::uint64_t seq, std::string_view bytes) {
        if (seq != edge.size()) return false;
        edge.append(ledger::leafHash(bytes));
        return true;
    });
    if (!read) return read;
    if (Head{edge.size(), ledger::toHex(edge.root())} != head) return Error{Code::StoreEdgeWrong};
    return base::Done{};
}

}  // namespace

base::Result<ledger::Former> backUp(const std::string& record, const std::string& file) {
    const auto database = openSource(record);
    if (!database) return database.error();
    const auto moment = Snapshot::begin(**database);
    if (!moment) return moment.error();
    const auto head = headOf(**database);
    if (!head) return head.error();
    const auto rows = seal::readKeyRows(head->access);
    if (!rows) return rows.error();
    if (!*rows) return Error{Code::BackupNoKeys};
    if (const auto sound = isSound(**database, head->ledger.head); !sound) return sound.error();
    auto writer = BackupWriter::begin(file);
    if (!writer) return writer.error();
    if (const auto done = writer->writeHead(*head, **rows); !done) return done.error();
    const auto copied =
        writeRows(**database, [&](const std::string& bytes) { return writer->write(bytes); });
    if (!copied) return copied.error();
    if (const auto done = writer->finish(); !done) return done.error();
    return head->ledger;
}

std::string keptBesideRestored(const std::string& record, std::uint64_t size) {
    return record + ".before-restore-" + std::to_string(size);
}

}  // namespace store
