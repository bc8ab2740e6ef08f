// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace app {

/// Opens the windows on invented people: `ninebark [--data DIR]`. Returns the exit code: 2 when the
/// record can't be opened, 1 for --real, 64 for wrong usage.
int openWindows(int argc, char** argv);

}  // namespace app
