// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <unicode/locid.h>
#include <unicode/translit.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <memory>

#include "record/card.h"

namespace record {
namespace {

bool isAscii(const icu::UnicodeString& text) {
    for (std::int32_t i = 0; i < text.length(); ++i)
        if (text.charAt(i) >= 0x80) return false;
    return true;
}

/// Any script to plain lower-case ASCII, as far as ICU can. The vowel signs and the stretching of
/// Arabic and the points of Hebrew go first: names are written with and without them. What is ASCII
/// already, as is nothing at all, does not wait until ICU has read its rules.
icu::UnicodeString folded(icu::UnicodeString text) {
    if (isAscii(text)) return text.toLower(icu::Locale::getRoot());
    UErrorCode status = U_ZERO_ERROR;
    static const std::unique_ptr<icu::Transliterator> transliterator(
        icu::Transliterator::createInstance(
            "Any-NFC; [\\u00AD\\u0591-\\u05BD\\u05BF-\\u05C7\\u0640\\u064B-\\u0652\\u0670] Remove; "
            "Any-Latin; Latin-ASCII; Lower",
            UTRANS_FORWARD, status));
    if (transliterator) transliterator->transliterate(text);
    return text;
}

/// What may stand within a word and is no part of it: apostrophes and the letters like them that
/// stand for a throat sound, accents on their own, and all that is invisible.
bool joins(UChar32 letter) {
    constexpr std::uint32_t within = U_GC_LM_MASK | U_GC_MN_MASK | U_GC_CF_MASK | U_GC_CC_MASK;
    if (letter == '\'') return true;
    return (U_GET_GC_MASK(letter) & within) != 0 && !u_isspace(letter);
}

/// Words are letters and digits; an apostrophe joins ("o'brien" is obrien), all else parts.
std::vector<std::string> wordsOf(const icu::UnicodeString& text) {
    std::vector<std::string> words;
    icu::UnicodeString word;
    const auto flush = [&] {
        if (!word.isEmpty()) word.toUTF8String(words.emplace_back());
        word.remove();
    };
    for (std::int32_t at = 0; at < text.length(); at = text.moveIndex32(at, 1)) {
        const UChar32 letter = text.char32At(at);
        if (joins(letter)) continue;
        if (u_isalnum(letter))
            word.append(letter);
        else
            flush();
    }
    flush();
    return words;
}

/// The way these letters are written where they are missing: mueller for müller.
icu::UnicodeString spelledOut(const icu::UnicodeString& text) {
    icu::UnicodeString out = text;
    const std::pair<const char16_t*, const char16_t*> pairs[] = {
        {u"ü", u"ue"}, {u"ö", u"oe"}, {u"ä", u"ae"}, {u"Ü", u"Ue"}, {u"Ö", u"Oe"},
        {u"Ä", u"Ae"}, {u"ø", u"oe"}, {u"Ø", u"Oe"}, {u"å", u"aa"}, {u"Å", u"Aa"}};
    for (const auto& [from, to] : pairs) out.findAndReplace(from, to);
    return out;
}

/// Whether two letters may stand for one that was missing: ue for ü, aa for å.
bool standsForOne(char first, char second) {
    return (second == 'e' && (first == 'u' || first == 'o' || first == 'a')) ||
           (first == 'a' && second == 'a');
}

/// A word and what it may have been meant as where letters were missing: mueller is müller, which
/// is typed as muller. Nobody knows of which pairs that is so ("baeuerle" is Bäuerle), so there is
/// one for every choice; where there are more than three pairs, one for all of them together.
/// Samuel is then found by "samul" and Aaron by "aron" too: that is accepted.
std::vector<std::string> meantWords(const std::string& word) {
    constexpr std::size_t mostWays = 8;
    std::vector<std::string> ways{{}};
    std::string shortest;
    for (std::size_t at = 0; at < word.size(); ++at) {
        const bool isPair = at + 1 < word.size() && standsForOne(word[at], word[at + 1]);
        shortest += word[at];
        for (std::string& way : ways) way += word[at];
        if (!isPair) continue;
        ++at;
        if (ways.size() > mostWays) continue;
        const std::size_t before = ways.size();
        for (std::size_t one = 0; one < before; ++one) {
            ways.push_back(ways[one]);
            ways[one] += word[at];
        }
    }
    return ways.size() > mostWays ? std::vector{word, shortest} : ways;
}

void addWord(std::vector<std::string>& keys, std::string word) {
    if (std::find(keys.begin(), keys.end(), word) == keys.end()) keys.push_back(std::move(word));
}

}  // namespace

std::vector<std::string> searchKeys(const std::string& text) {
    const icu::UnicodeString read = icu::UnicodeString::fromUTF8(text);
    std::vector<std::string> keys;
    for (const std::string& word : wordsOf(folded(read)))
        for (std::string& way : meantWords(word)) addWord(keys, std::move(way));
    for (std::string& word : wordsOf(folded(spelledOut(read)))) addWord(keys, std::move(word));
    return keys;
}

std::vector<std::string> searchWords(const std::string& typed) {
    return wordsOf(folded(icu::UnicodeString::fromUTF8(typed)));
}

}  // namespace record
