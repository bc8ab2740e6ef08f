// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/id.h"

#include <sodium.h>

#include <array>
#include <cstdint>

#include "base/check.h"
#include "base/lettervalues.h"

namespace base {
namespace {

constexpr std::string_view alphabet = "abcdefghijklmnopqrstuvwxyz234567";
constexpr std::size_t idLetters = 26;  // 128 bits in groups of 5, the last holding 3
constexpr std::uint8_t noLetter = 32;  // beside the values of five bits

constexpr std::array<std::uint8_t, 256> values = letterValues(alphabet);

unsigned valueOf(char letter) { return values[static_cast<unsigned char>(letter)]; }

}  // namespace

std::string randomIdText() {
    REQUIRE(sodium_init() >= 0);
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    std::string text;
    unsigned held = 0;
    int bits = 0;
    for (const unsigned char byte : bytes) {
        held = (held << 8) | byte;
        bits += 8;
        while (bits >= 5) {
            bits -= 5;
            text += alphabet[(held >> bits) & 31U];
        }
    }
    text += alphabet[(held << (5 - bits)) & 31U];
    return text;
}

bool isIdText(std::string_view text) {
    if (text.size() != idLetters) return false;
    unsigned seen = 0;
    for (const char letter : text) seen |= valueOf(letter);
    return (seen & noLetter) == 0 && (valueOf(text.back()) & 3U) == 0;
}

}  // namespace base
