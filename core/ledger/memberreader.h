// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "base/clock.h"
#include "base/result.h"

namespace ledger {

/// Reads the members of one object and remembers the first thing that is wrong with it.
class MemberReader {
  public:
    MemberReader(const nlohmann::json& object, std::string where)
        : m_object(object), m_where(std::move(where)) {
        if (!object.is_object()) refuse("", "is no object");
    }

    void only(std::initializer_list<std::string_view> known) {
        if (m_error) return;
        for (auto item = m_object.begin(); item != m_object.end(); ++item)
            if (std::find(known.begin(), known.end(), item.key()) == known.end())
                refuse("/" + item.key(), "is not known");
    }
    bool has(const char* key) const { return !m_error && m_object.contains(key); }

    const nlohmann::json* member(const char* key, nlohmann::json::value_t type) {
        if (m_error) return nullptr;
        const auto found = m_object.find(key);
        if (found == m_object.end()) return refuse(std::string("/") + key, "is missing");
        const bool fits = type == nlohmann::json::value_t::number_integer
                              ? found->is_number_integer()
                              : found->type() == type;
        if (!fits) return refuse(std::string("/") + key, "is of the wrong kind");
        return &*found;
    }

    std::string text(const char* key) {
        const nlohmann::json* value = member(key, nlohmann::json::value_t::string);
        return value ? value->get<std::string>() : std::string();
    }
    std::int64_t integer(const char* key, std::int64_t least, std::int64_t most) {
        const nlohmann::json* value = member(key, nlohmann::json::value_t::number_integer);
        if (!value) return least;
        const bool tooLarge = value->is_number_unsigned() &&
                              value->get<std::uint64_t>() > static_cast<std::uint64_t>(most);
        if (tooLarge || value->get<std::int64_t>() < least || value->get<std::int64_t>() > most) {
            refuse(std::string("/") + key, "is out of range");
            return least;
        }
        return value->get<std::int64_t>();
    }
    std::int64_t moment(const char* key) {
        const auto ms = base::parseIsoUtc(text(key));
        if (!ms) refuse(std::string("/") + key, "is no moment");
        return ms.value_or(0);
    }
    template <class Id>
    std::optional<Id> id(const char* key) {
        const auto read = Id::parse(text(key));
        if (!read) refuse(std::string("/") + key, "is no id");
        return read ? std::optional<Id>(*read) : std::nullopt;
    }
    template <class Id>
    std::optional<Id> idOrNull(const char* key) {
        if (has(key) && m_object.at(key).is_null()) return std::nullopt;
        return id<Id>(key);
    }

    std::nullptr_t refuse(const std::string& key, const std::string& what) {
        if (!m_error) m_error = base::Error{base::Code::LedgerBadEntry, {m_where + key, what}};
        return nullptr;
    }
    const std::optional<base::Error>& error() const { return m_error; }

  private:
    const nlohmann::json& m_object;
    std::string m_where;
    std::optional<base::Error> m_error;
};

}  // namespace ledger
