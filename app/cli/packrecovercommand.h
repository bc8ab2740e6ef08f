// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"

namespace app {

/// The way back from a lapse at any step, whether or not it is listed there.
class PackRecoverCommand : public Command {
  public:
    std::string name() const override { return "pack recover"; }
    std::string usage() const override {
        return "FILE (--after STEP | --during STEP) (--lapse LAPSE ... | --left-out STEP) "
               "[--happened STEP] [--alone] [--json]";
    }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

}  // namespace app
