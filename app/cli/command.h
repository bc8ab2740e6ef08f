// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <memory>
#include <string>
#include <vector>

namespace app {

/// How a command ends, as the shell sees it.
enum class ExitCode {
    Done = 0,        ///< done, or intact
    Wrong = 1,       ///< what was asked about is wrong
    Unreadable = 2,  ///< it can't be read at all
    Unsealed = 3,    ///< intact as far as can be seen without a key
    Usage = 64,      ///< the command was not called as it has to be
};

/// One command of the command line. Answers go to `out` (with --json one object), words to `err`.
class Command {
  public:
    virtual ~Command() = default;
    /// The words that call it, for instance "pack check".
    virtual std::string name() const = 0;
    /// What follows these words, for instance "FILE [--json]".
    virtual std::string usage() const = 0;
    virtual ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                         std::ostream& err) const = 0;
};

using CommandList = std::vector<std::unique_ptr<Command>>;

}  // namespace app
