// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/papercode.h"

#include <algorithm>

#include "ledger/merkle.h"
#include "seal/checkedcode.h"

namespace seal {
namespace {

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

base::Result<PaperCode> readPaperLetters(const std::string& typed) {
    const auto bytes = readCode(CodeKind::Paper, Secret::copyOf(typed));
    if (!bytes) return bytes.error();
    PaperCode code{.rootStart = hexText(bytes->part(sizeBytes, rootBytes))};
    for (std::size_t i = 0; i < sizeBytes; ++i) code.size = code.size << 8 | bytes->data()[i];
    return code;
}

}  // namespace seal
