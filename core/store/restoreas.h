// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gate/continuation.h"
#include "ledger/entry.h"

namespace store {

/// What a restored record goes on as.
struct Restored {
    base::LedgerId ledger;   ///< its new id
    ledger::Head head;       ///< with the entry that says where it comes from
    std::size_t people = 0;  ///< who can sign in to it: those of the backup's day
};

/// restoreBackup() by a person's passphrase or the recovery sheet; what comes back goes on under a
/// new id and says so at once. Errors: those of restoreBackup(), gate::continuation() and the
/// store; BackupChanged, SealWrongPassphrase, those of seal::Recovery::fromLetters().
base::Result<Restored> restoreAs(const std::string& file, const std::string& record,
                                 const gate::Opening& opening, const base::Instant& now);

}  // namespace store
