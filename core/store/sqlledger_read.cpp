// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The reading half of SqlLedger.
#include <algorithm>

#include "ledger/blob.h"
#include "seal/accessrows.h"
#include "store/derived.h"
#include "store/fences.h"
#include "store/meta.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"
#include "store/transaction.h"
#include "store/values.h"

namespace store {

using base::Code;
using base::Error;

base::Result<std::vector<ledger::Entry>> SqlLedger::entries(const char* sql,
                                                            const Values& values) const {
    const auto rows = m_database->rows(sql, values);
    if (!rows) return rows.error();
    std::vector<ledger::Entry> entries;
    for (const Row& row : *rows) {
        const std::uint64_t seq = countOf(row[0]);
        auto entry = ledger::readEntry(bytesOf(row[1]), *m_codec);
        if (!entry || entry->seq != seq || entry->ledger != m_lineage.at(seq))
            return Error{Code::StoreDamaged, {std::to_string(seq)}};
        entries.push_back(std::move(*entry));
    }
    return entries;
}

base::Result<std::vector<ledger::Entry>> SqlLedger::known(
    const std::vector<ledger::Draft>& drafts) const {
    std::vector<ledger::Entry> found;
    for (const ledger::Draft& draft : drafts) {
        auto entry = find(draft.body.id);
        if (!entry) return entry.error();
        if (*entry) found.push_back(std::move(**entry));
    }
    return found;
}

base::Result<std::optional<ledger::Entry>> SqlLedger::find(const base::CommandId& id) const {
    auto found = entries(
        "SELECT entry.seq, bytes FROM command JOIN entry ON entry.seq = command.seq WHERE id = ?",
        {textValue(id.text())});
    if (!found) return found.error();
    if (found->empty()) return std::optional<ledger::Entry>();
    return std::optional<ledger::Entry>(std::move(found->front()));
}

namespace {

const char* const entriesOfSubject =
    "SELECT entry.seq, bytes FROM subject JOIN entry ON entry.seq = subject.seq "
    "WHERE patient = ? ORDER BY subject.seq";

}  // namespace

base::Result<std::vector<ledger::Entry>> SqlLedger::ofSubject(
    const base::PatientId& subject) const {
    return entries(entriesOfSubject, {textValue(subject.text())});
}

base::Result<std::vector<ledger::Entry>> SqlLedger::withoutSubject() const {
    return entries(entriesOfSubject, {textValue("")});
}

base::Result<std::vector<ledger::Entry>> SqlLedger::readFrom(std::uint64_t seq,
                                                             std::size_t limit) const {
    auto found = entries("SELECT seq, bytes FROM entry WHERE seq >= ? ORDER BY seq LIMIT ?",
                         {countValue(seq), countValue(limit)});
    if (!found) return found;
    std::uint64_t next = seq;  // whoever reads on from the last one gets to an end
    for (const ledger::Entry& entry : *found) {
        if (entry.seq < next) return Error{Code::StoreDamaged, {std::to_string(entry.seq)}};
        next = entry.seq + 1;
    }
    return found;
}

base::Result<std::string> SqlLedger::putBlob(const std::string& bytes,
                                             const std::optional<base::PatientId>& subject) {
    if (isReadOnly()) return Error{Code::StoreReadOnly};
    if (m_isSealed && !m_codec->seals()) return Error{Code::SealKeyMissing};
    const auto kept = ledger::keptBlob(*m_codec, bytes, subject);
    if (!kept) return kept.error();
    const auto put =
        m_database->run("INSERT INTO blob (digest, bytes) VALUES (?, ?) ON CONFLICT DO NOTHING",
                        {textValue(kept->digest), bytesValue(kept->stored)});
    if (!put) return put.error();
    return kept->digest;
}

base::Result<std::optional<std::string>> SqlLedger::blob(const std::string& digest) const {
    const auto found =
        m_database->value("SELECT bytes FROM blob WHERE digest = ?", {textValue(digest)});
    if (!found) return found.error();
    if (!found->isValid()) return std::optional<std::string>();
    return ledger::openedBlob(*m_codec, digest, bytesOf(*found));
}

base::Result<ledger::RightEdge> SqlLedger::storedEdge() const {
    const auto text = m_database->value("SELECT edge FROM right_edge");
    if (!text) return text.error();
    if (isReadOnly() && textOf(*text) != m_edgeWhenRead) {
        m_cards.forgetRead();
        m_edgeWhenRead = textOf(*text);
    }
    const auto edge = ledger::RightEdge::parse(textOf(*text));
    if (!edge) return Error{Code::StoreEdgeWrong};
    return *edge;
}

base::Result<Snapshot> SqlLedger::moment() {
    auto moment = Snapshot::begin(*m_database);
    if (!moment || !isReadOnly()) return moment;
    if (const auto fits = verifyTail(); !fits) return fits.error();
    return moment;
}

template <class Read>
auto SqlLedger::atOneMoment(const Read& read) const -> decltype(read(ledger::RightEdge())) {
    if (!isReadOnly()) return read(m_tail.edge);
    const auto moment = Snapshot::begin(*m_database);
    if (!moment) return moment.error();
    const auto edge = storedEdge();
    if (!edge) return edge.error();
    return read(*edge);
}

base::Result<ledger::CardPage> SqlLedger::cards(const ledger::CardQuery& query) const {
    return atOneMoment([&](const ledger::RightEdge& edge) -> base::Result<ledger::CardPage> {
        const auto areKept = m_cards.isKept(edge);
        if (!areKept) return areKept.error();
        if (*areKept) return m_cards.find(query, edge);
        const auto version = foldVersion();
        if (!version) return version.error();
        if (*version != 0) return Error{Code::StoreEdgeWrong};
        return ledger::CardPage{};
    });
}

base::Result<std::optional<ledger::OpenVisitRow>> SqlLedger::openVisit() const {
    const auto rows = m_database->rows("SELECT visit, patient FROM open_visit");
    if (!rows) return rows.error();
    if (rows->empty()) return std::optional<ledger::OpenVisitRow>();
    const auto visit = base::VisitId::parse(textOf(rows->front()[0]));
    const auto patient = base::PatientId::parse(textOf(rows->front()[1]));
    if (!visit || !patient) return Error{Code::StoreEdgeWrong};
    return std::optional<ledger::OpenVisitRow>({*visit, *patient});
}

namespace {

/// `grounds` without what lies in the file. All of it is of one moment, also beside a copy that
/// writes, and the file is locked once instead of for each row.
base::Result<CheckReport> checkedIn(Database& database, proof::Grounds grounds,
                                    const proof::Pace& pace) {
    const auto moment = Snapshot::begin(database);
    if (!moment) return moment.error();
    const auto access = accessRowsIn(database);
    if (!access) return access.error();
    auto rows = seal::readKeyRows(*access);
    if (rows) grounds.rows = std::move(*rows);
    const auto kind = kindOf(database);
    grounds.isOfPatients = kind && *kind == OpenMode::Real;
    const auto isOurs = hasOurFences(database);
    if (!isOurs) return isOurs.error();
    auto report = checkRecord(database, std::move(grounds), pace);
    // Without them nobody signs in; what can be seen is looked at all the same.
    const auto told = proof::at(proof::Kind::KeysChanged, 0);
    constexpr std::uint64_t one = 1;
    if (report && !rows && std::count(report->findings.begin(), report->findings.end(), told) == 0)
        report->findings.push_back(told);
    if (report && !*isOurs)
        report->findings.push_back(
            {proof::Kind::Fences, 0, std::max(report->head.size, one) - one});
    return report;
}

}  // namespace

base::Result<std::vector<ledger::AccessRow>> SqlLedger::access() const {
    return accessRowsIn(*m_database);
}

ledger::Remains SqlLedger::remains() const {
    return {copiesBeside(m_database->path()), m_keepsFormerKeys};
}

base::Result<int> SqlLedger::foldVersion() const {
    const auto version = m_database->value("SELECT version FROM fold");
    if (!version) return version.error();
    return version->toInt();
}

base::Result<CheckReport> SqlLedger::check(const std::vector<proof::KnownHead>& heads,
                                           const std::shared_ptr<const seal::Keyring>& ring,
                                           const proof::Pace& pace) const {
    return checkedIn(*m_database,
                     {.lineage = m_lineage, .codec = m_codec, .ring = ring, .heads = heads}, pace);
}

base::Result<CheckReport> SqlLedger::checkFile(const std::string& path, OpenMode mode,
                                               const std::vector<proof::KnownHead>& heads) {
    const auto database = readable(path, Access::ReadOnly);
    if (!database) return database.error();
    const auto lineage = identify(**database, mode);
    if (!lineage) return lineage.error();
    return checkedIn(**database, {.lineage = *lineage, .heads = heads}, {});
}

base::Result<std::optional<ledger::Head>> SqlLedger::headAt(std::uint64_t size) const {
    const auto roots = rootsOf(*m_database, {size});
    if (!roots) return roots.error();
    if (roots->empty()) return std::optional<ledger::Head>();
    return std::optional<ledger::Head>({size, roots->begin()->second});
}

/// Says in a word why there is no text, where that is nothing of the disk's.
base::Result<std::string> SqlLedger::cardText(const ledger::RightEdge& edge) const {
    auto text = m_cards.text(edge);
    if (text) return text;
    const Code code = text.error().code;
    if (code == Code::SealKeyMissing) return std::string("cards\tclosed\n");
    if (code == Code::SealRefused || code == Code::StoreEdgeWrong)
        return std::string("cards\twrong\n");
    return text;
}

base::Result<bool> SqlLedger::areDerived(const ledger::Derived& all) const {
    if (m_isSealed && !m_codec->seals()) return Error{Code::SealKeyMissing};
    return atOneMoment([&](const ledger::RightEdge& edge) -> base::Result<bool> {
        const auto shown = shownText(*m_database);
        if (!shown) return shown.error();
        const auto cards = cardText(edge);
        if (!cards) return cards.error();
        return *shown == shownTextOf(all) && *cards == ledger::CardBook::textOf(all.cards);
    });
}

base::Result<std::string> SqlLedger::derivedRows() const {
    return atOneMoment([&](const ledger::RightEdge& edge) -> base::Result<std::string> {
        const auto index = indexText(*m_database);
        if (!index) return index.error();
        const auto cards = cardText(edge);
        if (!cards) return cards.error();
        const auto shown = shownText(*m_database);
        if (!shown) return shown.error();
        return *index + *cards + *shown;
    });
}

}  // namespace store
