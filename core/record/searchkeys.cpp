// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <unicode/locid.h>
#include <unicode/translit.h>
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

/// Any script to plain lower-case ASCII, as far as ICU can. What is ASCII already, as is nothing
/// at all, does not wait until ICU has read its rules.
std::string folded(icu::UnicodeString text) {
    if (isAscii(text)) {
        std::string plain;
        text.toLower(icu::Locale::getRoot()).toUTF8String(plain);
        return plain;
    }
    UErrorCode status = U_ZERO_ERROR;
    static const std::unique_ptr<icu::Transliterator> transliterator(
        icu::Transliterator::createInstance("Any-Latin; Latin-ASCII; Lower", UTRANS_FORWARD,
                                            status));
    if (transliterator) transliterator->transliterate(text);
    std::string out;
    return text.toUTF8String(out);
}

/// Words are letters and digits; an apostrophe joins ("o'brien" is obrien), all else parts.
std::vector<std::string> wordsOf(const std::string& text) {
    std::vector<std::string> words;
    std::string word;
    const auto flush = [&] {
        if (!word.empty()) words.push_back(std::move(word));
        word.clear();
    };
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (byte >= 0x80 || std::isalnum(byte))
            word += letter;
        else if (letter != '\'')
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

void addWords(std::vector<std::string>& keys, const std::string& text) {
    for (std::string& word : wordsOf(text))
        if (std::find(keys.begin(), keys.end(), word) == keys.end())
            keys.push_back(std::move(word));
}

}  // namespace

std::vector<std::string> searchKeys(const std::string& text) {
    const icu::UnicodeString read = icu::UnicodeString::fromUTF8(text);
    std::vector<std::string> keys;
    addWords(keys, folded(read));
    addWords(keys, folded(spelledOut(read)));
    return keys;
}

std::vector<std::string> searchWords(const std::string& typed) {
    return wordsOf(folded(icu::UnicodeString::fromUTF8(typed)));
}

}  // namespace record
