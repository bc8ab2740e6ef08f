// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <string>

#include "base/result.h"
#include "seal/secret.h"

namespace app {

/// The descriptor commands are asked and answered through.
inline constexpr int standardInput = 0;

/// One line without its end. At a terminal it is asked for by `prompt` and not shown while it is
/// typed, and asked again of whoever stopped the program meanwhile; from anything else the first
/// line is taken and not a byte more, so that what follows is there for whoever reads next. Errors:
/// PassphraseMissing, TextBad when it is longer than any, FileUnreadable.
base::Result<seal::Secret> askSecret(const std::string& prompt, int input, std::ostream& err);

}  // namespace app
