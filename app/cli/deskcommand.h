// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>

#include "cli/command.h"

namespace app {

/// The windows' Commands as lines on standard input, an answer a line; see desklines.h. The folder
/// is that of the windows: without a record in it, the ward of invented people is made. With
/// --clock the time is read from this file before each command, see clockfile.h.
class DeskCommand : public Command {
  public:
    explicit DeskCommand(std::istream& in) : m_in(in) {}
    std::string name() const override { return "desk"; }
    std::string usage() const override { return "--data DIR [--clock FILE] < COMMANDS"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;

  private:
    std::istream& m_in;
};

}  // namespace app
