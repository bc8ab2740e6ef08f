// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/paths.h"

#include <cstdlib>
#include <filesystem>

namespace support {

std::string sourceDir() { return NINEBARK_SOURCE_DIR; }
std::string buildDir() { return NINEBARK_BINARY_DIR; }

std::string forLooking(const std::string& name) {
    const char* named = std::getenv("NINEBARK_PICTURES");
    if (!named || !*named) return std::filesystem::temp_directory_path() / name;
    std::filesystem::create_directories(named);
    return std::filesystem::path(named) / name;
}

}  // namespace support
