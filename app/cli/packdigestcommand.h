// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"

namespace app {

/// The name a record gives a pack: SHA-256 over its canonical form.
class PackDigestCommand : public Command {
  public:
    std::string name() const override { return "pack digest"; }
    std::string usage() const override { return "FILE [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

}  // namespace app
