// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/sealingcodec.h"

#include "ledger/jcs.h"
#include "seal/sealedbody.h"

namespace seal {
namespace {

using base::Code;
using base::Error;
using ledger::Binding;
using ledger::Closed;
using ledger::KeyRow;
using nlohmann::json;

const std::string alg = "xchacha20poly1305";
constexpr std::size_t mostKept = 16;
constexpr std::size_t idSize = 26;

/// Begins unlike what an entry is bound to, which is an object of JSON.
std::string boundRow(std::string_view epoch, std::string_view place) {
    return "row " + std::string(epoch) + ' ' + std::string(place);
}

}  // namespace

SealingCodec::Found SealingCodec::keep(PatientKey key, const EpochId& epoch) {
    const std::string id = key.id.text();
    if (!m_kept.contains(id)) m_order.push_back(id);
    if (m_order.size() > mostKept) freeSecret();
    const Kept& kept = m_kept.insert_or_assign(id, Kept{std::move(key), epoch}).first->second;
    return {id, &kept.key.key, epoch};
}

/// Memory for one more key: that of the one that was kept longest, as to ask the system for some
/// takes longer than to open a key.
Secret SealingCodec::freeSecret() {
    if (m_order.size() < mostKept) return Secret::ofSize(keySize);
    Secret freed = std::move(m_kept.extract(m_order.front()).mapped().key.key);
    m_order.pop_front();
    return freed;
}

base::Result<SealingCodec::Found> SealingCodec::opened(const KeyRow& row) {
    if (row.text.empty()) return Found{row.id};
    if (const auto kept = m_kept.find(row.id); kept != m_kept.end())
        return Found{row.id, &kept->second.key.key, kept->second.epoch};
    const auto read = WrappedPatientKey::parse(json::parse(row.text, nullptr, false));
    if (!read) return read.error();
    if (read->id.text() != row.id || read->patient != row.subject)
        return Error{Code::SealRefused, {"patient key"}};
    auto key = m_ring->open(*read, freeSecret());
    if (!key && key.error().code == Code::SealKeyMissing) return Found{row.id};
    if (!key) return key.error();
    return keep(std::move(*key), read->epoch);
}

base::Result<SealingCodec::Found> SealingCodec::newKey(const base::PatientId& patient) {
    PatientKey key = PatientKey::generate(patient);
    const auto put = m_shelf.put({key.id.text(), patient, *ledger::jcs(m_ring->wrap(key).json())});
    if (!put) return put.error();
    return keep(std::move(key), m_ring->current().id);
}

/// A patient has a key for each epoch in which something was written of them: the one before may be
/// known to somebody who can't come in any more.
base::Result<SealingCodec::Found> SealingCodec::keyToClose(
    const std::optional<base::PatientId>& subject) {
    if (!subject) return Found{m_ring->current().id.text(), &m_ring->current().key};
    const auto row = m_shelf.ofSubject(*subject);
    if (!row) return row.error();
    if (!*row) return newKey(*subject);
    auto found = opened(**row);
    const bool isOfNow = !found || found->key == nullptr || found->epoch == m_ring->current().id;
    return isOfNow ? found : newKey(*subject);
}

base::Result<SealingCodec::Found> SealingCodec::keyToOpen(
    const std::optional<base::PatientId>& subject, const std::string& id) {
    if (!subject) {
        const auto epoch = EpochId::parse(id);
        const EpochKey* key = epoch ? m_ring->epoch(*epoch) : nullptr;
        return Found{id, key ? &key->key : nullptr};
    }
    const auto row = m_shelf.byId(id);
    if (!row) return row.error();
    if (!*row) return Found{id};
    if ((*row)->subject != *subject) return Error{Code::SealRefused, {"entry"}};
    return opened(**row);
}

base::Result<Closed> SealingCodec::close(const Binding& to, const std::string& body) {
    const auto found = keyToClose(to.subject);
    if (!found) return found.error();
    if (found->key == nullptr) return Error{Code::SealKeyMissing};
    Closed closed{.alg = alg, .key = found->id};
    Sealed sealed = sealBody(*found->key, body, to.text(closed));
    closed.nonce = std::move(sealed.nonce);
    closed.body = std::move(sealed.box);
    return closed;
}

base::Result<std::optional<std::string>> SealingCodec::open(const Binding& to,
                                                            const Closed& closed) {
    if (closed.alg != alg) return Error{Code::LedgerUnknownAlg, {closed.alg}};
    const auto found = keyToOpen(to.subject, closed.key);
    if (!found) return found.error();
    if (found->key == nullptr) return std::optional<std::string>();
    auto body = openBody(*found->key, {closed.nonce, closed.body}, to.text(closed));
    if (!body) return Error{Code::SealRefused, {"entry"}};
    return body;
}

base::Result<std::string> SealingCodec::closeRow(std::string_view place, const std::string& row) {
    const EpochKey& epoch = m_ring->current();
    const Sealed sealed = sealBody(epoch.key, row, boundRow(epoch.id.text(), place));
    std::string stored(ledger::sealedRowMark);
    stored.reserve(stored.size() + idSize + nonceSize + sealed.box.size());
    return stored.append(epoch.id.text()).append(sealed.nonce).append(sealed.box);
}

base::Result<std::optional<std::string>> SealingCodec::openRow(std::string_view place,
                                                               std::string_view stored) {
    const Error refused{Code::SealRefused, {"row"}};
    if (!stored.starts_with(ledger::sealedRowMark)) return refused;
    stored.remove_prefix(ledger::sealedRowMark.size());
    if (stored.size() < idSize + nonceSize + tagSize) return refused;
    const auto id = EpochId::parse(stored.substr(0, idSize));
    if (!id) return refused;
    const EpochKey* epoch = m_ring->epoch(*id);
    if (epoch == nullptr) return std::optional<std::string>();
    auto row = openBody(epoch->key, stored.substr(idSize, nonceSize),
                        stored.substr(idSize + nonceSize), boundRow(id->text(), place));
    if (!row) return refused;
    return row;
}

}  // namespace seal
