// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace base {

enum class Breaks { Stay, BecomeSpaces };

/// Text as it is kept: NFC, without control characters and without the invisible ones that turn
/// the direction of what stands around them; tabs are spaces. Nothing when it is not UTF-8.
std::optional<std::string> cleanText(const std::string& text, Breaks breaks = Breaks::Stay);
/// No letter or digit in it.
bool isBlank(const std::string& text);

}  // namespace base
