// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "proof/verifier.h"

#include <algorithm>

#include "record/draft.h"
#include "record/uselog.h"
#include "seal/signature.h"

namespace proof {

using base::Code;

namespace {

/// The places as ranges without a gap.
std::vector<Finding> inRanges(Kind kind, const std::vector<std::uint64_t>& places) {
    std::vector<Finding> ranges;
    for (const std::uint64_t place : places) {
        if (!ranges.empty() && ranges.back().to + 1 == place)
            ranges.back().to = place;
        else
            ranges.push_back(at(kind, place));
    }
    return ranges;
}

/// Before version 4 whoever came back by the sheet was taken for nobody yet.
bool mayLackRole(const ledger::Body& body, const record::Payload& said) {
    const auto* changes = std::get_if<record::ChangeAccess>(&said);
    return changes && changes->what == record::AccessChange::Recovered && !changes->role &&
           body.role == record::roleOf({}, {});
}

}  // namespace

Verifier::Verifier(Grounds grounds)
    : m_grounds(std::move(grounds)),
      m_keys(m_grounds.rows ? Looker::keysIn(*m_grounds.rows) : nullptr),
      m_looker(m_grounds.codec, m_keys) {
    if (m_grounds.rows) m_staff.emplace(m_grounds.lineage, *m_grounds.rows);
    m_report.knownHeads = m_grounds.heads.size();
    for (const KnownHead& head : m_grounds.heads)
        if (head.size == 0) m_roots[0] = ledger::toHex(ledger::emptyRoot());
}

std::optional<Looker> Verifier::lookerWith(ledger::KeyShelf& shelf) const {
    std::shared_ptr<ledger::Codec> codec = m_grounds.codec->reader(shelf);
    if (!codec) return std::nullopt;
    return Looker(std::move(codec), m_keys);
}

bool Verifier::take(const Seen& seen) {
    takePlace(seen);
    if (!seen.envelope) return findAt(Kind::Unreadable), false;
    if (!isInPlace(*seen.envelope)) return false;
    if (seen.refused) {
        const bool isShape =
            seen.refused == Code::LedgerBadEntry || seen.refused == Code::LedgerNotCanonical;
        return findAt(isShape ? Kind::Unreadable : Kind::Changed), false;
    }
    if (seen.body)
        takeOpen(seen);
    else
        takeClosed(*seen.envelope);
    return true;
}

/// Puts its leaf behind the others.
void Verifier::takePlace(const Seen& seen) {
    if (m_next < seen.seq) find({Kind::Gap, m_next, seen.seq - 1});
    m_seq = seen.seq;
    m_next = seen.seq + 1;
    // It went on from other entries than are here.
    if (!m_grounds.lineage.agreesWith(m_tail.edge)) findAt(Kind::OtherPlace);
    m_before = seen.root.empty() ? std::string() : ledger::toHex(m_tail.edge.root());
    m_tail.edge.append(seen.leaf);
    const std::uint64_t size = m_tail.edge.size();
    for (const KnownHead& head : m_grounds.heads)
        if (head.size == size) m_roots[size] = ledger::toHex(m_tail.edge.root());
}

/// What can be seen of an entry without a key; false when it is not to be looked into.
bool Verifier::isInPlace(const ledger::Envelope& envelope) {
    if (envelope.seq != m_seq || envelope.ledger != m_grounds.lineage.at(m_seq))
        findAt(Kind::OtherPlace);
    if (envelope.tick <= m_tail.tick) findAt(Kind::TickBack);
    m_tail.tick = std::max(m_tail.tick, envelope.tick);
    const bool isSealed = !envelope.closed.key.empty();
    const bool mustBe =
        m_isSealed || m_grounds.rows || m_grounds.codec->seals() || m_grounds.isOfPatients;
    m_isSealed = m_isSealed || isSealed;
    if (isSealed || !mustBe) return true;
    findAt(Kind::NotSealed);
    return false;
}

/// Whether anybody was ever given the key of this epoch.
bool Verifier::isGranted(const std::string& epoch) const {
    const auto& grants = m_grounds.rows->grants;
    return std::any_of(grants.begin(), grants.end(),
                       [&](const seal::EpochGrant& grant) { return grant.epoch.text() == epoch; });
}

/// Entries of one patient mostly come one behind the other. What can't be read is not there.
const ledger::KeyRow* Verifier::rowOf(const std::string& key) {
    if (m_row && m_row->id == key) return &*m_row;
    auto row = m_grounds.shelf->byId(key);
    m_row = row ? std::move(*row) : std::nullopt;
    return m_row ? &*m_row : nullptr;
}

/// Whoever is on the staff was given every epoch: to a key at hand everything opens that was not
/// erased.
void Verifier::takeClosed(const ledger::Envelope& entry) {
    const bool hasKey = m_grounds.codec->seals();
    const std::string& key = entry.closed.key;
    bool isGone = hasKey || (!entry.subject && m_grounds.rows && !isGranted(key));
    if (entry.subject && m_grounds.shelf) {
        const ledger::KeyRow* row = rowOf(key);
        const bool isThere = row != nullptr;
        const bool isTheirs = isThere && row->subject == *entry.subject;
        if (isTheirs && row->text.empty()) {
            ++m_report.erased;
            return m_erased[*entry.subject].push_back(m_seq);
        }
        isGone = !isThere || (isTheirs && isGone);
        if (isThere && !isTheirs) findAt(Kind::Changed);
    }
    if (isGone) findAt(Kind::KeyGone);
    ++m_report.closed;
}

void Verifier::noteReadable(const base::PatientId& patient) {
    const bool isNext = !m_readable.empty() && m_readable.back().to + 1 == m_seq &&
                        m_readable.back().patient == patient;
    if (isNext)
        m_readable.back().to = m_seq;
    else
        m_readable.push_back({patient, m_seq, m_seq});
}

void Verifier::takeOpen(const Seen& seen) {
    const ledger::Body& body = *seen.body;
    const auto& subject = seen.envelope->subject;
    ++m_report.opened;
    if (subject && m_staff) noteReadable(*subject);
    if (!m_ids.emplace(body.id.text()).second) findAt(Kind::Doubled);
    takeBasis(seen);
    if (!seen.isUnderstood) {  // unknown to this program: kept as it is
        if (m_staff && body.by && !isSpoken(body)) return findAt(Kind::NoSpeaker);
        if (m_staff && !isInRole(body)) findAt(Kind::OtherRole);
        return;
    }
    for (const std::string& digest : seen.blobs) m_blobs.emplace(digest, m_seq);
    if (m_staff) takeSigned(seen);
}

/// Who signs off names the root of all that was there: what was written before can't be another
/// afterwards, nor can the signature come after what they had not seen.
void Verifier::takeBasis(const Seen& seen) {
    const ledger::Body& body = *seen.body;
    const auto basis = body.basis.find(seen.envelope->ledger);
    const bool isSaid = basis != body.basis.end();
    if (isSaid && basis->second > m_seq) return findAt(Kind::Basis);
    const bool isSignOff = body.type == record::SignOff::type;
    if (seen.root.empty()) {
        // Nor can somebody say it as if it had come from an older program.
        if (seen.mustNameRoot || (isSignOff && m_areRootsNamed)) findAt(Kind::Basis);
        return;
    }
    m_areRootsNamed = true;
    if (!isSaid || basis->second != m_seq || seen.root != m_before) findAt(Kind::Basis);
}

/// Whether it was said by somebody who could sign in then. Nobody says that a restored record goes
/// on, where it was opened by the recovery sheet.
bool Verifier::isSpoken(const ledger::Body& body) const {
    if (!body.by) return body.type == record::ContinueLedger::type;
    return !m_staff->kidOf(*body.by).empty();
}

/// Whether it is said in the role that its author has by now: papers print it beside the name.
bool Verifier::isInRole(const ledger::Body& body) const {
    const auto role = body.by ? m_staff->roleOf(*body.by) : std::nullopt;
    return !role || body.role == base::nameOf(*role);
}

/// Whether it had to be signed. From the first paper that was signed on every paper is.
bool Verifier::isMissing(const Seen& seen) {
    if (seen.body->type == record::IssuePaper::type && !seen.purpose) return m_arePapersSigned;
    return seen.purpose.has_value();
}

void Verifier::takeSigned(const Seen& seen) {
    const ledger::Body& body = *seen.body;
    const record::Payload* said = seen.payload ? &*seen.payload : nullptr;
    if (said && isAboutKeys(*said)) return follow(ledger::entryOf(*seen.envelope, body), *said);
    if (said && std::holds_alternative<record::ContinueLedger>(*said) &&
        !m_staff->take(ledger::entryOf(*seen.envelope, body)))
        findAt(Kind::KeysChanged);
    if (!isSpoken(body)) return findAt(Kind::NoSpeaker);
    if (!isInRole(body)) findAt(Kind::OtherRole);
    if (!seen.isSigned) {
        if (isMissing(seen)) findAt(Kind::NoSignature);
        return;
    }
    m_arePapersSigned = m_arePapersSigned || body.type == record::IssuePaper::type;
    if (!takeSignatures(seen)) return;
    const auto* erased = said ? std::get_if<record::ErasePatient>(said) : nullptr;
    if (!erased) return;
    if (isByTheTwo(body, *erased))
        m_erasures.insert(erased->patient);
    else
        findAt(Kind::KeysChanged);
}

/// Whether all hold and are of people who could sign then, and one of them is the author's, for the
/// purpose that it is signed for.
bool Verifier::takeSignatures(const Seen& seen) {
    const auto& author = seen.body->by;
    bool isAuthors = false;
    for (const SeenSignature& signature : seen.signatures) {
        if (signature.how == Holding::Bad) return findAt(Kind::BadSignature), false;
        const bool isKnown = signature.how == Holding::Holds && m_staff->isOfNow(signature.kid);
        if (!isKnown) return findAt(Kind::UnknownKey), false;
        ++m_report.signatures;
        const bool isForThis = !seen.purpose || signature.purpose == seen.purpose;
        isAuthors = isAuthors || (author && isForThis && signature.kid == m_staff->kidOf(*author));
    }
    if (!isAuthors) findAt(Kind::UnknownKey);
    return isAuthors;
}

/// Whether an educator and an auditor of that moment signed it; each signature holds by now. The
/// log of who looked is no patient, and nobody erases it.
bool Verifier::isByTheTwo(const ledger::Body& body, const record::ErasePatient& said) const {
    if (record::isUseLog(said.patient, m_grounds.lineage)) return false;
    const auto one = m_staff->roleOf(*body.by), other = m_staff->roleOf(said.with);
    if (!one || !other || !record::mayErase(*one, *other) || body.sigs.size() != 2) return false;
    return seal::readSignature(body.sigs[0])->kid == m_staff->kidOf(*body.by) &&
           seal::readSignature(body.sigs[1])->kid == m_staff->kidOf(said.with);
}

/// Who could sign and open, from here on.
void Verifier::follow(const ledger::Entry& entry, const record::Payload& said) {
    const auto taken = m_staff->take(entry);
    if (taken) {
        m_report.signatures += entry.body.sigs.size();
        if (!isInRole(entry.body) && !mayLackRole(entry.body, said)) findAt(Kind::OtherRole);
    } else if (entry.body.sigs.empty()) {
        findAt(Kind::NoSignature);
    } else {
        findAt(taken.error().code == Code::SealBadSignature ? Kind::BadSignature
                                                            : Kind::KeysChanged);
    }
}

/// With a key it can be seen whether the record tells of an erasure; without one nothing can.
void Verifier::finishErased() {
    for (const auto& [patient, places] : m_erased) {
        const Kind told = m_erasures.contains(patient) ? Kind::Erased : Kind::KeyGone;
        for (const Finding& one : inRanges(m_grounds.codec->seals() ? told : Kind::Emptied, places))
            find(one);
    }
    for (const Readable& one : m_readable)
        if (m_erasures.contains(one.patient)) find({Kind::NotErased, one.from, one.to});
}

Report Verifier::finish() {
    finishErased();
    const bool isSettled = !m_staff || !m_grounds.codec->seals() || m_staff->isSettled();
    const bool isWhole = std::none_of(m_report.findings.begin(), m_report.findings.end(),
                                      [](const Finding& one) { return one.kind == Kind::Gap; });
    const bool areKnown = !m_staff || !m_grounds.ring ||
                          (m_staff->knows(*m_grounds.ring) && (!isWhole || m_staff->knowsRows()));
    if (!isSettled || !areKnown) find(at(Kind::KeysChanged, m_seq));
    // Nobody seals a record that nobody can come into.
    if (m_isSealed && !m_grounds.rows) find(at(Kind::KeysChanged, 0));
    // Who can come in is told of by the very first entries.
    if (m_grounds.rows && m_tail.edge.size() == 0) find(at(Kind::KeysChanged, 0));
    for (const Finding& one :
         holdAgainst(m_grounds.lineage, m_tail.edge.size(), m_roots, m_grounds.heads))
        find(one);
    std::stable_sort(m_report.findings.begin(), m_report.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.from < b.from; });
    m_report.head = m_tail.head();
    return std::move(m_report);
}

}  // namespace proof
