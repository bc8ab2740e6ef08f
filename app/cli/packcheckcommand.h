// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"

namespace app {

/// Proves a pack: exit 0 without an error, 1 when the pack is refused, 2 when it can't be read.
class PackCheckCommand : public Command {
  public:
    std::string name() const override { return "pack check"; }
    std::string usage() const override { return "FILE [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

}  // namespace app
