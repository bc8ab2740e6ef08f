// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/checkedcode.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include "base/check.h"

namespace seal {
namespace {

using base::Code;
using base::Error;

constexpr std::string_view codeAlphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t contentLetters = 8;
constexpr std::size_t groupLetters = 5;
constexpr std::size_t allLetters = codeLines * codeLineLetters;

/// The field of 32 elements: polynomials over GF(2) modulo x^5 + x^2 + 1, whose root x is of order
/// 31. An element is the number whose bits are its coefficients.
using Element = unsigned;

constexpr Element timesX(Element a) {
    const Element doubled = a << 1;
    return (doubled & 32U) != 0 ? doubled ^ 0b100101U : doubled;
}

constexpr Element product(Element a, Element b) {
    Element sum = 0;
    for (; b != 0; b >>= 1) {
        if ((b & 1U) != 0) sum ^= a;
        a = timesX(a);
    }
    return sum;
}

constexpr Element inverse(Element a) {
    Element power = 1;
    for (int i = 0; i < 30; ++i) power = product(power, a);  // a^31 = 1
    return power;
}

/// A line as the code sees it: what is not printed, the content, the check.
using CodeWord = std::array<Element, 2 + codeLineLetters>;
constexpr std::size_t hiddenLetters = 2;

/// The sums over all letters of letter * x^(place * power); both are 0 for a code word.
struct Syndromes {
    Element plain = 0;
    Element weighted = 0;
    bool operator==(const Syndromes&) const = default;
};

Syndromes syndromesOf(const CodeWord& word) {
    Syndromes sums;
    for (std::size_t i = word.size(); i-- > 0;) {
        sums.plain ^= word[i];
        sums.weighted = timesX(sums.weighted) ^ word[i];
    }
    return sums;
}

/// Solves a + b = plain, x^n a + x^(n+1) b = weighted for the two letters of check.
void addCheck(CodeWord& word) {
    const std::size_t at = word.size() - 2;
    word[at] = word[at + 1] = 0;
    const Syndromes sums = syndromesOf(word);
    Element weight = 1;
    for (std::size_t i = 0; i < at; ++i) weight = timesX(weight);
    const Element next = timesX(weight);
    const Element rest = sums.weighted ^ product(weight, sums.plain);
    word[at + 1] = product(rest, inverse(weight ^ next));
    word[at] = sums.plain ^ word[at + 1];
}

CodeWord blankWord(CodeKind kind, std::size_t line) {
    CodeWord word{};
    word[0] = static_cast<Element>(kind);
    word[1] = static_cast<Element>(line);
    return word;
}

/// The group of five bits number `index`.
Element fiveBits(std::string_view bytes, std::size_t index) {
    Element bits = 0;
    for (std::size_t bit = 5 * index; bit < 5 * index + 5; ++bit) {
        const auto byte = static_cast<unsigned char>(bytes[bit / 8]);
        bits = (bits << 1) | ((byte >> (7 - bit % 8)) & 1U);
    }
    return bits;
}

void putFiveBits(Secret& bytes, std::size_t index, Element bits) {
    for (std::size_t i = 0; i < 5; ++i) {
        const std::size_t bit = 5 * index + i;
        if (((bits >> (4 - i)) & 1U) != 0)
            bytes.data()[bit / 8] |= static_cast<unsigned char>(1U << (7 - bit % 8));
    }
}

bool isLeftOut(char letter) {
    return std::string_view("- \n\r\t").find(letter) != std::string_view::npos;
}

std::optional<Element> elementOf(char letter) {
    if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    if (letter == 'O') letter = '0';
    if (letter == 'I' || letter == 'L') letter = '1';
    const auto at = codeAlphabet.find(letter);
    if (at == std::string_view::npos) return std::nullopt;
    return static_cast<Element>(at);
}

Error wrongLine(Code code, std::size_t line) { return Error{code, {std::to_string(line + 1)}}; }

/// What was typed, wiped when it goes.
struct Elements {
    std::array<Element, allLetters> all{};

    Elements() = default;
    Elements(const Elements&) = default;
    ~Elements() { sodium_memzero(all.data(), sizeof(all)); }
};

base::Result<Elements> elementsOf(std::string_view typed) {
    Elements elements;
    std::size_t count = 0;
    for (const char letter : typed) {
        if (isLeftOut(letter)) continue;
        const auto element = elementOf(letter);
        if (!element)
            return wrongLine(Code::SealCodeLetter,
                             std::min(count / codeLineLetters, codeLines - 1));
        if (count < allLetters) elements.all[count] = *element;
        ++count;
    }
    if (count != allLetters)
        return Error{Code::SealCodeLength, {std::to_string(count), std::to_string(allLetters)}};
    return elements;
}

bool isCodeWord(CodeKind kind, std::size_t line, const Elements& elements) {
    CodeWord word = blankWord(kind, line);
    std::copy_n(elements.all.begin() + line * codeLineLetters, codeLineLetters,
                word.begin() + hiddenLetters);
    return syndromesOf(word) == Syndromes{};
}

}  // namespace

Secret writeCode(CodeKind kind, const Secret& bytes) {
    REQUIRE(bytes.size() == codeBytes);
    Secret text = Secret::ofSize(codeLines * (codeLineLetters + 2) - 1);
    unsigned char* out = text.data();
    for (std::size_t line = 0; line < codeLines; ++line) {
        CodeWord word = blankWord(kind, line);
        for (std::size_t i = 0; i < contentLetters; ++i)
            word[hiddenLetters + i] = fiveBits(bytes.view(), line * contentLetters + i);
        addCheck(word);
        if (line > 0) *out++ = '\n';
        for (std::size_t i = 0; i < codeLineLetters; ++i) {
            if (i == groupLetters) *out++ = '-';
            *out++ = static_cast<unsigned char>(codeAlphabet[word[hiddenLetters + i]]);
        }
    }
    return text;
}

base::Result<Secret> readCode(CodeKind kind, const Secret& typed) {
    const auto elements = elementsOf(typed.view());
    if (!elements) return elements.error();
    for (std::size_t line = 0; line < codeLines; ++line)
        if (!isCodeWord(kind, line, *elements)) return wrongLine(Code::SealCodeLine, line);
    Secret bytes = Secret::ofSize(codeBytes);
    for (std::size_t i = 0; i < codeLines * contentLetters; ++i)
        putFiveBits(bytes, i,
                    elements->all[i / contentLetters * codeLineLetters + i % contentLetters]);
    return bytes;
}

}  // namespace seal
