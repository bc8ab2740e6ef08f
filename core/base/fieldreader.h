// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <type_traits>
#include <utility>

#include "base/fieldkinds.h"
#include "base/names.h"
#include "base/result.h"

namespace base::detail {

/// Visits the fields of a value and fills them from a JSON object; stops at the first that is
/// wrong.
class Reader {
  public:
    Reader(const nlohmann::json& json, std::string path) : m_json(json), m_path(std::move(path)) {
        if (!m_json.is_object()) fail(m_path, "should be an object");
    }

    template <class T>
    void operator()(const char* key, T& field) {
        if (error) return;
        m_known.insert(key);
        const auto found = m_json.find(key);
        const std::string path = m_path + "/" + key;
        if (found == m_json.end()) {
            if constexpr (!IsOptional<T>::value && !IsVector<T>::value) fail(path, "is missing");
            return;
        }
        read(*found, path, field);
    }

    void finish() {
        if (error) return;
        for (const auto& item : m_json.items())
            if (!m_known.count(item.key())) return fail(m_path + "/" + item.key(), "is not known");
    }

    std::optional<Error> error;

  private:
    void fail(const std::string& path, const std::string& why) {
        if (!error) error = Error{Code::BadField, {path.empty() ? "/" : path, why}};
    }

    template <class T>
    void read(const nlohmann::json& json, const std::string& path, T& field) {
        if constexpr (IsOptional<T>::value) {
            field.emplace();
            read(json, path, *field);
        } else if constexpr (IsVector<T>::value) {
            if (!json.is_array()) return fail(path, "should be a list");
            for (std::size_t i = 0; i < json.size(); ++i) {
                field.emplace_back();
                read(json[i], path + "/" + std::to_string(i), field.back());
            }
        } else if constexpr (IsId<T>::value) {
            if (!json.is_string()) return fail(path, "should be an id");
            auto parsed = T::parse(json.get<std::string>());
            if (!parsed) return fail(path, "is no id");
            field = *parsed;
        } else if constexpr (std::is_enum_v<T>) {
            if (!json.is_string()) return fail(path, "should be a word");
            const auto value = valueOf<T>(json.get<std::string>());
            if (!value) return fail(path, "is none of the known words");
            field = *value;
        } else {
            readPlain(json, path, field);
        }
    }

    template <class T>
    void readPlain(const nlohmann::json& json, const std::string& path, T& field) {
        if constexpr (std::is_same_v<T, bool>) {
            if (!json.is_boolean()) return fail(path, "should be true or false");
            field = json.get<bool>();
        } else if constexpr (std::is_arithmetic_v<T>) {
            if (!json.is_number_integer()) return fail(path, "should be a whole number");
            constexpr std::int64_t most = 9007199254740991;  // 2^53 - 1, RFC 8785
            if (json.is_number_unsigned() && json.get<std::uint64_t>() > std::uint64_t{most})
                return fail(path, "is too large");
            const auto value = json.get<std::int64_t>();
            if (value > most || value < -most) return fail(path, "is too large");
            if (sizeof(T) < 8 && (value > INT32_MAX || value < INT32_MIN))
                return fail(path, "is too large");
            field = static_cast<T>(value);
        } else if constexpr (std::is_same_v<T, std::string>) {
            if (!json.is_string()) return fail(path, "should be text");
            field = json.get<std::string>();
        } else {
            Reader inner(json, path);
            field.fields(inner);
            inner.finish();
            if (inner.error && !error) error = inner.error;
        }
    }

    const nlohmann::json& m_json;
    std::string m_path;
    std::set<std::string> m_known;
};

}  // namespace base::detail
