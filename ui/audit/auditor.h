// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include "base/result.h"
#include "proof/finding.h"

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
    /// What is to be run for the letters of a paper, "" for none. Errors: those of
    /// seal::readPaperLetters().
    virtual base::Result<Run> begin(const std::string& paper) = 0;
};

}  // namespace ui
