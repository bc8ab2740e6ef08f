// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/result.h"
#include "proof/finding.h"

namespace ui {

/// What the audit page asks of the program.
class Auditor {
  public:
    virtual ~Auditor() = default;
    /// Everything, and the letters of a paper; "" for none. Takes time in proportion to the record.
    /// Errors: those of seal::readPaperLetters() and of the store.
    virtual base::Result<proof::Report> verify(const std::string& paper) = 0;
};

}  // namespace ui
