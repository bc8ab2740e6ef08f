// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "base/fields.h"

namespace support {

/// Fills every field of a described struct: every optional is there, every list has one item, so
/// that its JSON shows the whole shape. Gathers the words of every enumeration by their path.
class Filler {
  public:
    explicit Filler(std::string path = "") : m_path(std::move(path)) {}

    template <class T>
    void operator()(const char* key, T& field) {
        fill(m_path + '/' + key, field);
    }

    nlohmann::json words = nlohmann::json::object();

  private:
    template <class T>
    void fill(const std::string& path, T& field) {
        namespace detail = base::detail;
        if constexpr (detail::IsOptional<T>::value) {
            fill(path, field.emplace());
        } else if constexpr (detail::IsVector<T>::value) {
            field.resize(1);
            fill(path + "/0", field.front());
        } else if constexpr (detail::IsId<T>::value) {
            field = *T::parse(std::string(25, static_cast<char>('b' + m_ids++ % 20)) + 'a');
        } else if constexpr (std::is_enum_v<T>) {
            for (const auto& [value, name] : base::Names<T>::all) {
                words[path].push_back(name);
                field = value;
            }
        } else if constexpr (std::is_same_v<T, bool>) {
            field = true;
        } else if constexpr (std::is_arithmetic_v<T>) {
            field = static_cast<T>(++m_numbers);
        } else if constexpr (std::is_same_v<T, std::string>) {
            field = path;
        } else {
            Filler inner(path);
            inner.m_ids = m_ids;
            inner.m_numbers = m_numbers;
            field.fields(inner);
            words.update(inner.words);
            m_ids = inner.m_ids;
            m_numbers = inner.m_numbers;
        }
    }

    std::string m_path;
    int m_ids = 0;
    int m_numbers = 0;
};

}  // namespace support
