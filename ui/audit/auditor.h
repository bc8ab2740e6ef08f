// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include "base/result.h"
#include "proof/knownhead.h"

namespace ui {

/// What the audit page asks of the program.
class Auditor {
  public:
    /// Told how many entries were looked at; false stops it.
    using GoOn = std::function<bool(std::uint64_t looked)>;
    /// Looks at everything, on any thread and beside windows that write. Takes time in proportion
    /// to the record, and holds the keys as long as it lives. Errors: VerifyStopped, those of the
    /// store.
    using Run = std::function<base::Result<proof::Report>(const GoOn& goOn)>;

    virtual ~Auditor() = default;
    /// What a paper says: its letters, or what its square code says. Errors: those of
    /// seal::readPaperLetters().
    virtual base::Result<proof::KnownHead> headOfPaper(const std::string& typed) const = 0;
    /// What a backup knows, proven by the keys of who is signed in. Errors: those of
    /// store::readBackupHead(), SealKeyMissing, SealRefused.
    virtual base::Result<proof::KnownHead> headOfBackup(const std::string& file) const = 0;
    /// What is to be run to hold the record against itself and against these. Errors: those of
    /// the store.
    virtual base::Result<Run> begin(const proof::KnownHeads& known) = 0;
};

}  // namespace ui
