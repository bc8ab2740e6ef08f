// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "base/fieldkinds.h"
#include "base/names.h"
#include "base/result.h"

namespace base::detail {

/// Where a value stands in what is read; made into a JSON Pointer when something is wrong there.
struct Place {
    const Place* above = nullptr;  ///< null: the whole
    const char* key = nullptr;     ///< null: an element of a list
    std::size_t index = 0;

    std::string text() const {
        if (!above) return {};
        return above->text() + "/" + (key ? std::string(key) : std::to_string(index));
    }
};

/// Visits the fields of a value and fills them from a JSON object; stops at the first that is
/// wrong. Every field has another key.
class Reader {
  public:
    /// `place` outlives it.
    Reader(const nlohmann::json& json, const Place& place) : m_json(json), m_place(place) {
        if (!m_json.is_object()) fail(m_place, "should be an object");
    }

    template <class T>
    void operator()(const char* key, T& field) {
        if (error) return;
        m_known.push_back(key);
        const Place place{&m_place, key};
        const auto found = m_json.find(key);
        if (found == m_json.end()) {
            if constexpr (!IsOptional<T>::value && !IsVector<T>::value) fail(place, "is missing");
            return;
        }
        ++m_found;
        read(*found, place, field);
    }

    void finish() {
        if (error || m_found == m_json.size()) return;
        for (const auto& item : m_json.items())
            if (std::find(m_known.begin(), m_known.end(), item.key()) == m_known.end())
                return fail({&m_place, item.key().c_str()}, "is not known");
    }

    std::optional<Error> error;

  private:
    void fail(const Place& place, const std::string& why) {
        if (!error) error = Error{Code::BadField, {place.above ? place.text() : "/", why}};
    }

    template <class T>
    void read(const nlohmann::json& json, const Place& place, T& field) {
        if constexpr (IsOptional<T>::value) {
            field.emplace();
            read(json, place, *field);
        } else if constexpr (IsVector<T>::value) {
            if (!json.is_array()) return fail(place, "should be a list");
            for (std::size_t i = 0; i < json.size(); ++i) {
                field.emplace_back();
                read(json[i], {&place, nullptr, i}, field.back());
            }
        } else if constexpr (IsId<T>::value) {
            if (!json.is_string()) return fail(place, "should be an id");
            auto parsed = T::parse(json.get_ref<const std::string&>());
            if (!parsed) return fail(place, "is no id");
            field = std::move(*parsed);
        } else if constexpr (std::is_enum_v<T>) {
            if (!json.is_string()) return fail(place, "should be a word");
            const auto value = valueOf<T>(json.get_ref<const std::string&>());
            if (!value) return fail(place, "is none of the known words");
            field = *value;
        } else {
            readPlain(json, place, field);
        }
    }

    template <class T>
    void readPlain(const nlohmann::json& json, const Place& place, T& field) {
        if constexpr (std::is_same_v<T, bool>) {
            if (!json.is_boolean()) return fail(place, "should be true or false");
            field = json.get<bool>();
        } else if constexpr (std::is_arithmetic_v<T>) {
            if (!json.is_number_integer()) return fail(place, "should be a whole number");
            constexpr std::int64_t most = 9007199254740991;  // 2^53 - 1, RFC 8785
            if (json.is_number_unsigned() && json.get<std::uint64_t>() > std::uint64_t{most})
                return fail(place, "is too large");
            const auto value = json.get<std::int64_t>();
            if (value > most || value < -most) return fail(place, "is too large");
            if (sizeof(T) < 8 && (value > INT32_MAX || value < INT32_MIN))
                return fail(place, "is too large");
            field = static_cast<T>(value);
        } else if constexpr (std::is_same_v<T, std::string>) {
            if (!json.is_string()) return fail(place, "should be text");
            field = json.get<std::string>();
        } else {
            Reader inner(json, place);
            field.fields(inner);
            inner.finish();
            if (inner.error && !error) error = inner.error;
        }
    }

    const nlohmann::json& m_json;
    const Place& m_place;
    std::vector<std::string_view> m_known;
    std::size_t m_found = 0;
};

}  // namespace base::detail
