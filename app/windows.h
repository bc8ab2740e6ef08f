// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "compose.h"

namespace app {

/// Opens the windows: `ninebark [--real] [--data DIR]`, on invented people, or on a sealed record
/// where people sign in. Returns the exit code: 2 when the record can't be opened, 64 for wrong
/// usage.
int openWindows(int argc, char** argv);

/// composeWard(); while that is refused, a window says why and what to do, and tries again when it
/// is asked to. Nothing: the person gave it up. Needs a QApplication.
std::optional<Composed> openWard(const QString& folder, const base::Clock& clock);

}  // namespace app
