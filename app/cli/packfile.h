// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <nlohmann/json.hpp>
#include <string>

#include "base/result.h"
#include "cli/command.h"
#include "packs/reader.h"

namespace app {

using Json = nlohmann::ordered_json;

/// The bytes of a pack file, at most one more than a pack may have: a device that never ends does
/// not fill the memory. Error: FileUnreadable.
base::Result<std::string> readPackFile(const std::string& path);

/// Says why a pack was not read, and gives the exit code: Wrong when it is refused, else
/// Unreadable.
ExitCode sayRefusal(const packs::Reading& reading, bool asJson, std::ostream& out,
                    std::ostream& err);
/// Says any other error.
ExitCode sayError(const base::Error& error, ExitCode code, bool asJson, std::ostream& out,
                  std::ostream& err);

Json faultJson(const packs::Fault& fault);
/// One object on a line of its own; bytes that are no UTF-8 are replaced.
void writeJson(const Json& json, std::ostream& out);
/// Without what would steer the terminal or turn the direction of a line; controls are "?".
std::string printable(const std::string& text);

}  // namespace app
