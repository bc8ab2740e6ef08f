// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "cli/command.h"

namespace app {

/// What opens the windows.
inline constexpr const char* windowsUsage = "[--real] [--data DIR]";

/// Every command there is.
CommandList allCommands();

/// Runs the command these words (without the program's name) call; "help" tells of all. Nothing
/// when there is no word or the first begins with a dash: then the windows are opened. Any other
/// word that is no command, or begins one without its second word, is wrong usage.
std::optional<ExitCode> runCommand(const std::vector<std::string>& words, std::ostream& out,
                                   std::ostream& err);

/// The same for main(): the exit code, when a command ran.
std::optional<int> runCommand(int argc, char** argv);

}  // namespace app
