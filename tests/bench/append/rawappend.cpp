// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/append/rawappend.h"

#include "bench/people/fillledger.h"
#include "ledger/bodytext.h"
#include "seal/signature.h"

namespace bench {
namespace {

enum Statement {
    Begin,
    Known,
    Entry,
    Command,
    Subject,
    Edge,
    Former,
    Card,
    Put,
    Gone,
    Fold,
    Commit,
    FormerKey,
    Key
};

const char* const statements[] = {
    "BEGIN IMMEDIATE",
    "SELECT entry.seq, bytes FROM command JOIN entry ON entry.seq = command.seq WHERE id = ?",
    "INSERT INTO entry (seq, bytes) VALUES (?, ?)",
    "INSERT INTO command (id, seq) VALUES (?, ?)",
    "INSERT INTO subject (patient, seq) VALUES (?, ?)",
    "INSERT INTO right_edge (one, edge, previous, tick) VALUES (1, ?, ?, ?) "
    "ON CONFLICT (one) DO UPDATE SET edge = excluded.edge, previous = excluded.previous, "
    "tick = excluded.tick",
    "SELECT learner, patient, bytes FROM card WHERE learner = ?",
    "INSERT INTO card (learner, patient, bytes) VALUES (?, ?, ?) ON CONFLICT (learner) "
    "DO UPDATE SET patient = excluded.patient, bytes = excluded.bytes",
    "INSERT INTO segment (name, bytes) VALUES (?, ?) "
    "ON CONFLICT (name) DO UPDATE SET bytes = excluded.bytes",
    "DELETE FROM segment WHERE name = ?",
    "INSERT INTO fold (one, version) VALUES (1, ?) "
    "ON CONFLICT (one) DO UPDATE SET version = excluded.version",
    "COMMIT",
    "SELECT id, patient, text FROM subject_key WHERE patient = ? ORDER BY place DESC LIMIT 1",
    "INSERT OR REPLACE INTO subject_key (id, patient, text) VALUES (?, ?, ?)"};

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
    std::size_t all =
        command.size() * 2 + patient.size() * 2 + entry.size() + edge.size() + previous.size();
    for (const ShelfStep& step : steps)
        all += step.name.size() + step.patient.size() + step.bytes.size();
    return all;
}

RawAppend::RawAppend(const std::string& path, std::shared_ptr<const seal::Keyring> ring)
    : m_database(std::make_unique<RawDatabase>(path)),
      m_name(std::make_unique<ledger::MemoryLedger>()),
      m_ring(std::move(ring)) {
    if (!m_database->isGood()) return;
    if (m_ring) m_codec = std::make_shared<seal::SealingCodec>(m_ring, m_keys);
    m_cards.use(m_codec);
    m_tail = tailOf(*m_database);
    RawStatement segments(m_database->handle(), "SELECT name, bytes FROM segment");
    while (segments.hasRow()) m_shelf.stored()[segments.bytesAt(0)] = segments.bytesAt(1);
    for (const char* sql : statements)
        m_statements.push_back(std::make_unique<RawStatement>(m_database->handle(), sql));
}

RawRows RawAppend::rowsFor(int number) {
    PersonDrafts person = lastEntryOf(personDrafts(*m_name, number, noon()));
    RawRows rows;
    if (m_ring && !seal::addSignature(person.drafts[0].body, *m_ring->identity(), m_name->id(),
                                      seal::Purpose::Author))
        return rows;
    rows.previous = m_tail.edge.text();
    const ledger::RightEdge before = m_tail.edge;
    const auto written = ledger::extend(m_tail, m_name->id(), person.drafts, noon(), *m_codec);
    m_shelf.steps.clear();
    if (!written || !m_cards.put(person.derived.cards, before, m_tail.edge)) return rows;
    const ledger::WrittenEntry& one = written->front();
    rows.command = one.entry.body.id.text();
    rows.patient = one.entry.subject->text();
    rows.entry = one.bytes;
    rows.seq = one.entry.seq;
    rows.edge = m_tail.edge.text();
    rows.tick = m_tail.tick;
    rows.steps = m_shelf.steps;
    if (m_ring) addSealed(rows, one);
    return rows;
}

void RawAppend::addSealed(RawRows& rows, const ledger::WrittenEntry& one) {
    // Without the mark, the id of the epoch, nonce and tag; 32 zeros and one byte of padding.
    constexpr std::size_t more = ledger::sealedRowMark.size() + 26 + 24 + 16 + 33;
    if (const auto key = m_keys.ofSubject(*one.entry.subject); key && *key) {
        rows.keyId = (*key)->id;
        rows.keyText = (*key)->text;
    }
    if (const auto body = ledger::bodyText(one.entry.body, ledger::Signatures::With))
        rows.body = *body;
    for (const ShelfStep& step : rows.steps)
        if (step.bytes.size() > more) rows.plain.emplace_back(step.bytes.size() - more, 'x');
}

bool RawAppend::putKey(const RawRows& rows) {
    return rows.keyId.empty() ||
           (at(FormerKey).text(1, rows.patient).run() &&
            at(Key).text(1, rows.keyId).text(2, rows.patient).text(3, rows.keyText).run());
}

bool RawAppend::runStep(const ShelfStep& step) {
    switch (step.kind) {
        case ShelfStep::Kind::PutCard:
            return at(Former).text(1, step.name).run() &&
                   at(Card).text(1, step.name).text(2, step.patient).blob(3, step.bytes).run();
        case ShelfStep::Kind::PutSegment:
            return at(Put).text(1, step.name).blob(2, step.bytes).run();
        case ShelfStep::Kind::RemoveSegment:
            return at(Gone).text(1, step.name).run();
    }
    return false;
}

bool RawAppend::write(const RawRows& rows) {
    bool isGood = !rows.steps.empty() && at(Begin).run() && at(Known).text(1, rows.command).run() &&
                  putKey(rows) && at(Entry).count(1, rows.seq).blob(2, rows.entry).run() &&
                  at(Command).text(1, rows.command).count(2, rows.seq).run() &&
                  at(Subject).text(1, rows.patient).count(2, rows.seq).run() &&
                  at(Edge).text(1, rows.edge).text(2, rows.previous).count(3, rows.tick).run();
    for (const ShelfStep& step : rows.steps) isGood = isGood && runStep(step);
    return isGood && at(Fold).count(1, 1).run() && at(Commit).run();
}

}  // namespace bench
