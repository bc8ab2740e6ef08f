// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/newpassphrase.h"

#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>
#include <unicode/utf8.h>

#include <algorithm>
#include <set>
#include <vector>

#include "seal/passphrase.h"

namespace seal {
namespace {

constexpr std::size_t leastDifferent = 6;
constexpr int leastBesideName = 8;
constexpr int leastNameLetters = 3;

using Letters = std::vector<UChar32>;

/// Takes the letters out of memory when it goes.
struct WipedLetters {
    Letters all;
    ~WipedLetters() { std::fill(all.begin(), all.end(), 0); }
};

Letters lettersOf(std::string_view utf8) {
    Letters letters;
    letters.reserve(utf8.size());
    const auto size = static_cast<std::int32_t>(utf8.size());
    for (std::int32_t at = 0; at < size;) {
        UChar32 letter = 0;
        U8_NEXT(utf8.data(), at, size, letter);
        letters.push_back(u_foldCase(letter, U_FOLD_CASE_DEFAULT));
    }
    return letters;
}

/// "abcdef", "123456", "654321", "aaaaaa": each letter follows from the one before.
bool onlyCountsOn(const Letters& letters) {
    std::size_t follows = 0;
    for (std::size_t i = 1; i < letters.size(); ++i)
        if (std::abs(letters[i] - letters[i - 1]) <= 1) ++follows;
    return 2 * follows > letters.size();
}

std::vector<Letters> namesIn(const std::string& name) {
    std::vector<Letters> words;
    Letters word;
    for (const UChar32 letter : lettersOf(name + " ninebark ")) {
        if (u_isalnum(letter)) {
            word.push_back(letter);
            continue;
        }
        if (word.size() >= leastNameLetters) words.push_back(word);
        word.clear();
    }
    return words;
}

std::ptrdiff_t lettersBeside(Letters letters, const std::vector<Letters>& names) {
    for (const Letters& name : names)
        for (auto at = letters.begin();;) {
            at = std::search(at, letters.end(), name.begin(), name.end());
            if (at == letters.end()) break;
            at = letters.erase(at, at + static_cast<std::ptrdiff_t>(name.size()));
        }
    return std::count_if(letters.begin(), letters.end(), u_isalnum);
}

}  // namespace

std::optional<Weakness> weaknessOf(const Secret& typed, const std::string& name) {
    const auto text = prepared(typed);
    if (!text) return Weakness::NotText;
    const WipedLetters letters{lettersOf(text->view())};
    if (letters.all.size() < leastLetters) return Weakness::TooShort;
    if (letters.all.size() > mostLetters) return Weakness::TooLong;
    const std::set<UChar32> different(letters.all.begin(), letters.all.end());
    if (different.size() < leastDifferent || onlyCountsOn(letters.all)) return Weakness::Repeated;
    const auto names = namesIn(name);
    const auto beside = lettersBeside(letters.all, names);
    if (beside < leastBesideName && beside < std::count_if(
                                                 letters.all.begin(), letters.all.end(),
                                                 [](UChar32 one) { return u_isalnum(one); }))
        return Weakness::HasName;
    return std::nullopt;
}

}  // namespace seal
