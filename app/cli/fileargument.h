// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace app {

/// The arguments FILE [--json], in any order.
struct FileArgument {
    std::string path;
    bool asJson = false;

    static std::optional<FileArgument> parse(const std::vector<std::string>& arguments) {
        FileArgument asked;
        for (const std::string& argument : arguments) {
            if (argument == "--json")
                asked.asJson = true;
            else if (!asked.path.empty() || argument.empty() || argument.starts_with("--"))
                return std::nullopt;
            else
                asked.path = argument;
        }
        if (asked.path.empty()) return std::nullopt;
        return asked;
    }
};

}  // namespace app
