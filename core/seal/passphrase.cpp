// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/passphrase.h"

#include <sodium.h>
#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unorm2.h>
#include <unicode/ustring.h>

#include <algorithm>
#include <optional>
#include <regex>

#include "base/check.h"

namespace seal {
namespace {

using base::Code;
using base::Error;

constexpr std::size_t saltSize = crypto_pwhash_argon2id_SALTBYTES;
constexpr std::size_t handleSize = 16;
constexpr std::uint32_t mostKiB = 4 * 1024 * 1024 - 1;
constexpr std::uint32_t mostPasses = 100;
constexpr int phcBase64 = sodium_base64_VARIANT_ORIGINAL_NO_PADDING;

std::string saltText(const std::string& salt) {
    std::string text(sodium_base64_encoded_len(salt.size(), phcBase64), '\0');
    sodium_bin2base64(text.data(), text.size(), bytePointer(std::string_view(salt)), salt.size(),
                      phcBase64);
    text.pop_back();  // the terminating zero
    return text;
}

std::string saltOf(const std::string& text) {
    std::string salt(text.size(), '\0');
    std::size_t size = 0;
    const int failed = sodium_base642bin(bytePointer(salt), salt.size(), text.data(), text.size(),
                                         nullptr, &size, nullptr, phcBase64);
    salt.resize(failed == 0 ? size : 0);
    return salt;
}

/// UTF-16 in memory that is wiped, since ICU works on it. Nothing when it is not UTF-8.
struct WideSecret {
    Secret bytes;
    std::int32_t length = 0;

    char16_t* letters() { return reinterpret_cast<char16_t*>(bytes.data()); }
    std::int32_t room() const { return static_cast<std::int32_t>(bytes.size() / 2); }
};

std::optional<WideSecret> wideOf(const Secret& text) {
    WideSecret wide{Secret::ofSize(2 * text.size() + 2)};
    UErrorCode status = U_ZERO_ERROR;
    u_strFromUTF8(wide.letters(), wide.room(), &wide.length,
                  reinterpret_cast<const char*>(text.data()),
                  static_cast<std::int32_t>(text.size()), &status);
    if (U_FAILURE(status)) return std::nullopt;
    return wide;
}

/// NFC makes a text at most three times as long (UAX #15, section "Stability").
std::optional<WideSecret> composed(WideSecret wide) {
    std::replace_if(
        wide.letters(), wide.letters() + wide.length,
        [](char16_t letter) { return u_charType(letter) == U_SPACE_SEPARATOR; }, u' ');
    WideSecret out{Secret::ofSize(6 * static_cast<std::size_t>(wide.length) + 2)};
    UErrorCode status = U_ZERO_ERROR;
    const UNormalizer2* nfc = unorm2_getNFCInstance(&status);
    out.length =
        unorm2_normalize(nfc, wide.letters(), wide.length, out.letters(), out.room(), &status);
    if (U_FAILURE(status)) return std::nullopt;
    return out;
}

base::Result<Secret> narrowOf(WideSecret wide) {
    Secret bytes = Secret::ofSize(3 * static_cast<std::size_t>(wide.length) + 1);
    UErrorCode status = U_ZERO_ERROR;
    std::int32_t length = 0;
    u_strToUTF8(reinterpret_cast<char*>(bytes.data()), static_cast<std::int32_t>(bytes.size()),
                &length, wide.letters(), wide.length, &status);
    if (U_FAILURE(status)) return Error{Code::LedgerBadText, {"not valid Unicode"}};
    return Secret::copyOf(bytes.part(0, static_cast<std::size_t>(length)));
}

base::Outcome stretchInto(Secret& out, std::string_view typed, const Stretch& stretch) {
    REQUIRE(stretch.salt.size() == saltSize);
    const int failed = crypto_pwhash_argon2id(
        out.data(), out.size(), typed.data(), typed.size(),
        bytePointer(std::string_view(stretch.salt)), stretch.cost.passes,
        std::size_t{1024} * stretch.cost.memKiB, crypto_pwhash_argon2id_ALG_ARGON2ID13);
    if (failed != 0) return Error{Code::SealNoMemory};
    return base::Done{};
}

/// White space at the ends goes, within it becomes one space.
icu::UnicodeString joined(const icu::UnicodeString& text) {
    icu::UnicodeString out;
    bool gap = false;
    for (std::int32_t at = 0; at < text.length(); at = text.moveIndex32(at, 1)) {
        const UChar32 letter = text.char32At(at);
        if (u_isUWhiteSpace(letter)) {
            gap = !out.isEmpty();
            continue;
        }
        if (gap) out += u' ';
        gap = false;
        out += letter;
    }
    return out;
}

}  // namespace

Stretch Stretch::withNewSalt(const Cost& cost) { return {cost, randomBytes(saltSize)}; }

std::string Stretch::phc() const {
    return "$argon2id$v=19$m=" + std::to_string(cost.memKiB) + ",t=" + std::to_string(cost.passes) +
           ",p=1$" + saltText(salt);
}

base::Result<Stretch> Stretch::parse(const std::string& phc) {
    static const std::regex shape(
        R"(\$argon2id\$v=19\$m=([1-9][0-9]{0,6}),t=([1-9][0-9]{0,2}),p=1\$([A-Za-z0-9+/]{22}))");
    std::smatch found;
    if (!std::regex_match(phc, found, shape)) return Error{Code::SealBadRow, {"phc"}};
    const Stretch read{{static_cast<std::uint32_t>(std::stoul(found[1])),
                        static_cast<std::uint32_t>(std::stoul(found[2]))},
                       saltOf(found[3])};
    const bool fits = read.salt.size() == saltSize && read.cost.covers(Cost::least()) &&
                      read.cost.memKiB <= mostKiB && read.cost.passes <= mostPasses;
    if (!fits) return Error{Code::SealBadRow, {"phc"}};
    return read;
}

base::Result<Secret> prepared(const Secret& typed) {
    auto wide = wideOf(typed);
    if (!wide) return Error{Code::LedgerBadText, {"not valid UTF-8"}};
    auto one = composed(std::move(*wide));
    if (!one) return Error{Code::LedgerBadText, {"can't be normalised"}};
    return narrowOf(std::move(*one));
}

base::Result<Secret> stretched(const Secret& typed, const Stretch& stretch) {
    const auto text = prepared(typed);
    if (!text) return text.error();
    Secret key = Secret::ofSize(32);
    if (const auto done = stretchInto(key, text->view(), stretch); !done) return done.error();
    return key;
}

base::Result<std::string> nameHandle(const std::string& typedName, const Stretch& ledgerStretch) {
    UErrorCode status = U_ZERO_ERROR;
    const icu::Normalizer2* folder = icu::Normalizer2::getNFKCCasefoldInstance(status);
    if (U_FAILURE(status)) return Error{Code::Internal, {"ICU"}};
    const auto folded = folder->normalize(icu::UnicodeString::fromUTF8(typedName), status);
    if (U_FAILURE(status)) return Error{Code::LedgerBadText, {"can't be normalised"}};
    std::string text;
    joined(folded).toUTF8String(text);
    Secret handle = Secret::ofSize(handleSize);
    if (const auto done = stretchInto(handle, text, ledgerStretch); !done) return done.error();
    return std::string(handle.view());
}

}  // namespace seal
