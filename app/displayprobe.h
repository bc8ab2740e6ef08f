// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace app {

/// Whether the program was started as `ninebark --probe-display`, which app/run.sh does.
bool isDisplayProbe(int argc, char** argv);

/// Connects to the display that the environment names. Returns the exit code: 0 when it answered,
/// 1 when Qt took a platform without a screen. Qt itself aborts the process when none answers.
int probeDisplay(int argc, char** argv);

}  // namespace app
