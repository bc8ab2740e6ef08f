// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"
#include "cli/passphrase.h"

namespace app {

/// Holds every entry against its hash, its place and its signatures, every derived row against the
/// entries, and what papers and backups know against all of it. With --as the bodies are opened by
/// that person's passphrase, see askSecret(), and a backup has to open by it too: without a key
/// nothing shows whose head it has. Exit: 0 intact, 1 what is wrong is named, 2
/// unreadable, 3 intact as far as can be seen without a key.
class RecordVerifyCommand : public Command {
  public:
    /// `input`: the descriptor a passphrase is asked and answered through.
    explicit RecordVerifyCommand(int input = standardInput) : m_input(input) {}
    std::string name() const override { return "record verify"; }
    std::string usage() const override {
        return "--data DIR [--as NAME] [--paper CODE]... [--backup FILE]... [--json]";
    }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;

  private:
    int m_input;
};

}  // namespace app
