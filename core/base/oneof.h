// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <type_traits>
#include <variant>

namespace base {

template <class T, class Variant>
struct OneOf;
template <class T, class... Ts>
struct OneOf<T, std::variant<Ts...>> : std::disjunction<std::is_same<T, Ts>...> {};

/// Whether a variant can hold exactly this type.
template <class T, class Variant>
constexpr bool isOneOf = OneOf<T, Variant>::value;

}  // namespace base
