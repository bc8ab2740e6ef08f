// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/base64url.h"

#include <sodium.h>

#include <array>
#include <cstdint>

#include "base/lettervalues.h"

namespace ledger {
namespace {

constexpr std::uint8_t noLetter = 64;  // beside the values of six bits

constexpr std::array<std::uint8_t, 256> values =
    base::letterValues("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_");

std::uint32_t valueOf(char letter) { return values[static_cast<unsigned char>(letter)]; }

/// Four letters, three bytes. False when one of the four is none.
bool readFour(const char* letters, char* bytes) {
    const std::uint32_t a = valueOf(letters[0]), b = valueOf(letters[1]), c = valueOf(letters[2]),
                        d = valueOf(letters[3]);
    const std::uint32_t all = a << 18U | b << 12U | c << 6U | d;
    bytes[0] = static_cast<char>(all >> 16U);
    bytes[1] = static_cast<char>(all >> 8U);
    bytes[2] = static_cast<char>(all);
    return ((a | b | c | d) & noLetter) == 0;
}

/// All bits for one that is none. In bytes alone and without a table, so that a compiler looks at
/// many at once.
std::uint8_t wrongBits(char letter) {
    const auto all = [](bool is) { return static_cast<std::uint8_t>(is ? 255 : 0); };
    const auto code = static_cast<std::uint8_t>(letter);
    const std::uint8_t alpha = all(static_cast<std::uint8_t>((code | 0x20U) - 'a') < 26);
    const std::uint8_t digit = all(static_cast<std::uint8_t>(code - '0') < 10);
    const std::uint8_t other = all(code == '-') | all(code == '_');
    return static_cast<std::uint8_t>(~(alpha | digit | other));
}

}  // namespace

std::string toBase64Url(std::string_view bytes) {
    constexpr int variant = sodium_base64_VARIANT_URLSAFE_NO_PADDING;
    std::string text(sodium_base64_encoded_len(bytes.size(), variant), '\0');
    sodium_bin2base64(text.data(), text.size(),
                      reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), variant);
    text.pop_back();  // the closing zero
    return text;
}

// libsodium reads it so that its time tells nothing of the letters, ten times slower. Nothing that
// is read here is a secret.
std::optional<std::string> fromBase64Url(std::string_view text) {
    const std::size_t fours = text.size() / 4, rest = text.size() % 4;
    if (rest == 1) return std::nullopt;
    std::string bytes(fours * 3 + (rest == 0 ? 0 : rest - 1), '\0');
    bool isGood = true;
    for (std::size_t i = 0; i < fours; ++i)
        isGood = readFour(text.data() + 4 * i, bytes.data() + 3 * i) && isGood;
    if (rest == 0) return isGood ? std::optional(std::move(bytes)) : std::nullopt;
    // "A" is six bits of zero: what it is put in for has to be zero in what was there.
    std::array<char, 4> last{'A', 'A', 'A', 'A'};
    text.copy(last.data(), rest, fours * 4);
    std::array<char, 3> end{};
    isGood = readFour(last.data(), end.data()) && isGood;
    for (std::size_t i = 0; i < end.size(); ++i) {
        if (i < rest - 1)
            bytes[fours * 3 + i] = end[i];
        else
            isGood = isGood && end[i] == 0;
    }
    return isGood ? std::optional(std::move(bytes)) : std::nullopt;
}

bool isBase64Url(std::string_view text) {
    std::uint8_t wrong = 0;
    for (const char letter : text) wrong |= wrongBits(letter);
    const std::size_t rest = text.size() % 4;
    if (wrong != 0 || rest < 2) return wrong == 0 && rest == 0;
    const std::uint32_t spareBits = rest == 2 ? 15U : 3U;
    return (valueOf(text.back()) & spareBits) == 0;
}

}  // namespace ledger
