// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/papercode.h"

#include <algorithm>
#include <charconv>

#include "ledger/merkle.h"
#include "seal/checkedcode.h"

namespace seal {
namespace {

constexpr std::string_view squareMark = "NINEBARK:1:";
constexpr std::size_t sizeBytes = 4;
constexpr std::size_t rootBytes = codeBytes - sizeBytes;

std::string hexText(std::string_view bytes) {
    ledger::Digest digest{};
    std::copy(bytes.begin(), bytes.end(), digest.begin());
    return ledger::toHex(digest).substr(0, 2 * bytes.size());
}

}  // namespace

bool PaperCode::fits(const ledger::Head& head) const {
    return head.size == size && head.root.starts_with(rootStart);
}

std::optional<std::string> paperLetters(const ledger::Head& head) {
    const auto root = ledger::digestOf(head.root);
    if (!root || head.size > UINT32_MAX) return std::nullopt;
    Secret bytes = Secret::ofSize(codeBytes);
    for (std::size_t i = 0; i < sizeBytes; ++i)
        bytes.data()[i] = static_cast<unsigned char>(head.size >> (8 * (sizeBytes - 1 - i)));
    std::copy_n(root->begin(), rootBytes, bytes.data() + sizeBytes);
    return std::string(writeCode(CodeKind::Paper, bytes).view());
}

std::string squareText(const ledger::Head& head) {
    std::string text = std::string(squareMark) + std::to_string(head.size) + ':' + head.root;
    std::transform(text.begin(), text.end(), text.begin(), [](char c) {
        return c >= 'a' && c <= 'f' ? static_cast<char>(c - 'a' + 'A') : c;
    });
    return text;
}

std::optional<ledger::Head> readSquareText(std::string_view text) {
    const std::size_t colon = text.rfind(':');
    if (!text.starts_with(squareMark) || colon < squareMark.size()) return std::nullopt;
    ledger::Head head{.root = std::string(text.substr(colon + 1))};
    std::transform(head.root.begin(), head.root.end(), head.root.begin(), [](char c) {
        return c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    const char* const end = text.data() + colon;
    const auto read = std::from_chars(text.data() + squareMark.size(), end, head.size);
    if (read.ec != std::errc() || read.ptr != end || !ledger::digestOf(head.root))
        return std::nullopt;
    return head;
}

base::Result<PaperCode> readPaperLetters(const std::string& typed) {
    const auto bytes = readCode(CodeKind::Paper, Secret::copyOf(typed));
    if (!bytes) return bytes.error();
    PaperCode code{.rootStart = hexText(bytes->part(sizeBytes, rootBytes))};
    for (std::size_t i = 0; i < sizeBytes; ++i) code.size = code.size << 8 | bytes->data()[i];
    return code;
}

}  // namespace seal
