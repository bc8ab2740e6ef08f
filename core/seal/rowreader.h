// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "seal/aead.h"

namespace seal {

/// Reads the members of a stored row and remembers the first that is wrong. Errors: SealBadRow
/// with the member's name.
class RowReader {
  public:
    RowReader(const nlohmann::json& row, std::initializer_list<std::string_view> members)
        : m_row(row) {
        if (!row.is_object()) refuse("row");
        if (m_error) return;
        for (const auto& item : row.items())
            if (std::find(members.begin(), members.end(), item.key()) == members.end())
                refuse(item.key());
        for (const std::string_view member : members)
            if (!row.contains(member)) refuse(std::string(member));
    }

    std::string text(const char* member) {
        if (m_error) return {};
        const auto& value = m_row.at(member);
        if (value.is_string()) return value.get<std::string>();
        refuse(member);
        return {};
    }

    /// Base 64 of exactly so many bytes.
    std::string bytes(const char* member, std::size_t size) {
        const auto read = ledger::fromBase64Url(text(member));
        if (!read || read->size() != size) refuse(member);
        return m_error ? std::string(size, '\0') : *read;
    }

    template <class Id>
    std::optional<Id> id(const char* member) {
        const auto read = Id::parse(text(member));
        if (!read) refuse(member);
        return read ? std::optional<Id>(*read) : std::nullopt;
    }

    /// From 1 to 2^53 - 1.
    std::int64_t positive(const char* member) {
        if (m_error) return 1;
        const auto& value = m_row.at(member);
        if (value.is_number_integer() && value > 0 && value <= ledger::largestInteger)
            return value.get<std::int64_t>();
        refuse(member);
        return 1;
    }

    /// What putSealed() wrote over so many bytes.
    Sealed sealed(std::size_t plainSize) {
        return {bytes("nonce", nonceSize), bytes("sealed", plainSize + tagSize)};
    }

    void refuse(const std::string& member) {
        if (!m_error) m_error = base::Error{base::Code::SealBadRow, {member}};
    }
    const std::optional<base::Error>& error() const { return m_error; }

  private:
    const nlohmann::json& m_row;
    std::optional<base::Error> m_error;
};

inline void putSealed(nlohmann::json& row, const Sealed& sealed) {
    row["nonce"] = ledger::toBase64Url(sealed.nonce);
    row["sealed"] = ledger::toBase64Url(sealed.box);
}

}  // namespace seal
