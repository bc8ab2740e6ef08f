// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "forger.h"

namespace support {

using ledger::Entry;
using proof::Kind;

Forger::Forger(SealedHistory& of, SealedHistory& other, unsigned seed)
    : m_of(of),
      m_stored(storedIn(of.ledger())),
      m_other(storedIn(other.ledger())),
      m_codec(of.grounds().codec),
      m_iris(of.ringOf(SealedHistory::iris)),
      m_tam(of.ringOf(SealedHistory::tam)),
      m_random(seed) {
    for (std::uint64_t place = 0; place < m_stored.size(); ++place) {
        const Entry entry = read(place);
        if (entry.subject) m_patients.push_back(place);
        if (entry.subject && !entry.body.sigs.empty()) m_signed.push_back(place);
    }
}

const char* Forger::nameOf(Forgery how) const {
    static constexpr std::array<const char*, forgeries> names = {
        "flip",      "drop",          "gap",           "swap",         "truncate",
        "duplicate", "other place",   "other learner", "other ledger", "other ledger, said here",
        "old copy",  "unsigned",      "old signature", "another key",  "colleague",
        "oneself",   "moved learner", "twin"};
    return names.at(static_cast<std::size_t>(how));
}

Forged Forger::forge(Forgery how) {
    switch (how) {
        case Forgery::Flip:
            return flip();
        case Forgery::Drop:
        case Forgery::Gap:
            return drop(how == Forgery::Gap);
        case Forgery::Swap:
            return swapped();
        case Forgery::Truncate:
            return truncated();
        case Forgery::Duplicate:
            return duplicated();
        case Forgery::OtherPlace:
            return otherPlace();
        case Forgery::OtherLearner:
            return otherLearner();
        case Forgery::OtherLedger:
        case Forgery::OtherLedgerHere:
            return otherLedger(how == Forgery::OtherLedgerHere);
        case Forgery::OldCopy:
            return oldCopy();
        case Forgery::Unsigned:
        case Forgery::OldSignature:
        case Forgery::AnotherKey:
        case Forgery::Colleague:
        case Forgery::Oneself:
            return otherWords(how);
        case Forgery::MovedLearner:
            return movedLearner();
        case Forgery::Twin:
            return twin();
    }
    return {};
}

Entry Forger::read(std::uint64_t place) const {
    return *ledger::readEntry(m_stored.at(place).second, *m_codec);
}

void Forger::write(Stored& stored, Entry entry) const {
    const std::uint64_t place = entry.seq;
    stored.at(place).second = *ledger::entryBytes(entry, *m_codec);
}

Forged Forger::flip() {
    Forged made{m_stored,
                {Kind::Unreadable, Kind::OtherPlace, Kind::TickBack, Kind::Changed, Kind::KeyGone,
                 Kind::NotSealed},
                anyPlace()};
    std::string& bytes = made.stored[made.place].second;
    bytes[below(bytes.size())] ^= static_cast<char>(1U << below(8));
    return made;
}

Forged Forger::drop(bool leavesGap) {
    Forged made{m_stored, {leavesGap ? Kind::Gap : Kind::OtherPlace}, below(m_stored.size() - 1)};
    made.stored.erase(made.stored.begin() + static_cast<std::ptrdiff_t>(made.place));
    if (leavesGap) return made;
    for (std::uint64_t i = made.place; i < made.stored.size(); ++i) made.stored[i].first = i;
    return made;
}

Forged Forger::swapped() {
    const std::uint64_t one = anyPlace();
    const std::uint64_t other = (one + 1 + below(m_stored.size() - 1)) % m_stored.size();
    Forged made{m_stored, {Kind::OtherPlace}, one};
    std::swap(made.stored[one].second, made.stored[other].second);
    return made;
}

Forged Forger::truncated() {
    Forged made{m_stored};
    made.stored.resize(anyPlace());
    return made;
}

Forged Forger::duplicated() {
    const std::uint64_t from = below(m_stored.size() - 1);
    Forged made{m_stored, {Kind::OtherPlace}, from + 1 + below(m_stored.size() - from - 1)};
    made.stored.insert(made.stored.begin() + static_cast<std::ptrdiff_t>(made.place),
                       m_stored[from]);
    for (std::uint64_t i = made.place; i < made.stored.size(); ++i) made.stored[i].first = i;
    return made;
}

Forged Forger::otherPlace() {
    const std::uint64_t from = patientsPlace();
    std::uint64_t to = from;
    while (to == from || read(to).subject != read(from).subject) to = patientsPlace();
    Forged made{m_stored, {Kind::Changed}, to};
    const auto source = *ledger::readEnvelope(m_stored[from].second);
    auto target = *ledger::readEnvelope(m_stored[to].second);
    target.closed = source.closed;
    made.stored[to].second = *ledger::envelopeBytes(target);
    return made;
}

Forged Forger::otherLearner() {
    Forged made{m_stored, {Kind::Changed}, patientsPlace()};
    auto envelope = *ledger::readEnvelope(m_stored[made.place].second);
    const int who = envelope.subject == m_of.patient(0) ? 1 : 0;
    envelope.subject = m_of.patient(who);
    if (below(2) == 0)
        envelope.closed.key = (*m_of.ledger().keyShelf().ofSubject(m_of.patient(who)))->id;
    made.stored[made.place].second = *ledger::envelopeBytes(envelope);
    return made;
}

Forged Forger::otherLedger(bool saysThis) {
    Forged made{
        m_stored, {saysThis ? Kind::KeyGone : Kind::OtherPlace, Kind::Changed}, patientsPlace()};
    auto envelope = *ledger::readEnvelope(m_other[made.place].second);
    if (saysThis) {
        const auto here = *ledger::readEnvelope(m_stored[made.place].second);
        envelope.ledger = here.ledger;
        if (below(2) == 0) {
            envelope.subject = here.subject;
            envelope.closed.key = here.closed.key;
        }
    }
    made.stored[made.place].second = *ledger::envelopeBytes(envelope);
    return made;
}

/// As the ward would have written on by then, with all its keys.
Forged Forger::oldCopy() {
    Forged made{m_stored};
    made.stored.resize(m_patients.front() + 2 + below(m_stored.size() - m_patients.front() - 2));
    ledger::Tail tail;
    for (const auto& [seq, bytes] : made.stored) tail.edge.append(ledger::leafHash(bytes));
    tail.tick = tail.edge.size();
    const Entry author = read(m_patients.front());
    while (made.stored.size() < m_stored.size()) {
        auto draft = record::draftOf(practice::WriteNote{.step = {}, .text = "another day"},
                                     author.body.by, "teacher", m_of.clock().now());
        draft.subject = author.subject;
        const auto written =
            ledger::extend(tail, m_of.ledger().id(), {draft}, m_of.clock().now(), *m_codec);
        made.stored.emplace_back(made.stored.size(), written->front().bytes);
    }
    return made;
}

Forged Forger::otherWords(Forgery how) {
    Forged made{m_stored, {}, signedPlace()};
    Entry entry = read(made.place);
    const bool isIrises = entry.body.type == record::AddAddendum::type;
    entry.body.data[isIrises ? "text" : "statement"] = "what I would have liked to see";
    const auto resign = [&](const seal::Identity& by) {
        const auto purpose = seal::readSignature(entry.body.sigs[0])->purpose;
        entry.body.sigs = nlohmann::json::array();
        EXPECT_TRUE(seal::addSignature(entry.body, by, seal::SignedFor::of(entry), purpose).ok());
    };
    if (how == Forgery::Unsigned) {
        entry.body.sigs = nlohmann::json::array();
        made.named = {Kind::NoSignature};
    } else if (how == Forgery::OldSignature) {
        made.named = {Kind::BadSignature};
    } else if (how == Forgery::AnotherKey) {
        resign(seal::Identity::generate());
        made.named = {Kind::UnknownKey};
    } else if (how == Forgery::Colleague) {
        resign(*(isIrises ? m_tam : m_iris)->identity());
        made.named = {Kind::UnknownKey};
    } else {
        resign(*(isIrises ? m_iris : m_tam)->identity());
    }
    write(made.stored, entry);
    return made;
}

Forged Forger::movedLearner() {
    Forged made{m_stored, {Kind::BadSignature}, signedPlace()};
    Entry entry = read(made.place);
    entry.subject = m_of.patient(entry.subject == m_of.patient(0) ? 1 : 0);
    write(made.stored, entry);
    return made;
}

Forged Forger::twin() {
    const std::uint64_t from = m_patients.at(below(m_patients.size() - 1));
    Forged made{m_stored, {Kind::Doubled}, from + 1 + below(m_stored.size() - from - 1)};
    Entry entry = read(from);
    const Entry there = read(made.place);
    entry.seq = there.seq;
    entry.tick = there.tick;
    write(made.stored, entry);
    return made;
}

}  // namespace support
