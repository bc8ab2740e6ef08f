// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"
#include "cli/passphrase.h"

namespace app {

/// Copies a record into one sealed file, also while the windows are open. Asks for no passphrase:
/// whoever can sign in to the record can open the backup with theirs, and so does the recovery
/// sheet. Exit: 0 done, 1 there is nothing it could be sealed to, 2 unreadable or unwritable.
class BackupCommand : public Command {
  public:
    std::string name() const override { return "backup"; }
    std::string usage() const override { return "FILE --data DIR [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;
};

/// Makes the record of a folder from such a file; it goes on under a new id. The passphrase, or the
/// letters of the sheet, are asked for at the terminal, or are the first line of the input. Exit: 0
/// done, 1 it would take the place of a newer or of another record, 2 all else that is wrong.
class RestoreCommand : public Command {
  public:
    explicit RestoreCommand(int input) : m_input(input) {}
    std::string name() const override { return "restore"; }
    std::string usage() const override { return "FILE DIR (--as NAME | --recovery) [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;

  private:
    int m_input;
};

}  // namespace app
