// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace app {

/// Whether these arguments ask for `visit --out DIR`.
bool isPlayedVisit(int argc, char** argv);
/// Plays one return demonstration through the real windows on a clock that is moved, with one
/// phase of two seconds on the real one, and writes papers and pictures to DIR, naming each on
/// standard output. Returns 0, 1 when something was refused, 2 when DIR can't be written, 64.
int playVisitInWindows(int argc, char** argv);

}  // namespace app
