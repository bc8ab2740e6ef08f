// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/derived.h"

#include "store/values.h"

namespace store {
namespace {

/// Runs the statements one after the other until one fails.
base::Outcome runAll(Database& database, std::initializer_list<const char*> statements) {
    for (const char* sql : statements)
        if (const auto done = database.run(sql); !done) return done;
    return base::Done{};
}

base::Outcome putAccess(Database& database, const ledger::AccessRow& row) {
    if (row.text.empty())
        return database.run("DELETE FROM access WHERE kind = ? AND id = ?",
                            {textValue(row.kind), textValue(row.id)});
    return database.putOne(
        "INSERT INTO access (kind, id, text) VALUES (?, ?, ?) "
        "ON CONFLICT (kind, id) DO UPDATE SET text = excluded.text",
        {textValue(row.kind), textValue(row.id), textValue(row.text)});
}

base::Outcome putSubject(Database& database, const ledger::Entry& entry) {
    const std::string patient = entry.subject ? entry.subject->text() : std::string();
    return database.putOne("INSERT INTO subject (patient, seq) VALUES (?, ?)",
                           {textValue(patient), countValue(entry.seq)});
}

}  // namespace

base::Outcome putIndex(Database& database, const ledger::Entry& entry) {
    const auto command = database.putOne("INSERT INTO command (id, seq) VALUES (?, ?)",
                                         {textValue(entry.body.id.text()), countValue(entry.seq)});
    if (!command) return command;
    return putSubject(database, entry);
}

base::Outcome remakeIndex(Database& database, const ledger::Entry& entry) {
    if (!entry.isOpen) return putSubject(database, entry);
    const auto cleared = database.run("DELETE FROM command WHERE id = ? OR seq = ?",
                                      {textValue(entry.body.id.text()), countValue(entry.seq)});
    if (!cleared) return cleared;
    return putIndex(database, entry);
}

base::Outcome putTail(Database& database, const ledger::Tail& tail,
                      const ledger::RightEdge& previous) {
    return database.putOne(
        "INSERT INTO right_edge (one, edge, previous, tick) VALUES (1, ?, ?, ?) "
        "ON CONFLICT (one) DO UPDATE SET edge = excluded.edge, previous = excluded.previous, "
        "tick = excluded.tick",
        {textValue(tail.edge.text()), textValue(previous.text()), countValue(tail.tick)});
}

base::Outcome putDerived(Database& database, const ledger::Derived& derived) {
    for (const ledger::AccessRow& row : derived.access)
        if (const auto done = putAccess(database, row); !done) return done;
    if (derived.setsOpenVisit) {
        if (const auto done = database.run("DELETE FROM open_visit"); !done) return done;
        if (derived.openVisit) {
            const auto done =
                database.run("INSERT INTO open_visit (one, visit, patient) VALUES (1, ?, ?)",
                             {textValue(derived.openVisit->visit.text()),
                              textValue(derived.openVisit->patient.text())});
            if (!done) return done;
        }
    }
    return base::Done{};
}

base::Outcome putFold(Database& database, int version) {
    return database.run(
        "INSERT INTO fold (one, version) VALUES (1, ?) "
        "ON CONFLICT (one) DO UPDATE SET version = excluded.version",
        {version});
}

base::Result<std::vector<ledger::AccessRow>> accessRowsIn(Database& database) {
    const auto found = database.rows("SELECT kind, id, text FROM access ORDER BY kind, id");
    if (!found) return found.error();
    std::vector<ledger::AccessRow> rows;
    for (const Row& row : *found) rows.push_back({textOf(row[0]), textOf(row[1]), textOf(row[2])});
    return rows;
}

base::Outcome clearDerived(Database& database) {
    return runAll(database, {"DELETE FROM open_visit", "DELETE FROM fold"});
}

base::Outcome clearIndex(Database& database) {
    return runAll(database, {"DELETE FROM command WHERE seq NOT IN (SELECT seq FROM entry)",
                             "DELETE FROM subject", "DELETE FROM right_edge"});
}

namespace {

// Texts are ordered by their bytes, as std::string is.
const std::initializer_list<const char*> indexRows = {
    "SELECT 'command', id, seq FROM command ORDER BY id",
    "SELECT 'subject', patient, seq FROM subject ORDER BY patient, seq",
    "SELECT 'edge', edge, previous, tick FROM right_edge"};
const std::initializer_list<const char*> shownRows = {
    "SELECT 'visit', visit, patient FROM open_visit", "SELECT 'fold', version FROM fold"};

base::Outcome addRows(Database& database, std::initializer_list<const char*> queries,
                      std::string& text) {
    for (const char* sql : queries) {
        const auto rows = database.rows(sql);
        if (!rows) return rows.error();
        for (const Row& row : *rows) {
            for (const QVariant& column : row) text += textOf(column) + '\t';
            text.back() = '\n';
        }
    }
    return base::Done{};
}

}  // namespace

base::Result<std::string> indexText(Database& database) {
    std::string text;
    if (const auto read = addRows(database, indexRows, text); !read) return read.error();
    return text;
}

base::Result<std::string> shownText(Database& database) {
    std::string text;
    if (const auto read = addRows(database, shownRows, text); !read) return read.error();
    return text;
}

std::string shownTextOf(const ledger::Derived& all) {
    std::string text;
    if (all.openVisit)
        text +=
            "visit\t" + all.openVisit->visit.text() + '\t' + all.openVisit->patient.text() + '\n';
    return text + "fold\t" + std::to_string(all.foldVersion) + '\n';
}

}  // namespace store
