// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>

#include "cli/command.h"
#include "proof/finding.h"

namespace app {

/// What was looked at and found: with --json one object on `out`; in words what is wrong on `err`.
/// Exit: 0 intact, 1 wrong, 3 intact as far as can be seen without a key.
ExitCode tell(const proof::Report& report, bool asJson, std::ostream& out, std::ostream& err);

}  // namespace app
