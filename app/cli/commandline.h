// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "cli/command.h"

namespace app {

/// Every command there is.
CommandList allCommands();

/// Runs the command these words (without the program's name) call. Nothing when they call none;
/// then the windows are opened. A first word that begins a command but not the second is wrong
/// usage.
std::optional<ExitCode> runCommand(const std::vector<std::string>& words, std::ostream& out,
                                   std::ostream& err);

/// The same for main(): the exit code, when a command ran.
std::optional<int> runCommand(int argc, char** argv);

}  // namespace app
