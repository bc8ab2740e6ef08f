// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/paths.h"

namespace support {

std::string sourceDir() { return NINEBARK_SOURCE_DIR; }
std::string buildDir() { return NINEBARK_BINARY_DIR; }

}  // namespace support
