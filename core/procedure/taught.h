// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/result.h"
#include "procedure/shelf.h"

namespace procedure {

/// Reads a pack file's bytes (any spelling) and makes it ready to be taught. Errors: those of
/// packs::readPack.
base::Result<TaughtPtr> readTaught(const std::string& bytes);

}  // namespace procedure
