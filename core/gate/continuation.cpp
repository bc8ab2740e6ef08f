// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/continuation.h"

#include "gate/keychange.h"
#include "gate/trust.h"
#include "record/draft.h"
#include "record/record.h"
#include "seal/sealingcodec.h"
#include "seal/signature.h"

namespace gate {
namespace {

using base::Code;
using base::Error;

struct Opened {
    std::shared_ptr<seal::Keyring> ring;
    std::optional<base::StaffId> person = {};  ///< none: by the sheet
};

base::Result<Opened> openedBy(const seal::KeyRows& rows, const Opening& opening) {
    if (!opening.name.empty()) {
        auto change = signedIn(rows, opening.name, opening.secret, seal::Cost::least());
        if (!change) return change.error();
        return Opened{std::move(change->ring), change->said.staff};
    }
    const auto sheet = seal::Recovery::fromLetters(opening.secret);
    if (!sheet) return sheet.error();
    auto ring = seal::Keyring::unlockWithRecovery(rows, *sheet);
    if (!ring) return ring.error();
    return Opened{std::make_shared<seal::Keyring>(std::move(*ring))};
}

record::ContinueLedger wordsFor(const ledger::Ledger& ledger) {
    const ledger::Head head = ledger.head();
    return {ledger.id(), static_cast<std::int64_t>(head.size), head.root};
}

}  // namespace

base::Result<ledger::Draft> continuation(ledger::Ledger& restored, const Opening& opening,
                                         const base::LedgerId& next, const base::Instant& now) {
    const auto stored = restored.access();
    if (!stored) return stored.error();
    const auto rows = seal::readKeyRows(*stored);
    if (!rows) return rows.error();
    if (!*rows) return Error{Code::SealKeyMissing};
    const auto opened = openedBy(**rows, opening);
    if (!opened) return opened.error();
    restored.use(std::make_shared<seal::SealingCodec>(opened->ring, restored.keyShelf()));
    const auto entries = restored.withoutSubject();
    if (!entries) return entries.error();
    const ledger::Lineage lineage(restored.id(), restored.former());
    if (const auto trusted = trust(*entries, lineage, **rows, *opened->ring); !trusted)
        return trusted.error();
    const std::string role = record::roleOf(opened->person, record::foldHouse(*entries));
    auto draft = record::draftOf(wordsFor(restored), opened->person, role, now);
    const seal::Identity* identity = opened->ring->identity();
    if (identity == nullptr) return draft;
    const auto done = seal::addSignature(draft.body, *identity, next, seal::Purpose::Author);
    if (!done) return done.error();
    return draft;
}

}  // namespace gate
