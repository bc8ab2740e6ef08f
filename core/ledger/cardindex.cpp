// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/cardindex.h"

#include <algorithm>

#include "ledger/bytes.h"

namespace ledger {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;
using SegmentId = base::Id<struct SegmentTag>;

const std::string manifestName = "cards";
const std::string manifestMark = "cards-1";
/// A segment is at least so many times as large as all newer ones.
constexpr std::uint64_t growth = 4;
constexpr std::size_t mostInFront = 256;
constexpr std::size_t leastInFront = 128;

std::string placeOf(const std::string& name) { return "segment/" + name; }

Head headOf(const RightEdge& edge) { return {edge.size(), toHex(edge.root())}; }

/// Of each segment the cards that a later one of the list has too.
std::vector<RankSet> deadAmong(const std::vector<const Segment*>& segments) {
    std::vector<RankSet> dead;
    for (const Segment* segment : segments) dead.emplace_back(segment->cards());
    for (std::size_t newer = 1; newer < segments.size(); ++newer)
        for (std::uint32_t rank = 0; rank < segments[newer]->cards(); ++rank)
            for (std::size_t older = 0; older < newer; ++older)
                if (const auto found = segments[older]->rankOf(segments[newer]->learner(rank)))
                    dead[older].insert(*found);
    return dead;
}

}  // namespace

void CardIndex::use(std::shared_ptr<Codec> codec) {
    close();
    m_codec = std::move(codec);
}

void CardIndex::close() {
    for (Place& place : m_front) wipe(place.sortKey);
    m_front.clear();
    m_slots.clear();
    m_total = 0;
    m_frontName.clear();
    m_head = {};
    m_isOpen = m_isMade = m_isLoaded = false;
}

/// What is said of rows that are ours and yet do not belong here.
Error CardIndex::wrong() const {
    return m_codec->seals() ? Error{Code::SealRefused, {"the list of learners"}}
                            : Error{Code::StoreEdgeWrong};
}

base::Result<std::string> CardIndex::readRow(const std::string& name) const {
    const auto stored = m_shelf.segment(name);
    if (!stored) return stored.error();
    if (!*stored) return wrong();
    auto row = m_codec->openRow(placeOf(name), **stored);
    if (!row) return row.error();
    if (!*row) return Error{Code::SealKeyMissing};
    return std::move(**row);
}

Outcome CardIndex::writeRow(const std::string& name, const std::string& row) {
    const auto stored = m_codec->closeRow(placeOf(name), row);
    return stored ? m_shelf.putSegment(name, *stored) : stored.error();
}

Outcome CardIndex::open(const RightEdge& edge) {
    if (m_isOpen) return Done{};
    const auto stored = m_shelf.segment(manifestName);
    if (!stored) return stored.error();
    m_isMade = stored->has_value();
    auto done = m_isMade ? readManifest(edge) : Outcome(Done{});
    if (done && !m_frontName.empty()) done = readFront();
    if (!done) close();
    m_isOpen = done.ok();
    return done;
}

Outcome CardIndex::readManifest(const RightEdge& edge) {
    const auto row = readRow(manifestName);
    if (!row) return row.error();
    ByteReader in(*row);
    const bool isOurs = in.text() == manifestMark;
    m_head.size = in.count();
    m_head.root = in.text();
    m_total = in.count();
    m_frontName = in.text();
    const std::uint64_t segments = in.countOf(2 * sizeof(std::uint64_t));
    for (std::uint64_t i = 0; i < segments; ++i) {
        Slot slot{.name = std::string(in.text())};
        slot.cards = in.count();
        m_slots.push_back(std::move(slot));
    }
    return isOurs && in.isWhole() && m_head == headOf(edge) ? Outcome(Done{}) : wrong();
}

Outcome CardIndex::writeManifest(const RightEdge& edge) {
    m_head = headOf(edge);
    m_isMade = true;
    ByteWriter out;
    out.text(manifestMark).count(m_head.size).text(m_head.root);
    out.count(m_total).text(m_frontName).count(m_slots.size());
    for (const Slot& slot : m_slots) out.text(slot.name).count(slot.cards);
    return writeRow(manifestName, out.take());
}

Outcome CardIndex::readFront() {
    auto row = readRow(m_frontName);
    if (!row) return row.error();
    ByteReader in(*row);
    const std::uint64_t places = in.countOf(2 * sizeof(std::uint64_t));
    for (std::uint64_t i = 0; i < places; ++i) {
        Place place{.sortKey = std::string(in.text())};
        place.learner = in.text();
        m_front.push_back(std::move(place));
    }
    const bool isGood = in.isWhole() && m_front.size() <= m_total;
    wipe(*row);
    return isGood ? Outcome(Done{}) : wrong();
}

Outcome CardIndex::writeFront() {
    if (!m_frontName.empty())
        if (const auto gone = m_shelf.removeSegment(m_frontName); !gone) return gone;
    m_frontName = SegmentId::random().text();
    ByteWriter out;
    out.count(m_front.size());
    for (const Place& place : m_front) out.text(place.sortKey).text(place.learner);
    std::string row = out.take();
    auto done = writeRow(m_frontName, row);
    wipe(row);
    return done;
}

Outcome CardIndex::loadOne(Slot& slot) {
    if (slot.segment) return Done{};
    auto row = readRow(slot.name);
    if (!row) return row.error();
    auto segment = Segment::read(std::move(*row));
    if (!segment || (*segment)->cards() != slot.cards) return wrong();
    slot.segment = std::move(*segment);
    return Done{};
}

