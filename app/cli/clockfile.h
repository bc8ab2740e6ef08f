// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/clock.h"
#include "base/result.h"

namespace app {

/// Reads the three clocks from a file, for scripts that are to come out the same every time. The
/// file is one JSON object; all of it is needed:
///
///     {"wall_ms": 1772445600000, "boot_ms": 900000000, "mono_ms": 900000000,
///      "boot_id": "scripted", "offset_minutes": 0, "zone": "UTC"}
///
/// wall_ms is UTC in milliseconds since 1970, boot_ms goes on through suspend and mono_ms does
/// not, offset_minutes is local time minus UTC. Replace the file by renaming another one to its
/// name, so that nobody reads half of it. Errors: FileUnreadable, BadJson, BadField.
base::Result<base::Instant> readClockFile(const std::string& path);

}  // namespace app
