// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"
#include "cli/passphrase.h"

namespace app {

/// The folded record of one patient, the list of learners, or with --log who looked at and printed
/// what. A sealed record takes --as and that
/// person's passphrase, see askSecret(); who reads it this way leaves no line in its log. Exit: 0
/// shown, 1 there is no such patient or an entry is damaged, 2 unreadable, also for want of a key.
class RecordShowCommand : public Command {
  public:
    /// `input`: the descriptor a passphrase is asked and answered through.
    explicit RecordShowCommand(int input = standardInput) : m_input(input) {}
    std::string name() const override { return "record show"; }
    std::string usage() const override {
        return "--data DIR [--as NAME] [--patient ID | --log] [--json]";
    }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;

  private:
    int m_input;
};

/// Makes every derived row from the entries again; those of a sealed record by the passphrase of a
/// person who can read it, see askSecret(). Exit: 0 done, 1 an entry is damaged (nothing was
/// changed) or entries are missing at the end (what is there is in order again), 2 all else that is
/// wrong, as that it is sealed and nobody is named.
class RecordRebuildCommand : public Command {
  public:
    /// `input`: the descriptor a passphrase is asked and answered through.
    explicit RecordRebuildCommand(int input = standardInput) : m_input(input) {}
    std::string name() const override { return "record rebuild"; }
    std::string usage() const override { return "--data DIR [--as NAME] [--json]"; }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;

  private:
    int m_input;
};

}  // namespace app
