// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "packs/fault.h"
#include "packs/pack.h"

namespace packs {

enum class ReadOutcome {
    Read,
    Refused,     ///< JSON, but not a pack of format 1: see the faults
    NotJson,     ///< no JSON, not UTF-8, or cut short
    TooLarge,    ///< more than 4 MiB, 64 levels or 250 000 values
    FromFuture,  ///< of a format that this program does not know yet
};

struct Reading {
    ReadOutcome outcome = ReadOutcome::Refused;
    std::optional<Pack> pack;   ///< only where Read
    std::vector<Fault> faults;  ///< at most Faults::most; empty only where Read
};

/// Reads the bytes of a pack file. All faults of shape, ids, languages and references are gathered;
/// these checks decide, the JSON Schema only describes.
Reading read(std::string_view bytes);

/// Reads only the keys that the way back depends on, and ignores all others; texts stay empty.
Reading readForRecovery(std::string_view bytes);

/// The same as read(), for whom the first fault is enough.
base::Result<Pack> readPack(std::string_view bytes);
/// The outcome and first fault of a reading that failed, as an error.
base::Error errorOf(const Reading& reading);

/// SHA-256 over the RFC 8785 canonical form of a pack, 64 lower-case hex digits. The same for every
/// spelling of the same pack. Errors: those of readPack.
base::Result<std::string> digest(std::string_view bytes);

}  // namespace packs
