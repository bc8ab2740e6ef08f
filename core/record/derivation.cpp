// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/derivation.h"

#include <set>

#include "procedure/taught.h"
#include "record/card.h"
#include "record/record.h"
#include "record/shapes.h"

namespace record {
namespace {

constexpr std::size_t entriesAtOnce = 500;

/// Whose records there are, in the order they were begun.
base::Result<std::vector<base::PatientId>> everybody(const ledger::Ledger& ledger,
                                                     Onlooker* onlooker) {
    std::vector<base::PatientId> order;
    std::set<base::PatientId> known;
    for (std::uint64_t from = 0; from < ledger.head().size;) {
        const auto entries = ledger.readFrom(from, entriesAtOnce);
        if (!entries) return entries.error();
        if (entries->empty()) break;
        for (const ledger::Entry& entry : *entries) {
            if (onlooker) onlooker->see(entry);
            if (entry.subject && known.insert(*entry.subject).second)
                order.push_back(*entry.subject);
        }
        from = entries->back().seq + 1;
    }
    return order;
}

/// By which pack something was taught or printed; "" for all other entries.
std::string packOf(const ledger::Entry& entry) {
    const std::string& type = entry.body.type;
    if (type != practice::OpenVisit::type && type != IssuePaper::type) return {};
    const auto said = lifted(entry.body).payload;
    if (!said) return {};
    if (const auto* opened = std::get_if<practice::OpenVisit>(&*said)) return opened->pack.digest;
    const auto* issued = std::get_if<IssuePaper>(&*said);
    return issued && issued->ground ? issued->ground->pack.digest : std::string();
}

}  // namespace

base::Outcome fetchPacks(const ledger::Ledger& ledger, procedure::Shelf& shelf,
                         const std::vector<ledger::Entry>& entries) {
    for (const ledger::Entry& entry : entries) {
        const std::string digest = packOf(entry);
        if (digest.empty() || shelf.byDigest(digest)) continue;
        auto bytes = ledger.blob(digest);
        if (!bytes) return bytes.error();
        if (!*bytes) continue;
        if (auto taught = procedure::readTaught(**bytes)) shelf.keep(*taught);
    }
    return base::Done{};
}

base::Result<ledger::Derived> deriveAll(const ledger::Ledger& ledger, procedure::Shelf& shelf,
                                        Onlooker* onlooker) {
    const auto people = everybody(ledger, onlooker);
    if (!people) return people.error();
    if (onlooker)
        if (const auto done = onlooker->sawAll(); !done) return done.error();
    ledger::Derived all{.foldVersion = foldVersion};
    for (const base::PatientId& patient : *people) {
        const auto entries = ledger.ofSubject(patient);
        if (!entries) return entries.error();
        if (const auto packs = fetchPacks(ledger, shelf, *entries); !packs) return packs.error();
        if (onlooker)
            if (const auto done = onlooker->seeRecord(*entries); !done) return done.error();
        ledger::Derived one = derive(foldRecord(*entries, shelf));
        all.cards.insert(all.cards.end(), one.cards.begin(), one.cards.end());
        if (!one.setsOpenVisit) continue;
        all.setsOpenVisit = true;
        all.openVisit = one.openVisit;
    }
    return all;
}

}  // namespace record
