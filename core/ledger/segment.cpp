// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/segment.h"

#include <algorithm>
#include <bit>
#include <cstring>

#include "ledger/bytes.h"

namespace ledger {
namespace {

constexpr std::size_t learnerSize = 26;
constexpr std::size_t numberSize = sizeof(std::uint32_t);

/// Whether the ends of so many texts never step back and the last is that of them all.
bool areEnds(const char* ends, std::uint32_t count, std::uint32_t size) {
    std::uint32_t before = 0;
    for (std::uint32_t i = 0; i < count; ++i) {
        std::uint32_t end = 0;
        std::memcpy(&end, ends + i * numberSize, numberSize);
        if (end < before) return false;
        before = end;
    }
    return before == size;
}

bool areBelow(const char* numbers, std::uint32_t count, std::uint32_t limit) {
    std::uint32_t most = 0;
    for (std::uint32_t i = 0; i < count; ++i) {
        std::uint32_t number = 0;
        std::memcpy(&number, numbers + i * numberSize, numberSize);
        most = std::max(most, number);
    }
    return count == 0 || most < limit;
}

}  // namespace

RankSet RankSet::ofAll(std::uint32_t ranks) {
    RankSet all(ranks);
    for (std::uint64_t& word : all.m_words) word = ~std::uint64_t{0};
    if (ranks % 64 != 0) all.m_words.back() >>= 64 - ranks % 64;
    return all;
}

void RankSet::intersect(const RankSet& other) {
    for (std::size_t i = 0; i < m_words.size(); ++i) m_words[i] &= other.m_words[i];
}

void RankSet::remove(const RankSet& other) {
    for (std::size_t i = 0; i < m_words.size(); ++i) m_words[i] &= ~other.m_words[i];
}

std::uint64_t RankSet::size() const {
    std::uint64_t count = 0;
    for (const std::uint64_t word : m_words) count += static_cast<unsigned>(std::popcount(word));
    return count;
}

std::optional<std::uint32_t> RankSet::from(std::uint32_t rank) const {
    std::size_t i = rank / 64;
    if (i >= m_words.size()) return std::nullopt;
    std::uint64_t word = m_words[i] >> (rank % 64) << (rank % 64);
    while (word == 0)
        if (++i < m_words.size())
            word = m_words[i];
        else
            return std::nullopt;
    return static_cast<std::uint32_t>(i * 64 + static_cast<unsigned>(std::countr_zero(word)));
}

std::string afterPrefix(std::string word) {
    while (!word.empty() && static_cast<unsigned char>(word.back()) == 0xff) word.pop_back();
    if (!word.empty()) word.back() = static_cast<char>(static_cast<unsigned char>(word.back()) + 1);
    return word;
}

Segment::~Segment() { wipe(m_bytes); }

base::Result<std::shared_ptr<const Segment>> Segment::read(std::string bytes) {
    const std::shared_ptr<Segment> segment(new Segment(std::move(bytes)));
    if (!segment->layOut() || !segment->isSound()) return base::Error{base::Code::StoreEdgeWrong};
    return std::shared_ptr<const Segment>(segment);
}

bool Segment::layOut() {
    if (m_bytes.size() < sizeof m_head) return false;
    std::memcpy(&m_head, m_bytes.data(), sizeof m_head);
    if (m_head.mark != segmentMark) return false;
    std::size_t at = sizeof m_head;
    const auto take = [&](std::size_t size) {
        const char* const begin = m_bytes.data() + std::min(at, m_bytes.size());
        at += size;
        return begin;
    };
    m_sortEnds = take(m_head.cards * numberSize);
    m_byLearner = take(m_head.cards * numberSize);
    m_wordEnds = take(m_head.words * numberSize);
    m_holderEnds = take(m_head.words * numberSize);
    m_holders = take(m_head.holders * numberSize);
    m_sorts = take(m_head.sortBytes);
    m_texts = take(m_head.wordBytes);
    m_learners = take(m_head.cards * learnerSize);
    return at == m_bytes.size();
}

bool Segment::isSound() const {
    return areEnds(m_sortEnds, m_head.cards, m_head.sortBytes) &&
           areEnds(m_wordEnds, m_head.words, m_head.wordBytes) &&
           areEnds(m_holderEnds, m_head.words, m_head.holders) &&
           areBelow(m_byLearner, m_head.cards, m_head.cards) &&
           areBelow(m_holders, m_head.holders, m_head.cards);
}

std::uint32_t Segment::at(const char* array, std::uint32_t index) const {
    std::uint32_t number = 0;
    std::memcpy(&number, array + index * numberSize, numberSize);
    return number;
}

std::string_view Segment::part(const char* ends, const char* texts, std::uint32_t index) const {
    const std::uint32_t begin = index == 0 ? 0 : at(ends, index - 1);
    return {texts + begin, at(ends, index) - begin};
}

std::string_view Segment::learner(std::uint32_t rank) const {
    return {m_learners + rank * learnerSize, learnerSize};
}

std::pair<std::uint32_t, std::uint32_t> Segment::holders(std::uint32_t place) const {
    return {place == 0 ? 0 : at(m_holderEnds, place - 1), at(m_holderEnds, place)};
}

std::optional<std::uint32_t> Segment::rankOf(std::string_view asked) const {
    std::uint32_t low = 0, high = m_head.cards;
    while (low < high) {
        const std::uint32_t middle = low + (high - low) / 2;
        if (learner(byLearner(middle)) < asked)
            low = middle + 1;
        else
            high = middle;
    }
    if (low == m_head.cards || learner(byLearner(low)) != asked) return std::nullopt;
    return byLearner(low);
}

/// The place of the first word that is not before this one.
std::uint32_t Segment::firstFrom(std::string_view asked) const {
    std::uint32_t low = 0, high = m_head.words;
    while (low < high) {
        const std::uint32_t middle = low + (high - low) / 2;
        if (word(middle) < asked)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

std::uint32_t Segment::endOf(std::string_view prefix) const {
    const std::string after = afterPrefix(std::string(prefix));
    return after.empty() ? m_head.words : firstFrom(after);
}

RankSet Segment::beginning(std::string_view prefix) const {
    RankSet found(m_head.cards);
    const std::uint32_t first = firstFrom(prefix);
    const std::uint32_t last = endOf(prefix);
    if (first >= last) return found;
    // The holders of neighbours lie beside each other.
    const std::uint32_t end = holders(last - 1).second;
    for (std::uint32_t i = holders(first).first; i < end; ++i) found.insert(holder(i));
    return found;
}

}  // namespace ledger
