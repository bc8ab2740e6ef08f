// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/base64url.h"

#include <sodium.h>

namespace ledger {

std::string toBase64Url(std::string_view bytes) {
    constexpr int variant = sodium_base64_VARIANT_URLSAFE_NO_PADDING;
    std::string text(sodium_base64_encoded_len(bytes.size(), variant), '\0');
    sodium_bin2base64(text.data(), text.size(),
                      reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), variant);
    text.pop_back();  // the closing zero
    return text;
}

std::optional<std::string> fromBase64Url(std::string_view text) {
    std::string bytes(text.size() / 4 * 3 + 3, '\0');
    std::size_t length = 0;
    const char* end = nullptr;
    const int failed = sodium_base642bin(reinterpret_cast<unsigned char*>(bytes.data()),
                                         bytes.size(), text.data(), text.size(), nullptr, &length,
                                         &end, sodium_base64_VARIANT_URLSAFE_NO_PADDING);
    if (failed != 0 || end != text.data() + text.size()) return std::nullopt;
    bytes.resize(length);
    return bytes;
}

}  // namespace ledger
