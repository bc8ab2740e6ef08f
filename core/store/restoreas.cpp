// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/restoreas.h"

#include "seal/accessrows.h"
#include "store/backup.h"

namespace store {
namespace {

base::Result<seal::Secret> keyOf(const BackupHead& head, const gate::Opening& opening) {
    const auto rows = seal::readKeyRows(head.access);
    if (!rows) return rows.error();
    if (!*rows) return base::Error{base::Code::BackupChanged};
    if (!opening.name.empty())
        return seal::unboxKey(head.boxes, **rows, opening.name, opening.secret);
    const auto sheet = seal::Recovery::fromLetters(opening.secret);
    if (!sheet) return sheet.error();
    return seal::unboxKey(head.boxes, *sheet);
}

base::Outcome goOn(SqlLedger& restored, const gate::Opening& opening, const base::Instant& now) {
    const auto next = base::LedgerId::random();
    const auto draft = gate::continuation(restored, opening, next, now);
    if (!draft) return draft.error();
    const auto version = restored.foldVersion();
    if (!version) return version.error();
    if (const auto done = restored.continueAs(next); !done) return done;
    const auto written = restored.append({*draft}, now, {.foldVersion = *version});
    if (!written) return written.error();
    return base::Done{};
}

std::size_t peopleOf(const SqlLedger& restored) {
    const auto stored = restored.access();
    if (!stored) return 0;
    const auto rows = seal::readKeyRows(*stored);
    return rows && *rows ? (*rows)->people.size() : 0;
}

}  // namespace

base::Result<Restored> restoreAs(const std::string& file, const std::string& record,
                                 const gate::Opening& opening, const base::Instant& now) {
    Restored made;
    const auto done = restoreBackup(
        file, record, [&](const BackupHead& head) { return keyOf(head, opening); },
        [&](SqlLedger& restored) {
            auto went = goOn(restored, opening, now);
            made = {restored.id(), restored.head(), peopleOf(restored)};
            return went;
        });
    if (!done) return done.error();
    return made;
}

}  // namespace store
