// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "ledger/envelope.h"

namespace ledger {

/// Reads an entry that is as this program writes nearly all of them; what it reads, readEnvelope()
/// reads the same the long way. Nothing for all others, which may be good or bad.
std::optional<Envelope> scanEnvelope(std::string_view bytes, Box box = Box::Read);

}  // namespace ledger
