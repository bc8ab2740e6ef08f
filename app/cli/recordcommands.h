// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"

namespace app {

/// The folded record of one patient, or the list of learners.
class RecordShowCommand : public Command {
  public:
    std::string name() const override { return "record show"; }
    std::string usage() const override { return "--data DIR [--patient ID] [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

/// Makes every derived row from the entries again. Exit: 0 done, 1 an entry is damaged (nothing
/// was changed) or entries are missing at the end (what is there is in order again).
class RecordRebuildCommand : public Command {
  public:
    std::string name() const override { return "record rebuild"; }
    std::string usage() const override { return "--data DIR [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

}  // namespace app
