// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/fieldreader.h"
#include "base/fieldwriter.h"

/// Values that read and write themselves as JSON. A struct lists its fields once:
///
///     struct Point {
///         std::string id;
///         std::optional<int> weight;
///         template <class V> void fields(V& v) { v("id", id); v("weight", weight); }
///     };
///
/// and an enumeration names its values once, by specialising Names. An absent optional and an empty
/// list are left out when writing; unknown keys are refused when reading.
namespace base {

template <class T>
nlohmann::json toJson(const T& value) {
    T copy = value;  // fields() serves reading too and so is not const
    return detail::Writer::write(copy);
}

/// Errors: BadField with the JSON Pointer of the first field that is wrong.
template <class T>
Result<T> fromJson(const nlohmann::json& json) {
    T value{};
    const detail::Place whole;
    detail::Reader reader(json, whole);
    if (!reader.error) value.fields(reader);
    reader.finish();
    if (reader.error) return *reader.error;
    return value;
}

}  // namespace base
