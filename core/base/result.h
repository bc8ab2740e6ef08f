// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace base {

/// Every way in which something can be refused. The list, with a plain English line for logs and
/// the command line, is errorcodes.def; ui/text/errortext.cpp has the sentence a person reads.
enum class Code {
#define NINEBARK_ERROR(name, slug, english) name,
#include "base/errorcodes.def"
#undef NINEBARK_ERROR
};

/// What went wrong: a code and the words that fill %1, %2 … of its sentence. No prose, and never
/// anything a patient could be known by.
struct Error {
    Code code;
    std::vector<std::string> args = {};

    bool operator==(const Error&) const = default;
};

/// The stable spelling of a code in JSON answers, for instance "visit/not-fitting".
std::string slug(Code code);
/// The plain English line of an error, its arguments filled in.
std::string english(const Error& error);
/// The code with this slug, if there is one.
std::optional<Code> codeOf(const std::string& slugText);
/// All codes in their order; for tests that look for a missing sentence.
std::vector<Code> allCodes();

/// A value, or why there is none.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : m_content(std::move(value)) {}
    Result(Error error) : m_content(std::move(error)) {}

    bool ok() const { return std::holds_alternative<T>(m_content); }
    explicit operator bool() const { return ok(); }
    const T& value() const& { return std::get<T>(m_content); }
    T& value() & { return std::get<T>(m_content); }
    T&& value() && { return std::get<T>(std::move(m_content)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }
    const Error& error() const { return std::get<Error>(m_content); }

  private:
    std::variant<T, Error> m_content;
};

/// Something that has no value but can be refused.
struct Done {
    bool operator==(const Done&) const = default;
};
using Outcome = Result<Done>;

}  // namespace base
