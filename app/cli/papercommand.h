// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"

namespace app {

/// Makes a paper of the demonstration record in a folder. Needs no display.
class PaperCommand : public Command {
  public:
    std::string name() const override { return "paper"; }
    std::string usage() const override {
        return "chart|certificate|going-home|steps|note --data DIR --learner ID --out FILE "
               "[--pack ID] [--letter] [--clock FILE] [--json]";
    }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

}  // namespace app
