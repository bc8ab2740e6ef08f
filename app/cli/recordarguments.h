// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "proof/knownhead.h"
#include "seal/identity.h"

namespace app {

/// What a paper says of the record, as it was typed: "SIZE:ROOT", the root whole or its first and
/// last 8 letters around "…" or "..."; nothing for anything else.
std::optional<proof::KnownHead> headOfNumbers(const std::string& text);

/// What one paper says: its letters or its numbers. Errors: those of seal::readPaperLetters(),
/// which name the line that is not as it was printed.
base::Result<proof::KnownHead> headOfPaper(const std::string& typed);
/// What a backup says. Errors: those of store::readBackupHead().
base::Result<proof::KnownHead> headOfBackup(const std::string& file);
/// Whether its head is the one that was sealed with it, as somebody can tell whom it was sealed to.
/// Errors: SealKeyMissing, SealRefused, BackupChanged.
base::Outcome proveBackup(const std::string& file, const seal::Identity& by);

/// The arguments of the record commands.
struct RecordArguments {
    std::string data;
    std::optional<base::PatientId> patient;
    std::vector<std::string> papers;   ///< as typed
    std::vector<std::string> backups;  ///< files
    std::optional<std::string> as;     ///< the name of whoever opens it
    bool asLog = false;                ///< --log: who looked at and printed what
    bool asJson = false;

    /// What papers and backups say. Errors: those of headOfPaper() and headOfBackup().
    base::Result<std::vector<proof::KnownHead>> heads() const;
    /// All of them, see proveBackup().
    base::Outcome proveBackups(const seal::Identity& by) const;

    /// Nothing where they contradict the usage; `known` are the options with a value, and --log.
    static std::optional<RecordArguments> parse(const std::vector<std::string>& words,
                                                const std::set<std::string>& known);
};

}  // namespace app
