// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/append/rawappend.h"

#include "bench/people/fillledger.h"
#include "ledger/memoryledger.h"

namespace bench {
namespace {

enum Statement { Begin, Known, Entry, Command, Subject, Edge, Gone, Card, Key, Fold, Commit };

const char* const statements[] = {
    "BEGIN IMMEDIATE",
    "SELECT entry.seq, bytes FROM command JOIN entry ON entry.seq = command.seq WHERE id = ?",
    "INSERT INTO entry (seq, bytes) VALUES (?, ?)",
    "INSERT INTO command (id, seq) VALUES (?, ?)",
    "INSERT INTO subject (patient, seq) VALUES (?, ?)",
    "INSERT INTO right_edge (one, edge, previous, tick) VALUES (1, ?, ?, ?) "
    "ON CONFLICT (one) DO UPDATE SET edge = excluded.edge, previous = excluded.previous, "
    "tick = excluded.tick",
    "DELETE FROM card WHERE learner = ?",
    "INSERT INTO card (learner, patient, sort_key, json) VALUES (?, ?, ?, ?)",
    "INSERT INTO search_key (key, learner) VALUES (?, ?) ON CONFLICT DO NOTHING",
    "INSERT INTO fold (one, version) VALUES (1, ?) "
    "ON CONFLICT (one) DO UPDATE SET version = excluded.version",
    "COMMIT"};

/// The tail of the entries in this file.
ledger::Tail tailOf(RawDatabase& database) {
    ledger::Tail tail;
    RawStatement edge(database.handle(), "SELECT edge FROM right_edge");
    if (!edge.hasRow()) return tail;
    if (auto parsed = ledger::RightEdge::parse(edge.bytesAt(0))) tail.edge = *parsed;
    return tail;
}

}  // namespace

std::size_t RawRows::bytes() const {
    std::size_t all = command.size() * 2 + patient.size() * 2 + entry.size() + edge.size() +
                      previous.size() + card.sortKey.size() + card.json.size() + 26;
    for (const std::string& key : card.searchKeys) all += key.size() + 26;
    return all;
}

RawAppend::RawAppend(const std::string& path)
    : m_database(std::make_unique<RawDatabase>(path)),
      m_name(std::make_unique<ledger::MemoryLedger>()) {
    if (!m_database->isGood()) return;
    m_tail = tailOf(*m_database);
    for (const char* sql : statements)
        m_statements.push_back(std::make_unique<RawStatement>(m_database->handle(), sql));
}

RawRows RawAppend::rowsFor(int number) {
    PersonDrafts person = personDrafts(*m_name, number, noon());
    person.drafts.erase(person.drafts.begin(), person.drafts.end() - 1);
    RawRows rows;
    rows.previous = m_tail.edge.text();
    const auto written =
        ledger::extend(m_tail, m_name->id(), person.drafts, noon(), *ledger::plainCodec());
    if (!written) return rows;
    const ledger::WrittenEntry& one = written->front();
    rows.command = one.entry.body.id.text();
    rows.patient = one.entry.subject->text();
    rows.entry = one.bytes;
    rows.seq = one.entry.seq;
    rows.edge = m_tail.edge.text();
    rows.tick = m_tail.tick;
    rows.card = person.derived.cards.front();
    return rows;
}

bool RawAppend::write(const RawRows& rows) {
    const auto at = [this](Statement one) -> RawStatement& { return *m_statements[one]; };
    const std::string learner = rows.card.learner.text(), patient = rows.card.patient.text();
    bool isGood = at(Begin).run() && at(Known).text(1, rows.command).run() &&
                  at(Entry).count(1, rows.seq).blob(2, rows.entry).run() &&
                  at(Command).text(1, rows.command).count(2, rows.seq).run() &&
                  at(Subject).text(1, rows.patient).count(2, rows.seq).run() &&
                  at(Edge).text(1, rows.edge).text(2, rows.previous).count(3, rows.tick).run() &&
                  at(Gone).text(1, learner).run() &&
                  at(Card)
                      .text(1, learner)
                      .text(2, patient)
                      .blob(3, rows.card.sortKey)
                      .text(4, rows.card.json)
                      .run();
    for (const std::string& key : rows.card.searchKeys)
        isGood = isGood && at(Key).blob(1, key).text(2, learner).run();
    return isGood && at(Fold).count(1, 1).run() && at(Commit).run();
}

}  // namespace bench
