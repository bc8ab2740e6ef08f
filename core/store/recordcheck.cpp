// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/recordcheck.h"

#include <limits>

#include "ledger/blob.h"
#include "ledger/jcs.h"
#include "store/values.h"

namespace store {
namespace {

using proof::Kind;

constexpr int entriesAtOnce = 500;
constexpr std::uint64_t largestPlace = ledger::largestInteger;

/// Whether an entry is found by its command and its subject.
bool isIndexed(Database& database, const ledger::Entry& entry, std::uint64_t seq) {
    const auto command =
        entry.isOpen ? database.value("SELECT seq FROM command WHERE id = ?",
                                      {textValue(entry.body.id.text())})
                     : database.value("SELECT seq FROM command WHERE seq = ?", {countValue(seq)});
    const std::string patient = entry.subject ? entry.subject->text() : std::string();
    const auto subject = database.value("SELECT seq FROM subject WHERE patient = ? AND seq = ?",
                                        {textValue(patient), countValue(seq)});
    return command && command->isValid() && countOf(*command) == seq && subject &&
           subject->isValid();
}

/// Rows that lead to no entry, or an edge that is another than opening asks for.
base::Outcome checkTail(Database& database, proof::Verifier& verifier,
                        const ledger::RightEdge& previous, std::uint64_t& edgeSize) {
    const ledger::Tail& tail = verifier.tail();
    const auto edge = database.rows("SELECT edge, previous, tick FROM right_edge");
    if (!edge) return edge.error();
    if (edge->size() == 1)
        if (const auto stored = ledger::RightEdge::parse(textOf(edge->front()[0])))
            edgeSize = stored->size();
    const bool fits = edge->size() == 1 && textOf(edge->front()[0]) == tail.edge.text() &&
                      textOf(edge->front()[1]) == previous.text() &&
                      countOf(edge->front()[2]) == tail.tick;
    if (!fits) verifier.find(proof::at(Kind::RightEdge, tail.edge.size()));
    for (const char* sql : {"SELECT seq FROM command WHERE seq NOT IN (SELECT seq FROM entry)",
                            "SELECT seq FROM subject WHERE seq NOT IN (SELECT seq FROM entry)"}) {
        const auto strays = database.rows(sql);
        if (!strays) return strays.error();
        for (const Row& row : *strays) verifier.find(proof::at(Kind::Index, countOf(row.front())));
    }
    return base::Done{};
}

/// What is wrong is told of the entry that names it first; of all, when none does that was read. A
/// sealed one without its key is left unlooked-at, as an entry is.
base::Outcome checkBlobs(Database& database, ledger::Codec& codec, proof::Verifier& verifier) {
    const auto names = database.rows("SELECT rowid, digest FROM blob ORDER BY rowid");
    if (!names) return names.error();
    auto missing = verifier.namedBlobs();
    for (const Row& row : *names) {
        const auto bytes = database.value("SELECT bytes FROM blob WHERE rowid = ?", {row[0]});
        if (!bytes) return bytes.error();
        verifier.countBlob();
        const std::string digest = textOf(row[1]);
        const bool holds = ledger::openedBlob(codec, digest, bytesOf(*bytes)).ok();
        const auto named = missing.find(digest);
        if (named == missing.end()) {
            const std::uint64_t size = verifier.tail().edge.size();
            if (!holds) verifier.find({Kind::Blob, 0, size == 0 ? 0 : size - 1});
        } else if (holds) {
            missing.erase(named);
        }
    }
    for (const auto& [digest, seq] : missing) verifier.find(proof::at(Kind::Blob, seq));
    return base::Done{};
}

}  // namespace

base::Outcome eachEntry(Database& database, const EntryVisitor& visit) {
    qlonglong from = std::numeric_limits<qlonglong>::min();
    for (;;) {
        const auto rows =
            database.rows("SELECT seq, bytes FROM entry WHERE seq >= ? ORDER BY seq LIMIT ?",
                          {from, entriesAtOnce});
        if (!rows) return rows.error();
        if (rows->empty()) return base::Done{};
        for (const Row& row : *rows) {
            // SQLite trusts the file for the order: one that was made by hand may have none.
            const qlonglong seq = row[0].toLongLong();
            if (seq < from) return base::Error{base::Code::StoreDamaged, {std::to_string(seq)}};
            const bool isLast = seq == std::numeric_limits<qlonglong>::max();
            if (!visit(countOf(row[0]), bytesOf(row[1])) || isLast) return base::Done{};
            from = seq + 1;
        }
    }
}

base::Result<CheckReport> checkRecord(Database& database, proof::Grounds grounds) {
    const auto codec = grounds.codec;
    proof::Verifier verifier(std::move(grounds));
    ledger::RightEdge previous;  // without the last entry
    const auto read = eachEntry(database, [&](std::uint64_t seq, const std::string& bytes) {
        if (seq > largestPlace) {
            verifier.find(proof::at(Kind::OtherPlace, largestPlace));
            return true;
        }
        previous = verifier.tail().edge;
        verifier.look(seq, bytes);
        if (verifier.last() && !isIndexed(database, *verifier.last(), seq))
            verifier.find(proof::at(Kind::Index, seq));
        return true;
    });
    if (!read && read.error().code != base::Code::StoreDamaged) return read.error();
    if (!read) verifier.find(proof::at(Kind::OtherPlace, verifier.tail().edge.size()));
    CheckReport report;
    if (const auto done = checkTail(database, verifier, previous, report.edgeSize); !done)
        return done.error();
    if (const auto done = checkBlobs(database, *codec, verifier); !done) return done.error();
    static_cast<proof::Report&>(report) = verifier.finish();
    return report;
}

}  // namespace store
