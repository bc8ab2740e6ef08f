// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/jcs.h"

#include <unicode/normalizer2.h>
#include <unicode/ustring.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <vector>

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr int deepestLevel = 100;

enum class Strictness { Rfc, Entry };

bool isAscii(const std::string& text) {
    return std::all_of(text.begin(), text.end(),
                       [](char c) { return static_cast<signed char>(c) >= 0; });
}

/// UTF-16 of valid UTF-8, nothing otherwise. ICU refuses surrogates, overlong forms and cut ones.
std::optional<std::u16string> utf16(const std::string& text) {
    std::u16string wide(text.size(), u'\0');
    UErrorCode status = U_ZERO_ERROR;
    int32_t length = 0;
    u_strFromUTF8(wide.data(), static_cast<int32_t>(wide.size()), &length, text.data(),
                  static_cast<int32_t>(text.size()), &status);
    if (U_FAILURE(status)) return std::nullopt;
    wide.resize(static_cast<std::size_t>(length));
    return wide;
}

const icu::Normalizer2& composer() {
    UErrorCode status = U_ZERO_ERROR;
    return *icu::Normalizer2::getNFCInstance(status);
}

bool isNfc(const std::u16string& wide) {
    UErrorCode status = U_ZERO_ERROR;
    const icu::UnicodeString text(false, wide.data(), static_cast<int32_t>(wide.size()));
    return composer().isNormalized(text, status) && U_SUCCESS(status);
}

/// ECMA-262, Number::toString: shortest digits that read back as the same number, laid out by
/// where the point falls.
std::string numberText(double number) {
    if (number == 0) return "0";
    std::array<char, 40> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::fabs(number),
                                   std::chars_format::scientific)
                         .ptr;
    const std::string shortest(buffer.data(), end);
    const auto mark = shortest.find('e');
    std::string digits = shortest.substr(0, mark);
    digits.erase(std::remove(digits.begin(), digits.end(), '.'), digits.end());
    const int count = static_cast<int>(digits.size());
    const int point = std::stoi(shortest.substr(mark + 1)) + 1;  // digits before the point
    std::string text = number < 0 ? "-" : "";
    if (point > 21 || point <= -6) {
        text += digits.substr(0, 1);
        if (count > 1) text += "." + digits.substr(1);
        return text + (point > 0 ? "e+" : "e-") + std::to_string(std::abs(point - 1));
    }
    if (point <= 0)
        return text + "0." + std::string(static_cast<std::size_t>(-point), '0') + digits;
    if (count <= point)
        return text + digits + std::string(static_cast<std::size_t>(point - count), '0');
    digits.insert(static_cast<std::size_t>(point), ".");
    return text + digits;
}

class JcsWriter {
  public:
    explicit JcsWriter(Strictness strictness) : m_strictness(strictness) {}

    base::Result<std::string> write(const json& root) {
        value(root, 0);
        if (m_error) return *m_error;
        return std::move(m_out);
    }

  private:
    void refuse(Code code, std::string what) {
        if (!m_error) m_error = Error{code, {std::move(what)}};
    }

    void value(const json& item, int level) {
        if (level > deepestLevel) return refuse(Code::LedgerTooDeep, std::to_string(deepestLevel));
        switch (item.type()) {
            case json::value_t::null:
                m_out += "null";
                return;
            case json::value_t::boolean:
                m_out += item.get<bool>() ? "true" : "false";
                return;
            case json::value_t::number_integer:
                return integer(item.get<std::int64_t>());
            case json::value_t::number_unsigned:
                return natural(item.get<std::uint64_t>());
            case json::value_t::number_float:
                return real(item.get<double>());
            case json::value_t::string:
                return text(item.get_ref<const std::string&>());
            case json::value_t::array:
                return array(item, level);
            case json::value_t::object:
                return object(item, level);
            case json::value_t::binary:
            case json::value_t::discarded:
                return refuse(Code::LedgerBadNumber, "no JSON value");
        }
    }

    void integer(std::int64_t number) {
        if (number >= -largestInteger && number <= largestInteger) {
            m_out += std::to_string(number);
        } else if (m_strictness == Strictness::Entry) {
            refuse(Code::LedgerBadNumber, "an integer beyond 2^53 - 1");
        } else {
            m_out += numberText(static_cast<double>(number));
        }
    }

