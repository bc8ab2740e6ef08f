// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace seal {

/// The bytes of an even number of hex digits; blanks between them are left out.
inline std::string fromHex(std::string_view hex) {
    const auto digit = [](char letter) { return letter <= '9' ? letter - '0' : letter - 'a' + 10; };
    std::string digits;
    for (const char letter : hex)
        if (letter != ' ') digits += letter;
    std::string bytes;
    for (std::size_t i = 0; i + 1 < digits.size(); i += 2)
        bytes += static_cast<char>(digit(digits[i]) * 16 + digit(digits[i + 1]));
    return bytes;
}

inline std::string hexOf(std::string_view bytes) {
    std::string hex;
    for (const char letter : bytes) {
        const auto byte = static_cast<unsigned char>(letter);
        hex += "0123456789abcdef"[byte >> 4];
        hex += "0123456789abcdef"[byte & 15];
    }
    return hex;
}

/// The bytes with one bit turned over.
inline std::string withBitTurned(std::string bytes, std::size_t bit) {
    bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
    return bytes;
}

}  // namespace seal
