// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/derived.h"

#include <map>
#include <set>

#include "store/values.h"

namespace store {
namespace {

/// Runs the statements one after the other until one fails.
base::Outcome runAll(Database& database, std::initializer_list<const char*> statements) {
    for (const char* sql : statements)
        if (const auto done = database.run(sql); !done) return done;
    return base::Done{};
}

base::Outcome putCard(Database& database, const ledger::CardRow& card) {
    const QVariant learner = textValue(card.learner.text());
    // Its search keys go with it.
    if (const auto done = database.run("DELETE FROM card WHERE learner = ?", {learner}); !done)
        return done;
    const auto put = database.run(
        "INSERT INTO card (learner, patient, sort_key, json) VALUES (?, ?, ?, ?)",
        {learner, textValue(card.patient.text()), bytesValue(card.sortKey), textValue(card.json)});
    if (!put) return put;
    for (const std::string& key : card.searchKeys) {
        const auto done = database.run(
            "INSERT INTO search_key (key, learner) VALUES (?, ?) ON CONFLICT DO NOTHING",
            {bytesValue(key), learner});
        if (!done) return done;
    }
    return base::Done{};
}

base::Outcome putAccess(Database& database, const ledger::AccessRow& row) {
    if (row.text.empty())
        return database.run("DELETE FROM access WHERE kind = ? AND id = ?",
                            {textValue(row.kind), textValue(row.id)});
    return database.run(
        "INSERT INTO access (kind, id, text) VALUES (?, ?, ?) "
        "ON CONFLICT (kind, id) DO UPDATE SET text = excluded.text",
        {textValue(row.kind), textValue(row.id), textValue(row.text)});
}

/// The least bytes that come after everything that begins with `word`; empty when nothing does.
std::string afterPrefix(std::string word) {
    while (!word.empty() && static_cast<unsigned char>(word.back()) == 0xff) word.pop_back();
    if (!word.empty()) word.back() = static_cast<char>(static_cast<unsigned char>(word.back()) + 1);
    return word;
}

/// One range of search_key's keys for each word, with what goes around it and between two of them.
std::string around(const std::vector<std::string>& ranges, const char* between, const char* start,
                   const char* end) {
    std::string all;
    for (const std::string& range : ranges)
        all += (all.empty() ? "" : between) + (start + range) + end;
    return all;
}

/// A page of the cards that are `which`.
std::string pageOf(const std::string& which) {
    return "SELECT learner, patient, sort_key, json FROM card" +
           (which.empty() ? which : " WHERE " + which) +
           " ORDER BY sort_key, learner LIMIT ? OFFSET ?";
}

base::Result<ledger::CardRow> cardRow(const Row& row) {
    auto learner = base::LearnerId::parse(textOf(row[0]));
    auto patient = base::PatientId::parse(textOf(row[1]));
    if (!learner || !patient) return base::Error{base::Code::StoreEdgeWrong};
    return ledger::CardRow{.learner = *learner,
                           .patient = *patient,
                           .sortKey = bytesOf(row[2]),
                           .searchKeys = {},
                           .json = textOf(row[3])};
}

base::Outcome putSubject(Database& database, const ledger::Entry& entry) {
    const std::string patient = entry.subject ? entry.subject->text() : std::string();
    return database.run("INSERT INTO subject (patient, seq) VALUES (?, ?)",
                        {textValue(patient), countValue(entry.seq)});
}

}  // namespace

base::Outcome putIndex(Database& database, const ledger::Entry& entry) {
    const auto command = database.run("INSERT INTO command (id, seq) VALUES (?, ?)",
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
    return database.run(
        "INSERT INTO right_edge (one, edge, previous, tick) VALUES (1, ?, ?, ?) "
        "ON CONFLICT (one) DO UPDATE SET edge = excluded.edge, previous = excluded.previous, "
        "tick = excluded.tick",
        {textValue(tail.edge.text()), textValue(previous.text()), countValue(tail.tick)});
}

base::Outcome putDerived(Database& database, const ledger::Derived& derived) {
    for (const ledger::CardRow& card : derived.cards)
        if (const auto done = putCard(database, card); !done) return done;
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
    return database.run(
        "INSERT INTO fold (one, version) VALUES (1, ?) "
        "ON CONFLICT (one) DO UPDATE SET version = excluded.version",
        {derived.foldVersion});
}

base::Outcome clearDerived(Database& database) {
    // The count is set to none whatever it was; card's triggers count from there.
    return runAll(database, {"DELETE FROM search_key", "DELETE FROM card", "DELETE FROM card_count",
                             "INSERT INTO card_count (one, cards) VALUES (1, 0)",
                             "DELETE FROM open_visit", "DELETE FROM fold"});
}

base::Outcome clearIndex(Database& database) {
    return runAll(database, {"DELETE FROM command WHERE seq NOT IN (SELECT seq FROM entry)",
                             "DELETE FROM subject", "DELETE FROM right_edge"});
}

CardSearch cardSearch(const std::vector<std::string>& words) {
    CardSearch search;
    std::vector<std::string> ranges;
    for (const std::string& word : words) {
        if (word.empty() || ranges.size() >= mostWords) continue;
        const std::string after = afterPrefix(word);
        ranges.push_back(after.empty() ? "key >= ? AND key >= ?" : "key >= ? AND key < ?");
        search.words.push_back(bytesValue(word));
        search.words.push_back(bytesValue(after.empty() ? word : after));
    }
    // Of all cards the number is kept, so that no start counts them.
    search.count = ranges.empty()
                       ? "SELECT cards FROM card_count"
                       : "SELECT count(*) FROM (" +
                             around(ranges, " INTERSECT ",
                                    "SELECT DISTINCT learner FROM search_key WHERE ", "") +
                             ")";
    search.fewPage =
        pageOf(around(ranges, " AND ", "learner IN (SELECT learner FROM search_key WHERE ", ")"));
    search.manyPage = pageOf(around(
        ranges, " AND ",
        "EXISTS (SELECT 1 FROM search_key WHERE search_key.learner = card.learner AND ", ")"));
    return search;
}

base::Result<ledger::CardPage> findCards(Database& database, const ledger::CardQuery& query) {
    const CardSearch search = cardSearch(query.words);
    const auto count = database.rows(search.count, search.words);
    if (!count) return count.error();
    if (count->empty()) return base::Error{base::Code::StoreEdgeWrong};
    ledger::CardPage page{.total = countOf(count->front().front())};
    Values values = search.words;
    values.push_back(query.limit);
    values.push_back(query.offset);
    const auto rows =
        database.rows(page.total < manyMatches ? search.fewPage : search.manyPage, values);
    if (!rows) return rows.error();
    for (const Row& row : *rows) {
        auto card = cardRow(row);
        if (!card) return card.error();
        page.rows.push_back(std::move(*card));
    }
    return page;
}

namespace {

// Texts are ordered by their bytes, as std::string is.
const std::initializer_list<const char*> indexRows = {
    "SELECT 'command', id, seq FROM command ORDER BY id",
    "SELECT 'subject', patient, seq FROM subject ORDER BY patient, seq",
    "SELECT 'edge', edge, previous, tick FROM right_edge"};
const std::initializer_list<const char*> shownRows = {
    "SELECT 'card', learner, patient, hex(sort_key), json FROM card ORDER BY learner",
    "SELECT 'cards', cards FROM card_count",
    "SELECT 'key', hex(key), learner FROM search_key ORDER BY key, learner",
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

std::string hexOf(const std::string& bytes) {
    return QByteArray::fromStdString(bytes).toHex().toUpper().toStdString();
}

/// The text addRows() gives for shownRows when these are the rows.
std::string shownText(const ledger::Derived& all) {
    std::map<std::string, std::string> cards;
    std::set<std::pair<std::string, std::string>> keys;
    for (const ledger::CardRow& card : all.cards) {
        const std::string& learner = card.learner.text();
        cards[learner] = "card\t" + learner + '\t' + card.patient.text() + '\t' +
                         hexOf(card.sortKey) + '\t' + card.json + '\n';
        for (const std::string& key : card.searchKeys) keys.insert({key, learner});
    }
    std::string text;
    for (const auto& [learner, line] : cards) text += line;
    text += "cards\t" + std::to_string(cards.size()) + '\n';
    for (const auto& [key, learner] : keys) text += "key\t" + hexOf(key) + '\t' + learner + '\n';
    if (all.openVisit)
        text +=
            "visit\t" + all.openVisit->visit.text() + '\t' + all.openVisit->patient.text() + '\n';
    return text + "fold\t" + std::to_string(all.foldVersion) + '\n';
}

}  // namespace

base::Result<std::string> derivedText(Database& database) {
    std::string text;
    for (const auto& queries : {indexRows, shownRows})
        if (const auto read = addRows(database, queries, text); !read) return read.error();
    return text;
}

base::Result<bool> areDerived(Database& database, const ledger::Derived& all) {
    std::string text;
    if (const auto read = addRows(database, shownRows, text); !read) return read.error();
    return text == shownText(all);
}

}  // namespace store
