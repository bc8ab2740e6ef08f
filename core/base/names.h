// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <utility>

/// The words of an enumeration, as they stand in JSON.
namespace base {

template <class Enum>
struct Names;  // specialised with: static constexpr std::array of pair<Enum, const char*> all

template <class Enum>
std::string nameOf(Enum value) {
    for (const auto& [one, name] : Names<Enum>::all)
        if (one == value) return name;
    return {};
}

template <class Enum>
std::optional<Enum> valueOf(const std::string& text) {
    for (const auto& [one, name] : Names<Enum>::all)
        if (text == name) return one;
    return std::nullopt;
}

}  // namespace base
