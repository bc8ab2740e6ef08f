// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <map>
#include <random>

#include "ledger/ledger.h"
#include "support/ledgerdrafts.h"

/// The list of learners as plainly as it can be said, to hold a ledger's answers against.
namespace support {

class CardModel {
  public:
    void put(const std::vector<ledger::CardRow>& cards) {
        for (const ledger::CardRow& card : cards) m_cards.insert_or_assign(card.learner, card);
    }
    void forget(const base::PatientId& patient) {
        std::erase_if(m_cards, [&](const auto& one) { return one.second.patient == patient; });
    }
    void clear() { m_cards.clear(); }

    std::vector<ledger::CardRow> all() const {
        std::vector<ledger::CardRow> cards;
        for (const auto& [learner, card] : m_cards) cards.push_back(card);
        return cards;
    }
    ledger::CardPage find(const ledger::CardQuery& query) const {
        std::vector<ledger::CardRow> found = all();
        std::erase_if(found, [&](const auto& card) { return !matches(card, query.words); });
        std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
            return a.sortKey < b.sortKey;  // equal ones stay in the order of their ids
        });
        ledger::CardPage page{.total = found.size()};
        for (std::size_t i = query.offset; i < found.size() && page.rows.size() < query.limit; ++i)
            page.rows.push_back(found[i]);
        return page;
    }

  private:
    static bool matches(const ledger::CardRow& card, const std::vector<std::string>& words) {
        return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
            return word.empty() ||
                   std::any_of(card.searchKeys.begin(), card.searchKeys.end(),
                               [&](const std::string& key) { return key.starts_with(word); });
        });
    }
    std::map<base::LearnerId, ledger::CardRow> m_cards;
};

/// Makes cards and queries whose words have many beginnings in common.
class CardMaker {
  public:
    explicit CardMaker(std::uint32_t seed) : m_random(seed) {}

    std::uint32_t below(std::uint32_t limit) { return m_random() % limit; }
    std::string word() {
        std::string word;
        for (std::uint32_t size = 1 + below(3); word.size() < size;) word += "ab\xff"[below(3)];
        return word;
    }
    ledger::CardRow card() { return renamed(cardOf("", {})); }
    /// The same learner under other words, or some of the same.
    ledger::CardRow renamed(ledger::CardRow card) {
        card.sortKey = word();
        card.searchKeys.clear();
        for (std::uint32_t words = below(4); card.searchKeys.size() < words;)
            card.searchKeys.push_back(word());
        card.json = *ledger::jcs({{"n", below(1000)}});
        return card;
    }
    ledger::CardQuery query(std::size_t cards) {
        ledger::CardQuery query;
        for (std::uint32_t words = below(4); query.words.size() < words;)
            query.words.push_back(below(8) == 0 ? "" : word());
        query.offset = below(3) == 0 ? below(static_cast<std::uint32_t>(cards) + 2) : 0;
        query.limit = below(60);
        return query;
    }

  private:
    std::mt19937 m_random;
};

}  // namespace support
