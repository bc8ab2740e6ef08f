// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace support {

std::string sourceDir();  ///< where the project's CMakeLists.txt lies
std::string buildDir();   ///< where the program `ninebark` was built

}  // namespace support
