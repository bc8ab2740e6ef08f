// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>

#include "cli/desklines.h"
#include "cli/passphrase.h"
#include "gate/gate.h"

namespace app {

struct DeskArguments;

/// The windows' Commands as lines on standard input, an answer a line; see desklines.h. The folder
/// is that of the windows: without a record in it, the ward of invented people is made. A record of
/// real people is worked on by whoever --as names: their passphrase is asked for at the terminal,
/// or is the first line of the input, and for each sign-off once more, as a line. With --clock the
/// time is read from this file before each command, see clockfile.h; for invented people alone.
class DeskCommand : public Command {
  public:
    /// `in` reads on from `input`, the descriptor a passphrase is asked and answered through.
    /// `terms`: what passphrases have to cost.
    explicit DeskCommand(std::istream& in, int input = standardInput, gate::Terms terms = {})
        : m_in(in), m_input(input), m_terms(terms) {}
    std::string name() const override { return "desk"; }
    std::string usage() const override {
        return "--data DIR [--as NAME] [--clock FILE] < COMMANDS";
    }
    ExitCode run(const std::vector<std::string>& arguments, std::ostream& out,
                 std::ostream& err) const override;

  private:
    base::Result<ExitCode> serve(const DeskArguments& asked, const base::Clock& clock,
                                 DeskLines lines, std::ostream& err) const;

    std::istream& m_in;
    int m_input;
    gate::Terms m_terms;
};

}  // namespace app
