// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>

namespace packs {

/// One sentence of a pack in each of its languages: BCP 47 tag to UTF-8 string.
using Text = std::map<std::string, std::string>;

/// The text in `language`; where that is missing in `fallback` (the pack's first language); else
/// the empty string.
inline const std::string& text(const Text& texts, const std::string& language,
                               const std::string& fallback) {
    static const std::string nothing;
    if (const auto found = texts.find(language); found != texts.end()) return found->second;
    const auto other = texts.find(fallback);
    return other == texts.end() ? nothing : other->second;
}

}  // namespace packs
