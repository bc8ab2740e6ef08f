// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace base {

/// What each letter stands for in a base of as many letters, by its code; their number for what is
/// none of them.
constexpr std::array<std::uint8_t, 256> letterValues(std::string_view letters) {
    std::array<std::uint8_t, 256> values{};
    values.fill(static_cast<std::uint8_t>(letters.size()));
    for (std::size_t i = 0; i < letters.size(); ++i)
        values[static_cast<unsigned char>(letters[i])] = static_cast<std::uint8_t>(i);
    return values;
}

}  // namespace base
