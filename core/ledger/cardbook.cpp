// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/cardbook.h"

#include <algorithm>
#include <map>

#include "ledger/bytes.h"

namespace ledger {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

/// Also names the patient, so that no card is led to another's record.
std::string placeOfCard(const base::LearnerId& learner, const base::PatientId& patient) {
    return "card/" + learner.text() + '/' + patient.text();
}

std::string rowOfCard(const CardRow& card) {
    ByteWriter out;
    out.text(card.json).text(card.sortKey).count(card.searchKeys.size());
    for (const std::string& key : card.searchKeys) out.text(key);
    return out.take();
}

CardKeys keysOf(const CardRow& card) {
    return {card.learner.text(), card.sortKey, card.searchKeys};
}

/// Of cards of the same learner the last one stays.
std::vector<const CardRow*> lastOfEach(const std::vector<CardRow>& cards) {
    std::map<base::LearnerId, const CardRow*> last;
    for (const CardRow& card : cards) last[card.learner] = &card;
    std::vector<const CardRow*> found;
    for (const auto& [learner, card] : last) found.push_back(card);
    return found;
}

std::string textOfKeys(const char* kind, CardKeys keys) {
    std::sort(keys.searchKeys.begin(), keys.searchKeys.end());
    keys.searchKeys.erase(std::unique(keys.searchKeys.begin(), keys.searchKeys.end()),
                          keys.searchKeys.end());
    std::string text = std::string(kind) + '\t' + keys.learner + '\t' + toHex(keys.sortKey);
    for (const std::string& key : keys.searchKeys) text += '\t' + toHex(key);
    return text + '\n';
}

std::string textOfCard(const CardRow& card) {
    return "card\t" + card.learner.text() + '\t' + card.patient.text() + '\t' + card.json + '\n' +
           textOfKeys("row", keysOf(card));
}

}  // namespace

void CardBook::use(std::shared_ptr<Codec> codec) {
    m_codec = codec;
    m_index.use(std::move(codec));
}

base::Result<CardRow> CardBook::open(const StoredCard& stored) const {
    const auto row = m_codec->openRow(placeOfCard(stored.learner, stored.patient), stored.row);
    if (!row) return row.error();
    if (!*row) return Error{Code::SealKeyMissing};
    ByteReader in(**row);
    CardRow card{.learner = stored.learner, .patient = stored.patient};
    card.json = in.text();
    card.sortKey = in.text();
    const std::uint64_t keys = in.countOf(sizeof(std::uint64_t));
    for (std::uint64_t i = 0; i < keys; ++i) card.searchKeys.emplace_back(in.text());
    if (!in.isWhole()) return Error{Code::StoreEdgeWrong};
    return card;
}

base::Result<bool> CardBook::isKept(const RightEdge& edge) {
    if (edge.size() == 0) return true;
    return m_index.isMade(edge);
}

/// Stores one card; whether it is found otherwise than before, which then is among `changes`. Most
/// entries leave name and number of everybody as they were, and the index with them.
base::Result<bool> CardBook::store(const CardRow& card, std::vector<CardIndex::Change>& changes) {
    const auto former = m_shelf.card(card.learner);
    if (!former) return former.error();
    bool isFoundAsBefore = false;
    if (*former) {
        const auto opened = open(**former);
        if (!opened) return opened.error();
        isFoundAsBefore = opened->sortKey == card.sortKey && opened->searchKeys == card.searchKeys;
    }
    auto row = m_codec->closeRow(placeOfCard(card.learner, card.patient), rowOfCard(card));
    if (!row) return row.error();
    if (auto put = m_shelf.putCard({card.learner, card.patient, std::move(*row)}); !put)
        return put.error();
    if (!isFoundAsBefore) changes.push_back({!*former, keysOf(card)});
    return !isFoundAsBefore;
}

Outcome CardBook::put(const std::vector<CardRow>& cards, const RightEdge& before,
                      const RightEdge& after) {
    std::vector<CardIndex::Change> changes;
    for (const CardRow* card : lastOfEach(cards))
        if (const auto stored = store(*card, changes); !stored) return stored.error();
    return m_index.put(changes, before, after);
}

base::Result<CardPage> CardBook::find(const CardQuery& query, const RightEdge& edge) {
    const auto found = m_index.find(query, edge);
    if (!found) return found.error();
    CardPage page{.total = found->total};
    for (const std::string& id : found->learners) {
        const auto learner = base::LearnerId::parse(id);
        if (!learner) return Error{Code::StoreEdgeWrong};
        const auto stored = m_shelf.card(*learner);
        if (!stored) return stored.error();
        if (!*stored) return Error{Code::StoreEdgeWrong};
        auto card = open(**stored);
        if (!card) return card.error();
        page.rows.push_back(std::move(*card));
    }
    return page;
}

Outcome CardBook::rebuild(const std::vector<CardRow>& cards, const RightEdge& edge) {
    if (const auto cleared = m_shelf.clear(); !cleared) return cleared;
    std::vector<CardKeys> keys;
    for (const CardRow* card : lastOfEach(cards)) {
        auto row = m_codec->closeRow(placeOfCard(card->learner, card->patient), rowOfCard(*card));
        if (!row) return row.error();
        if (auto put = m_shelf.putCard({card->learner, card->patient, std::move(*row)}); !put)
            return put;
        keys.push_back(keysOf(*card));
    }
    return m_index.make(std::move(keys), edge);
}

Outcome CardBook::forget(const base::PatientId& patient, const RightEdge& edge) {
    const auto cards = m_shelf.cards();
    if (!cards) return cards.error();
    std::set<std::string> learners;
    for (const StoredCard& card : *cards) {
        if (card.patient != patient) continue;
        learners.insert(card.learner.text());
        if (const auto removed = m_shelf.removeCard(card.learner); !removed) return removed;
    }
    return learners.empty() ? Outcome(Done{}) : m_index.forget(learners, edge);
}

base::Result<std::string> CardBook::text(const RightEdge& edge) {
    const auto cards = m_shelf.cards();
    if (!cards) return cards.error();
    std::string text;
    for (const StoredCard& stored : *cards) {
        const auto card = open(stored);
        if (!card) return card.error();
        text += textOfCard(*card);
    }
    const auto keys = m_index.all(edge);
    if (!keys) return keys.error();
    for (const CardKeys& one : *keys) text += textOfKeys("found", one);
    return text;
}

std::string CardBook::textOf(const std::vector<CardRow>& cards) {
    std::string text, found;
    for (const CardRow* card : lastOfEach(cards)) {
        text += textOfCard(*card);
        found += textOfKeys("found", keysOf(*card));
    }
    return text + found;
}

}  // namespace ledger