    void natural(std::uint64_t number) {
        if (number <= static_cast<std::uint64_t>(largestInteger)) {
            m_out += std::to_string(number);
        } else if (m_strictness == Strictness::Entry) {
            refuse(Code::LedgerBadNumber, "an integer beyond 2^53 - 1");
        } else {
            m_out += numberText(static_cast<double>(number));
        }
    }

    void real(double number) {
        if (m_strictness == Strictness::Entry) return refuse(Code::LedgerBadNumber, "a fraction");
        if (!std::isfinite(number)) return refuse(Code::LedgerBadNumber, "not a finite number");
        m_out += numberText(number);
    }

    void text(const std::string& raw) {
        if (!isAscii(raw)) {
            const auto wide = utf16(raw);
            if (!wide) return refuse(Code::LedgerBadText, "not valid UTF-8");
            if (m_strictness == Strictness::Entry && !isNfc(*wide))
                return refuse(Code::LedgerBadText, "not in Unicode's form NFC");
        }
        m_out += '"';
        for (const char letter : raw) escaped(letter);
        m_out += '"';
    }

    void escaped(char letter) {
        constexpr const char* hex = "0123456789abcdef";
        switch (letter) {
            case '"':
                m_out += "\\\"";
                return;
            case '\\':
                m_out += "\\\\";
                return;
            case '\b':
                m_out += "\\b";
                return;
            case '\f':
                m_out += "\\f";
                return;
            case '\n':
                m_out += "\\n";
                return;
            case '\r':
                m_out += "\\r";
                return;
            case '\t':
                m_out += "\\t";
                return;
            default:
                break;
        }
        const auto byte = static_cast<unsigned char>(letter);
        if (byte >= 0x20) {
            m_out += letter;
        } else {
            m_out += std::string("\\u00") + hex[byte >> 4] + hex[byte & 15];
        }
    }

    void array(const json& items, int level) {
        m_out += '[';
        for (std::size_t i = 0; i < items.size(); ++i) {
            if (i > 0) m_out += ',';
            value(items[i], level + 1);
        }
        m_out += ']';
    }

    void object(const json& members, int level) {
        const bool areAscii = std::all_of(members.items().begin(), members.items().end(),
                                          [](const auto& item) { return isAscii(item.key()); });
        if (!areAscii) return sortedObject(members, level);
        m_out += '{';
        // nlohmann/json keeps them in the order of their bytes: of ASCII, the order of UTF-16.
        for (auto at = members.cbegin(); at != members.cend(); ++at) {
            if (at != members.cbegin()) m_out += ',';
            text(at.key());
            m_out += ':';
            value(at.value(), level + 1);
        }
        m_out += '}';
    }

    void sortedObject(const json& members, int level) {
        struct Member {
            std::u16string order;
            json::const_iterator at;
        };
        std::vector<Member> sorted;
        for (auto at = members.cbegin(); at != members.cend(); ++at) {
            auto wide = utf16(at.key());
            if (!wide) return refuse(Code::LedgerBadText, "not valid UTF-8");
            sorted.push_back({std::move(*wide), at});
        }
        // Not the order of bytes: a surrogate pair comes before U+E000 and above.
        std::sort(sorted.begin(), sorted.end(),
                  [](const Member& a, const Member& b) { return a.order < b.order; });
        m_out += '{';
        for (std::size_t i = 0; i < sorted.size(); ++i) {
            if (i > 0) m_out += ',';
            text(sorted[i].at.key());
            m_out += ':';
            value(sorted[i].at.value(), level + 1);
        }
        m_out += '}';
    }

    Strictness m_strictness;
    std::string m_out;
    std::optional<Error> m_error;
};

}  // namespace

base::Result<std::string> jcs(const json& value) { return JcsWriter(Strictness::Rfc).write(value); }

base::Result<std::string> entryJcs(const json& value) {
    return JcsWriter(Strictness::Entry).write(value);
}

bool isUtf8(const std::string& text) { return isAscii(text) || utf16(text).has_value(); }

base::Result<std::string> nfc(const std::string& text) {
    if (isAscii(text)) return text;
    const auto wide = utf16(text);
    if (!wide) return Error{Code::LedgerBadText, {"not valid UTF-8"}};
    UErrorCode status = U_ZERO_ERROR;
    const icu::UnicodeString source(false, wide->data(), static_cast<int32_t>(wide->size()));
    const icu::UnicodeString composed = composer().normalize(source, status);
    if (U_FAILURE(status)) return Error{Code::LedgerBadText, {"can't be normalised"}};
    std::string out;
    composed.toUTF8String(out);
    return out;
}

}  // namespace ledger
