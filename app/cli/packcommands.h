// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.h"

namespace app {

/// pack check, pack recover and pack digest.
void addPackCommands(CommandList& commands);

}  // namespace app
