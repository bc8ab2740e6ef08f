// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <type_traits>

#include "base/fieldkinds.h"
#include "base/names.h"

namespace base::detail {

/// Visits the fields of a value and puts them into a JSON object.
class Writer {
  public:
    template <class T>
    void operator()(const char* key, T& field) {
        if constexpr (IsOptional<T>::value) {
            if (field) json[key] = write(*field);
        } else if constexpr (IsVector<T>::value) {
            if (!field.empty()) json[key] = write(field);
        } else {
            json[key] = write(field);
        }
    }

    template <class T>
    static nlohmann::json write(T& value) {
        if constexpr (IsVector<T>::value) {
            auto list = nlohmann::json::array();
            for (auto& one : value) list.push_back(write(one));
            return list;
        } else if constexpr (IsId<T>::value) {
            return value.text();
        } else if constexpr (std::is_enum_v<T>) {
            return nameOf(value);
        } else if constexpr (std::is_arithmetic_v<T> || std::is_same_v<T, std::string>) {
            return value;
        } else {
            Writer inner;
            value.fields(inner);
            return inner.json;
        }
    }

    nlohmann::json json = nlohmann::json::object();
};

}  // namespace base::detail
