// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "base/id.h"
#include "base/result.h"

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

namespace detail {

class Writer;
class Reader;

template <class T>
concept Described = requires(T t, Writer& w) {
    t.fields(w);
};

template <class T>
struct IsVector : std::false_type {};
template <class T>
struct IsVector<std::vector<T>> : std::true_type {};
template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};
template <class T>
struct IsId : std::false_type {};
template <class T>
struct IsId<Id<T>> : std::true_type {};

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

}  // namespace detail

template <class T>
nlohmann::json toJson(const T& value) {
    T copy = value;  // fields() serves reading too and so is not const
    return detail::Writer::write(copy);
}

/// Errors: BadField with the JSON Pointer of the first field that is wrong.
template <class T>
Result<T> fromJson(const nlohmann::json& json) {
    T value{};
    detail::Reader reader(json, "");
    if (!reader.error) value.fields(reader);
    reader.finish();
    if (reader.error) return *reader.error;
    return value;
}

}  // namespace base
