// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

namespace base {

/// Text as it is kept: NFC, without control characters and without the invisible ones that turn
/// the direction of what stands around them; line breaks stay. Nothing when it is not UTF-8.
std::optional<std::string> cleanText(const std::string& text);
/// The same for every string in a JSON value, keys left alone. False when one is not UTF-8 or has
/// more bytes than `most`.
bool cleanStrings(nlohmann::json& json, std::size_t most);
/// No letter or digit in it.
bool isBlank(const std::string& text);

}  // namespace base
