// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/packcommands.h"

#include "cli/packcheckcommand.h"
#include "cli/packdigestcommand.h"
#include "cli/packrecovercommand.h"

namespace app {

void addPackCommands(CommandList& commands) {
    commands.push_back(std::make_unique<PackCheckCommand>());
    commands.push_back(std::make_unique<PackRecoverCommand>());
    commands.push_back(std::make_unique<PackDigestCommand>());
}

}  // namespace app
