// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "packs/pack.h"

namespace packs {

/// The words of an enum as a pack file spells them, in the order of its values.
template <class Enum>
std::span<const std::string_view> names();

template <>
std::span<const std::string_view> names<Lane>();
template <>
std::span<const std::string_view> names<Shows>();
template <>
std::span<const std::string_view> names<PhaseKind>();
template <>
std::span<const std::string_view> names<Motion>();
template <>
std::span<const std::string_view> names<By>();
template <>
std::span<const std::string_view> names<Taken>();
template <>
std::span<const std::string_view> names<ReadBy>();
template <>
std::span<const std::string_view> names<Severity>();
template <>
std::span<const std::string_view> names<Action>();
template <>
std::span<const std::string_view> names<Call>();
template <>
std::span<const std::string_view> names<Standing>();
template <>
std::span<const std::string_view> names<TranslationState>();
template <>
std::span<const std::string_view> names<LearnerKind>();
template <>
std::span<const std::string_view> names<Way>();
template <>
std::span<const std::string_view> names<Level>();

template <class Enum>
std::string name(Enum value) {
    return std::string(names<Enum>()[static_cast<std::size_t>(value)]);
}

template <class Enum>
std::optional<Enum> named(std::string_view word) {
    const auto words = names<Enum>();
    for (std::size_t i = 0; i < words.size(); ++i)
        if (words[i] == word) return static_cast<Enum>(i);
    return std::nullopt;
}

}  // namespace packs
