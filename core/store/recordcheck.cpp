// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/recordcheck.h"

#include <set>

#include "ledger/blob.h"
#include "store/values.h"

namespace store {
namespace {

constexpr int entriesAtOnce = 500;

class EntryChecker {
  public:
    EntryChecker(Database& database, const ledger::Lineage& lineage, ledger::Codec& codec,
                 CheckReport& report)
        : m_database(database), m_lineage(lineage), m_codec(codec), m_report(report) {}

    void look(std::uint64_t seq, const std::string& bytes) {
        for (; m_next < seq; ++m_next) find(Damage::Gap, m_next);
        m_next = seq + 1;
        if (!m_lineage.agreesWith(m_tail.edge)) find(Damage::OtherPlace, seq);
        m_tail.edge.append(ledger::leafHash(bytes));
        const auto entry = ledger::readEntry(bytes, m_codec);
        if (!entry) return find(Damage::Unreadable, seq);
        if (entry->seq != seq || entry->ledger != m_lineage.at(seq)) find(Damage::OtherPlace, seq);
        if (entry->tick <= m_tail.tick) find(Damage::TickBack, seq);
        m_tail.tick = std::max(m_tail.tick, entry->tick);
        if (!entry->isOpen)
            ++m_report.closed;
        else if (!m_ids.insert(entry->body.id).second)
            find(Damage::DoubledId, seq);
        if (!isIndexed(*entry, seq)) find(Damage::Index, seq);
    }

    const ledger::Tail& tail() const { return m_tail; }

  private:
    void find(Damage damage, std::uint64_t seq) { m_report.findings.push_back({damage, seq}); }

    bool isIndexed(const ledger::Entry& entry, std::uint64_t seq) const {
        const auto command =
            entry.isOpen
                ? m_database.value("SELECT seq FROM command WHERE id = ?",
                                   {textValue(entry.body.id.text())})
                : m_database.value("SELECT seq FROM command WHERE seq = ?", {countValue(seq)});
        const std::string patient = entry.subject ? entry.subject->text() : std::string();
        const auto subject =
            m_database.value("SELECT seq FROM subject WHERE patient = ? AND seq = ?",
                             {textValue(patient), countValue(seq)});
        return command && command->isValid() && countOf(*command) == seq && subject &&
               subject->isValid();
    }

    Database& m_database;
    const ledger::Lineage& m_lineage;
    ledger::Codec& m_codec;
    CheckReport& m_report;
    ledger::Tail m_tail;
    std::uint64_t m_next = 0;
    std::set<base::CommandId> m_ids;
};

/// Rows that lead to no entry, or an edge that is another.
base::Outcome checkTail(Database& database, const ledger::Tail& tail, CheckReport& report) {
    const auto edge = database.rows("SELECT edge, tick FROM right_edge");
    if (!edge) return edge.error();
    if (edge->size() == 1)
        if (const auto stored = ledger::RightEdge::parse(textOf(edge->front()[0])))
            report.edgeSize = stored->size();
    const bool fits = edge->size() == 1 && textOf(edge->front()[0]) == tail.edge.text() &&
                      countOf(edge->front()[1]) == tail.tick;
    if (!fits) report.findings.push_back({Damage::RightEdge, tail.edge.size()});
    for (const char* sql : {"SELECT seq FROM command WHERE seq NOT IN (SELECT seq FROM entry)",
                            "SELECT seq FROM subject WHERE seq NOT IN (SELECT seq FROM entry)"}) {
        const auto strays = database.rows(sql);
        if (!strays) return strays.error();
        for (const Row& row : *strays)
            report.findings.push_back({Damage::Index, countOf(row.front())});
    }
    return base::Done{};
}

/// A sealed one without its key is left unlooked-at, as an entry is.
base::Outcome checkBlobs(Database& database, ledger::Codec& codec, CheckReport& report) {
    const auto names = database.rows("SELECT rowid, digest FROM blob ORDER BY rowid");
    if (!names) return names.error();
    for (const Row& row : *names) {
        const auto bytes = database.value("SELECT bytes FROM blob WHERE rowid = ?", {row[0]});
        if (!bytes) return bytes.error();
        if (!ledger::openedBlob(codec, textOf(row[1]), bytesOf(*bytes)))
            report.findings.push_back({Damage::Blob, countOf(row[0])});
    }
    return base::Done{};
}

}  // namespace

base::Outcome eachEntry(Database& database, const EntryVisitor& visit) {
    std::uint64_t from = 0;
    for (;;) {
        const auto rows =
            database.rows("SELECT seq, bytes FROM entry WHERE seq >= ? ORDER BY seq LIMIT ?",
                          {countValue(from), entriesAtOnce});
        if (!rows) return rows.error();
        if (rows->empty()) return base::Done{};
        for (const Row& row : *rows) {
            from = countOf(row[0]) + 1;
            if (!visit(from - 1, bytesOf(row[1]))) return base::Done{};
        }
    }
}

base::Result<CheckReport> checkRecord(Database& database, const ledger::Lineage& lineage,
                                      ledger::Codec& codec) {
    CheckReport report;
    EntryChecker checker(database, lineage, codec, report);
    const auto read = eachEntry(database, [&](std::uint64_t seq, const std::string& bytes) {
        checker.look(seq, bytes);
        return true;
    });
    if (!read) return read.error();
    report.head = checker.tail().head();
    if (const auto done = checkTail(database, checker.tail(), report); !done) return done.error();
    if (const auto done = checkBlobs(database, codec, report); !done) return done.error();
    return report;
}

}  // namespace store