Outcome CardIndex::load() {
    if (m_isLoaded) return Done{};
    std::vector<const Segment*> segments;
    for (Slot& slot : m_slots) {
        if (const auto read = loadOne(slot); !read) return read;
        segments.push_back(slot.segment.get());
    }
    std::vector<RankSet> dead = deadAmong(segments);
    std::uint64_t living = 0;
    for (std::size_t i = 0; i < m_slots.size(); ++i) {
        living += m_slots[i].cards - dead[i].size();
        m_slots[i].dead = std::move(dead[i]);
        m_slots[i].beginnings.gather(*m_slots[i].segment, m_slots[i].dead);
    }
    if (living != m_total) return wrong();
    m_isLoaded = true;
    return Done{};
}

/// Adds what was put as the newest segment, in one with those newer ones that it is not small
/// against.
Outcome CardIndex::addSegment(std::string bytes) {
    auto fresh = Segment::read(std::move(bytes));
    if (!fresh) return fresh.error();
    std::size_t first = m_slots.size();
    for (std::uint64_t newer = (*fresh)->cards();
         first > 0 && m_slots[first - 1].cards < growth * newer; newer += m_slots[--first].cards) {
    }
    std::vector<const Segment*> segments;
    for (std::size_t i = first; i < m_slots.size(); ++i) {
        if (const auto read = loadOne(m_slots[i]); !read) return read;
        segments.push_back(m_slots[i].segment.get());
    }
    segments.push_back(fresh->get());
    if (m_isLoaded)
        for (std::size_t i = 0; i < first; ++i)
            for (std::uint32_t rank = 0; rank < (*fresh)->cards(); ++rank)
                if (const auto old = m_slots[i].segment->rankOf((*fresh)->learner(rank))) {
                    m_slots[i].dead.insert(*old);
                    m_slots[i].beginnings.clear();
                }
    const std::vector<RankSet> dead = deadAmong(segments);
    std::vector<Segment::Part> parts;
    for (std::size_t i = 0; i < segments.size(); ++i) parts.push_back({segments[i], &dead[i]});
    return replaceFrom(first, Segment::merge(parts));
}

/// Puts one segment in the place of this and all newer ones.
Outcome CardIndex::replaceFrom(std::size_t first, std::string bytes) {
    for (std::size_t i = first; i < m_slots.size(); ++i)
        if (const auto gone = m_shelf.removeSegment(m_slots[i].name); !gone) return gone;
    m_slots.resize(first);
    const std::string name = SegmentId::random().text();
    if (const auto done = writeRow(name, bytes); !done) return done;
    auto segment = Segment::read(std::move(bytes));
    if (!segment) return segment.error();
    const std::uint32_t cards = (*segment)->cards();
    m_slots.push_back({name, cards, std::move(*segment), RankSet(cards), {}});
    return Done{};
}

/// Whether the front has become another. It always is the first cards there are, without a gap;
/// `isWhole` says whether it is all of them.
bool CardIndex::placeInFront(const Change& change, bool& isWhole) {
    const auto former = std::find_if(m_front.begin(), m_front.end(), [&](const Place& place) {
        return place.learner == change.keys.learner;
    });
    const bool wasIn = former != m_front.end();
    if (wasIn) m_front.erase(former);
    const Place place{change.keys.sortKey, change.keys.learner};
    if (!isWhole && (m_front.empty() || m_front.back() < place)) return wasIn;
    m_front.insert(std::lower_bound(m_front.begin(), m_front.end(), place), place);
    if (m_front.size() > mostInFront) {
        m_front.pop_back();
        isWhole = false;
    }
    return true;
}

Outcome CardIndex::updateFront(const std::vector<Change>& changes, bool isWhole) {
    bool isOther = false;
    for (const Change& change : changes) isOther |= placeInFront(change, isWhole);
    if (m_front.size() < leastInFront && !isWhole) {
        if (const auto read = load(); !read) return read;
        m_front = places(matching({}), 0, mostInFront);
        isOther = true;
    }
    return isOther ? writeFront() : Outcome(Done{});
}

Outcome CardIndex::put(const std::vector<Change>& changes, const RightEdge& before,
                       const RightEdge& after) {
    if (const auto opened = open(before); !opened) return opened;
    if (!changes.empty()) {
        const bool isWhole = m_front.size() == m_total;
        std::vector<CardKeys> keys;
        for (const Change& change : changes) {
            keys.push_back(change.keys);
            m_total += change.isNew ? 1 : 0;
        }
        if (const auto done = addSegment(Segment::write(std::move(keys))); !done) return done;
        if (const auto done = updateFront(changes, isWhole); !done) return done;
    }
    return writeManifest(after);
}

Outcome CardIndex::make(std::vector<CardKeys> all, const RightEdge& edge) {
    close();
    m_isOpen = m_isLoaded = true;
    m_total = all.size();
    if (!all.empty()) {
        if (const auto done = replaceFrom(0, Segment::write(std::move(all))); !done) return done;
        m_front = places(matching({}), 0, mostInFront);
        if (const auto done = writeFront(); !done) return done;
    }
    return writeManifest(edge);
}

Outcome CardIndex::forget(const std::set<std::string>& learners, const RightEdge& edge) {
    if (const auto opened = open(edge); !opened) return opened;
    if (const auto read = load(); !read) return read;
    if (m_slots.empty()) return Done{};
    std::vector<Segment::Part> parts;
    for (Slot& slot : m_slots) {
        for (const std::string& learner : learners)
            if (const auto rank = slot.segment->rankOf(learner)) slot.dead.insert(*rank);
        parts.push_back({slot.segment.get(), &slot.dead});
    }
    if (const auto done = replaceFrom(0, Segment::merge(parts)); !done) return done;
    m_total = m_slots.front().cards;
    m_front = places(matching({}), 0, mostInFront);
    if (const auto done = writeFront(); !done) return done;
    return writeManifest(edge);
}

}  // namespace ledger
