// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/result.h"

#include <array>

namespace base {
namespace {

struct Row {
    const char* slug;
    const char* english;
};

constexpr std::array rows = {
#define NINEBARK_ERROR(name, slug, english) Row{slug, english},
#include "base/errorcodes.def"
#undef NINEBARK_ERROR
};

const Row& row(Code code) { return rows.at(static_cast<std::size_t>(code)); }

}  // namespace

std::string slug(Code code) { return row(code).slug; }

std::string english(const Error& error) {
    std::string text = row(error.code).english;
    for (std::size_t i = error.args.size(); i-- > 0;) {
        const std::string mark = "%" + std::to_string(i + 1);
        if (const auto at = text.find(mark); at != std::string::npos)
            text.replace(at, mark.size(), error.args[i]);
    }
    return text;
}

std::optional<Code> codeOf(const std::string& slugText) {
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (slugText == rows[i].slug) return static_cast<Code>(i);
    return std::nullopt;
}

std::vector<Code> allCodes() {
    std::vector<Code> codes;
    for (std::size_t i = 0; i < rows.size(); ++i) codes.push_back(static_cast<Code>(i));
    return codes;
}

}  // namespace base
