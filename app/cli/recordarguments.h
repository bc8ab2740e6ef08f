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

/// The arguments of the record commands.
struct RecordArguments {
    std::string data;
    std::optional<base::PatientId> patient;
    std::vector<std::string> papers;   ///< as typed
    std::vector<std::string> backups;  ///< files
    std::optional<std::string> as;     ///< the name of whoever opens it
    bool asJson = false;

    /// What papers and backups say. Errors: those of seal::readCode(), which name the line that is
    /// not as it was printed, and of store::readBackupHead().
    base::Result<std::vector<proof::KnownHead>> heads() const;
    /// Whether the heads of the backups are those that were sealed with them, as somebody can tell
    /// whom they were sealed to. Errors: SealKeyMissing, SealRefused, BackupChanged.
    base::Outcome proveBackups(const seal::Identity& by) const;

    /// Nothing where they contradict the usage; `known` are the options with a value.
    static std::optional<RecordArguments> parse(const std::vector<std::string>& words,
                                                const std::set<std::string>& known);
};

}  // namespace app
