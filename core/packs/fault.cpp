// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/fault.h"

namespace packs {

std::string inQuotes(std::string_view word) {
    constexpr std::size_t most = 40;
    std::size_t length = word.size();
    if (length > most) {
        length = most;
        // Do not cut within a character: its further bytes begin with the bits 10.
        while (length > 0 && (static_cast<unsigned char>(word[length]) & 0xC0U) == 0x80U) --length;
    }
    std::string text = "\"";
    for (const char letter : word.substr(0, length)) {
        const auto byte = static_cast<unsigned char>(letter);
        text += byte < 0x20 || byte == 0x7f ? '?' : letter;
    }
    return text + (length < word.size() ? "…\"" : "\"");
}

}  // namespace packs
