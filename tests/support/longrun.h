// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdlib>
#include <string>

namespace support {

/// A number that tests/long.sh hands to a test by environment, or what the everyday run uses.
inline int longRunNumber(const char* name, int everyday) {
    const char* text = std::getenv(name);
    return text && *text ? std::atoi(text) : everyday;
}

}  // namespace support
