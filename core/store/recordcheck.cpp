// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/recordcheck.h"

#include <limits>

#include "ledger/blob.h"
#include "ledger/jcs.h"
#include "store/indexcheck.h"
#include "store/keyscopy.h"
#include "store/values.h"

namespace store {
namespace {

const char* const entriesFrom =
    "SELECT seq, bytes FROM entry WHERE seq >= ? ORDER BY seq LIMIT 500";
constexpr std::uint64_t largestPlace = ledger::largestInteger;
constexpr std::size_t extraLookers = 3;

/// An edge that is another than opening asks for.
base::Outcome checkTail(Database& database, proof::Verifier& verifier,
                        const ledger::RightEdge& previous, std::uint64_t& edgeSize) {
    const ledger::Tail& tail = verifier.tail();
    const auto edge = database.rows("SELECT edge, previous, tick FROM right_edge");
    if (!edge) return edge.error();
    if (edge->size() == 1)
        if (const auto stored = ledger::RightEdge::parse(textOf(edge->front()[0])))
            edgeSize = stored->size();
    const bool fits = edge->size() == 1 && textOf(edge->front()[0]) == tail.edge.text() &&
                      textOf(edge->front()[1]) == previous.text() &&
                      countOf(edge->front()[2]) == tail.tick;
    if (!fits) verifier.find(proof::at(proof::Kind::RightEdge, tail.edge.size()));
    return base::Done{};
}

/// What is wrong is told of the entry that names it first; of all, when none does that was read. A
/// sealed one without its key is left unlooked-at, as an entry is.
base::Outcome checkBlobs(Database& database, ledger::Codec& codec, proof::Verifier& verifier) {
    const auto names = database.rows("SELECT rowid, digest FROM blob ORDER BY rowid");
    if (!names) return names.error();
    auto missing = verifier.namedBlobs();
    for (const Row& row : *names) {
        const auto bytes = database.value("SELECT bytes FROM blob WHERE rowid = ?", {row[0]});
        if (!bytes) return bytes.error();
        verifier.countBlob();
        const std::string digest = textOf(row[1]);
        const bool holds = ledger::openedBlob(codec, digest, bytesOf(*bytes)).ok();
        const auto named = missing.find(digest);
        if (named == missing.end()) {
            const std::uint64_t size = verifier.tail().edge.size();
            if (!holds) verifier.find({proof::Kind::Blob, 0, size == 0 ? 0 : size - 1});
        } else if (holds) {
            missing.erase(named);
        }
    }
    for (const auto& [digest, seq] : missing) verifier.find(proof::at(proof::Kind::Blob, seq));
    return base::Done{};
}

/// Goes through the entries of a record: reads them here, has them looked at on other threads, and
/// puts what was seen in order here.
class Reading {
  public:
    Reading(Database& database, KeysCopy& keys, proof::Verifier& verifier, const proof::Pace& pace)
        : m_database(database),
          m_keys(keys),
          m_verifier(verifier),
          m_pace(pace),
          m_index(database) {}

    /// Errors: VerifyStopped, those of the disk.
    base::Outcome entries();
    /// After entries(), what leads to them.
    base::Outcome index();
    void strays() const;
    /// The right edge without the last entry.
    const ledger::RightEdge& previous() const { return m_previous; }

  private:
    std::vector<proof::Looker> lookers() const;
    base::Outcome readInto(proof::Spread& spread, proof::Stretch& rest);
    void take(const proof::Seen& seen);
    bool goesOn() { return m_mayGoOn = m_mayGoOn && (!m_pace.goOn || m_pace.goOn(m_looked)); }

