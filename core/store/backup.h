// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include "store/backupfile.h"
#include "store/sqlledger.h"

/// A copy of a sealed record in one file, and the way back. Rows are copied, not pages: nothing
/// that was destroyed comes along, and no schema comes from outside.
namespace store {

/// Copies the record as it is at one moment, also beside a copy of the program that writes. Needs
/// no passphrase: the backup is sealed to everybody who can sign in and to the recovery sheet.
/// Gives the ledger and the head that was copied. Errors: those of inspect() and bringUpToDate(),
/// StoreMissing, BackupNoKeys, StoreEdgeWrong when the record is not sound, and of the file those
/// of BackupWriter; BackupNotOurs when another kind of file has this name.
base::Result<ledger::Former> backUp(const std::string& record, const std::string& file);

using OpenKey = std::function<base::Result<seal::Secret>(const BackupHead& head)>;
/// Writes from where the restored ledger goes on; it has the id of the backup until then.
using GoOn = std::function<base::Outcome(SqlLedger& restored)>;

/// Makes the record at this path from a backup. It gets its name when everything was held against
/// the head and `goOn` has returned. An older state of the same ledger that is there already is
/// kept beside it, see keptBesideRestored(). Errors: as readBackupHead(), BackupOverOther,
/// BackupOverNewer, StoreLocked, those of the two functions, of inspect() and of the disk.
base::Outcome restoreBackup(const std::string& file, const std::string& record,
                            const OpenKey& openKey, const GoOn& goOn);
/// Where a record of so many entries lies that another one was restored over.
std::string keptBesideRestored(const std::string& record, std::uint64_t size);

}  // namespace store
