// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/accessrows.h"

#include <algorithm>
#include <map>

#include "ledger/jcs.h"
#include "seal/rowreader.h"

namespace seal {
namespace {

using base::Code;
using base::Error;
using ledger::AccessRow;
using nlohmann::json;

constexpr std::size_t boxKeySize = 32;

std::string canonical(const json& row) { return *ledger::jcs(row); }

AccessRow ledgerRow(const KeyRows& rows) {
    return {"ledger", "1",
            canonical({{"home", rows.home.text()},
                       {"names", rows.names.phc()},
                       {"recovery", ledger::toBase64Url(rows.recoveryKey)}})};
}

/// Puts what one stored row says among the rows.
base::Outcome take(KeyRows& rows, const AccessRow& stored) {
    const json text = json::parse(stored.text, nullptr, false);
    const auto put = [&](auto read, auto& into, const auto& idOf) -> base::Outcome {
        if (!read) return read.error();
        if (idOf(*read) != stored.id) return Error{Code::SealBadRow, {stored.kind}};
        into.push_back(std::move(*read));
        return base::Done{};
    };
    if (stored.kind == "person")
        return put(WrappedIdentity::parse(text), rows.people,
                   [](const WrappedIdentity& one) { return one.person.text(); });
    if (stored.kind == "former")
        return put(PublicIdentity::parse(text), rows.former,
                   [](const PublicIdentity& one) { return one.kid(); });
    if (stored.kind == "grant")
        return put(EpochGrant::parse(text), rows.grants,
                   [](const EpochGrant& one) { return one.epoch.text() + "/" + one.to; });
    if (stored.kind != "ledger" || stored.id != "1") return Error{Code::SealBadRow, {stored.kind}};
    RowReader in(text, {"home", "names", "recovery"});
    const auto home = in.id<base::LedgerId>("home");
    rows.recoveryKey = in.bytes("recovery", boxKeySize);
    const auto names = Stretch::parse(in.text("names"));
    if (in.error()) return *in.error();
    if (!names) return names.error();
    rows.home = *home;
    rows.names = *names;
    return base::Done{};
}

void dropGrantsTo(KeyRows& rows, const std::string& publicKey) {
    const std::string name = thumbprint(Curve::X25519, publicKey);
    std::erase_if(rows.grants, [&](const EpochGrant& grant) { return grant.to == name; });
}

void append(std::vector<EpochGrant>& all, std::vector<EpochGrant> more) {
    std::move(more.begin(), more.end(), std::back_inserter(all));
}

/// Makes a person's keys former ones; whether there was such a person.
bool makeFormer(KeyRows& rows, const base::StaffId& person) {
    const WrappedIdentity* row = rowOf(rows, person);
    if (row == nullptr) return false;
    dropGrantsTo(rows, row->known.boxing);
    rows.former.push_back(row->known);
    std::erase_if(rows.people, [&](const WrappedIdentity& one) { return one.person == person; });
    return true;
}

}  // namespace

std::vector<AccessRow> accessRows(const KeyRows& rows) {
    std::vector<AccessRow> all = {ledgerRow(rows)};
    for (const WrappedIdentity& one : rows.people)
        all.push_back({"person", one.person.text(), canonical(one.json())});
    for (const PublicIdentity& one : rows.former)
        all.push_back({"former", one.kid(), canonical(one.json())});
    for (const EpochGrant& one : rows.grants)
        all.push_back({"grant", one.epoch.text() + "/" + one.to, canonical(one.json())});
    std::sort(all.begin(), all.end(), [](const AccessRow& a, const AccessRow& b) {
        return std::tie(a.kind, a.id) < std::tie(b.kind, b.id);
    });
    return all;
}

base::Result<std::optional<KeyRows>> readKeyRows(const std::vector<AccessRow>& stored) {
    if (stored.empty()) return std::optional<KeyRows>();
    KeyRows rows;
    for (const AccessRow& row : stored)
        if (const auto taken = take(rows, row); !taken) return taken.error();
    if (rows.home.text().empty()) return Error{Code::SealBadRow, {"ledger"}};
    return std::optional<KeyRows>(std::move(rows));
}

std::vector<AccessRow> changedRows(const KeyRows& before, const KeyRows& after) {
    std::map<std::pair<std::string, std::string>, std::string> old;
    if (!before.home.text().empty())
        for (AccessRow& row : accessRows(before)) old[{row.kind, row.id}] = std::move(row.text);
    std::vector<AccessRow> changed;
    for (AccessRow& row : accessRows(after)) {
        const auto found = old.find({row.kind, row.id});
        const bool same = found != old.end() && found->second == row.text;
        if (found != old.end()) old.erase(found);
        if (!same) changed.push_back(std::move(row));
    }
    for (const auto& [name, text] : old) changed.push_back({name.first, name.second, {}});
    return changed;
}

const WrappedIdentity* rowOf(const KeyRows& rows, const base::StaffId& person) {
    const auto found =
        std::find_if(rows.people.begin(), rows.people.end(),
                     [&](const WrappedIdentity& one) { return one.person == person; });
    return found == rows.people.end() ? nullptr : &*found;
}

void letIn(KeyRows& rows, Admission admission) {
    makeFormer(rows, admission.row.person);
    rows.people.push_back(std::move(admission.row));
    append(rows.grants, std::move(admission.grants));
}

void putInPlace(KeyRows& rows, WrappedIdentity row) {
    for (WrappedIdentity& one : rows.people)
        if (one.person == row.person) one = row;
}

void beginEpoch(KeyRows& rows, Keyring& ring) {
    std::vector<std::string> holders = {rows.recoveryKey};
    for (const WrappedIdentity& one : rows.people) holders.push_back(one.known.boxing);
    append(rows.grants, ring.beginEpoch(holders));
}

void retire(KeyRows& rows, const base::StaffId& person, Keyring& ring) {
    if (makeFormer(rows, person)) beginEpoch(rows, ring);
}

void replaceRecovery(KeyRows& rows, const Recovery& recovery, Keyring& ring) {
    dropGrantsTo(rows, rows.recoveryKey);
    rows.recoveryKey = recovery.pair().publicKey;
    append(rows.grants, ring.grantAll(rows.recoveryKey));
    beginEpoch(rows, ring);
}

}  // namespace seal