    Database& m_database;
    KeysCopy& m_keys;
    proof::Verifier& m_verifier;
    const proof::Pace& m_pace;
    IndexCheck m_index;
    base::Outcome m_indexRead = base::Done{};
    ledger::RightEdge m_previous;
    std::uint64_t m_looked = 0;
    bool m_mayGoOn = true;
    bool m_isWhole = true;  ///< the file has an order, and all was read
};

/// Some more than threads, so that none waits while something is put in order. Where there is but
/// one it looks on this thread.
std::vector<proof::Looker> Reading::lookers() const {
    std::vector<proof::Looker> made;
    const std::size_t threads = proof::threadsOf(m_pace);
    while (threads > 1 && made.size() < threads + extraLookers) {
        auto looker = m_verifier.lookerWith(m_keys);
        if (!looker) break;
        made.push_back(std::move(*looker));
    }
    if (made.empty()) made.push_back(m_verifier.looker());
    return made;
}

base::Outcome Reading::entries() {
    proof::Spread spread(lookers(), [this](const proof::Seen& seen) { take(seen); });
    proof::Stretch rest;
    const auto read = readInto(spread, rest);
    m_isWhole = read.ok();
    if (!read && read.error().code != base::Code::StoreDamaged) return read;
    if (m_mayGoOn) spread.put(rest);
    if (m_mayGoOn) spread.finish();
    if (!goesOn()) return base::Error{base::Code::VerifyStopped};
    if (!read) m_verifier.find(proof::at(proof::Kind::OtherPlace, m_verifier.tail().edge.size()));
    return base::Done{};
}

base::Outcome Reading::index() {
    if (!m_indexRead) return m_indexRead;
    return m_index.findMissing(m_verifier);
}

base::Outcome Reading::readInto(proof::Spread& spread, proof::Stretch& rest) {
    return eachEntry(m_database, [&](std::uint64_t seq, std::string_view bytes) {
        m_index.notePlace(seq);
        if (seq > largestPlace)
            m_verifier.find(proof::at(proof::Kind::OtherPlace, largestPlace));
        else
            rest.add(seq, bytes);
        if (rest.size() < m_pace.atOnce) return true;
        spread.put(rest);
        // Here, as this thread has to wait for the others now and then.
        if (m_indexRead) m_indexRead = m_index.readSome(m_pace.atOnce);
        return goesOn();
    });
}

void Reading::take(const proof::Seen& seen) {
    m_previous = m_verifier.tail().edge;
    if (m_verifier.take(seen)) m_index.note(seen);
    ++m_looked;
}

/// Of a file that was not read to its end nobody knows what is in it.
void Reading::strays() const {
    if (m_isWhole) m_index.findStrays(m_verifier);
}

}  // namespace

base::Outcome eachEntry(Database& database, const EntryVisitor& visit) {
    std::int64_t from = std::numeric_limits<std::int64_t>::min();
    for (bool isMore = true; isMore;) {
        base::Outcome order = base::Done{};
        isMore = false;
        const auto visitRow = [&](const RowView& row) {
            // SQLite trusts the file for the order: one that was made by hand may have none.
            const std::int64_t seq = row.number(0);
            if (seq < from) order = base::Error{base::Code::StoreDamaged, {std::to_string(seq)}};
            if (seq < from) return isMore = false;
            const bool isLast = seq == std::numeric_limits<std::int64_t>::max();
            isMore = visit(static_cast<std::uint64_t>(seq), row.bytes(1)) && !isLast;
            from = isLast ? seq : seq + 1;
            return isMore;
        };
        const auto read = database.scan(entriesFrom, visitRow, from);
        if (!read || !order) return read ? order : read;
    }
    return base::Done{};
}

base::Result<proof::Roots> rootsOf(Database& database, const std::set<std::uint64_t>& sizes,
                                   const std::function<bool()>& goOn) {
    constexpr std::uint64_t askEach = 4096;
    proof::Roots roots;
    ledger::RightEdge edge;
    auto next = sizes.begin();
    bool mayGoOn = true;
    const auto note = [&] {
        if (next == sizes.end() || *next != edge.size()) return;
        roots[*next++] = ledger::toHex(edge.root());
    };
    note();
    const auto read = eachEntry(database, [&](std::uint64_t seq, std::string_view bytes) {
        if (goOn && seq % askEach == 0) mayGoOn = goOn();
        if (!mayGoOn || next == sizes.end() || seq != edge.size()) return false;
        edge.append(ledger::leafHash(bytes));
        note();
        return true;
    });
    if (!read) return read.error();
    if (!mayGoOn) return base::Error{base::Code::VerifyStopped};
    return roots;
}

base::Result<CheckReport> checkRecord(Database& database, proof::Grounds grounds,
                                      const proof::Pace& pace) {
    auto keys = KeysCopy::of(database);
    if (!keys) return keys.error();
    grounds.shelf = &*keys;
    const auto codec = grounds.codec;
    proof::Verifier verifier(std::move(grounds));
    Reading reading(database, *keys, verifier, pace);
    if (const auto read = reading.entries(); !read) return read.error();
    if (const auto done = reading.index(); !done) return done.error();
    CheckReport report;
    if (const auto done = checkTail(database, verifier, reading.previous(), report.edgeSize); !done)
        return done.error();
    reading.strays();
    if (const auto done = checkBlobs(database, *codec, verifier); !done) return done.error();
    static_cast<proof::Report&>(report) = verifier.finish();
    return report;
}

}  // namespace store
