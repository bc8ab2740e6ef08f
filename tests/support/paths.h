// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace support {

std::string sourceDir();  ///< where the project's CMakeLists.txt lies
std::string buildDir();   ///< where the program `ninebark` was built
/// Where to leave what somebody may want to look at: in the folder that NINEBARK_PICTURES names,
/// else in this program's own temporary folder, gone at its end.
std::string forLooking(const std::string& name);

}  // namespace support
