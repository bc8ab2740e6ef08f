// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <string>
#include <string_view>

#include "base/result.h"

namespace base {

/// 128 random bits from the system as 26 letters of base 32 (RFC 4648 alphabet in lower case).
std::string randomIdText();
/// Whether this is 26 letters of that alphabet whose spare bits are zero.
bool isIdText(std::string_view text);

/// The name of one thing. Ids of different kinds do not mix.
template <class Tag>
class Id {
  public:
    static Result<Id> parse(std::string_view text) {
        if (!isIdText(text)) return Error{Code::BadId};
        return Id(std::string(text));
    }
    static Id random() { return Id(randomIdText()); }
    /// Names nothing; only what is about to be read into is left so.
    Id() = default;

    const std::string& text() const { return m_text; }
    auto operator<=>(const Id&) const = default;

  private:
    explicit Id(std::string text) : m_text(std::move(text)) {}
    std::string m_text;
};

using CommandId = Id<struct CommandTag>;  ///< also the id of the entry the command leads to
using LedgerId = Id<struct LedgerTag>;
using PatientId = Id<struct PatientTag>;
using LineId = Id<struct LineTag>;
using LearnerId = Id<struct LearnerTag>;
using StaffId = Id<struct StaffTag>;
using VisitId = Id<struct VisitTag>;

}  // namespace base
