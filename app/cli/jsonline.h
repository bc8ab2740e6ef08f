// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <iosfwd>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "base/result.h"

namespace app {

/// No command is as long; a line that is, is read to its end and refused.
inline constexpr std::size_t longestLine = std::size_t{256} * 1024;

/// One line without its end, cut off after longestLine + 1 bytes; nothing at the end of the input.
std::optional<std::string> nextLine(std::istream& in);
/// One JSON value. Error: BadJson with the byte where it went wrong, also for doubled keys, for
/// more than 32 levels, and for more bytes than longestLine.
base::Result<nlohmann::json> readJsonLine(const std::string& line);

}  // namespace app
