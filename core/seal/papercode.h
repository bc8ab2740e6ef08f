// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "ledger/entry.h"

namespace seal {

/// What a paper says of the ledger in letters: how many entries there were (below 2^32) and the
/// first 128 bits of the root over them. Half a SHA-256 value still takes about 2^128 tries to
/// give another ledger the same letters, once the paper is out of hand.
struct PaperCode {
    std::uint64_t size = 0;
    std::string rootStart = {};  ///< 32 lower-case hex digits

    /// Whether this is the head the letters were made from.
    bool fits(const ledger::Head& head) const;
    bool operator==(const PaperCode&) const = default;
};

/// Four lines as in checkedcode.h. Nothing when the ledger is too large or the root is none.
std::optional<std::string> paperLetters(const ledger::Head& head);
/// Errors: those of readCode().
base::Result<PaperCode> readPaperLetters(const std::string& typed);

/// What the paper's square code says: "NINEBARK:1:SIZE:ROOT", the whole root. Digits, capitals and
/// ':' take the least room in a code (ISO/IEC 18004, alphanumeric mode); what begins it says what
/// kind of text it is and which version.
std::string squareText(const ledger::Head& head);
/// The head in such a text; nothing when it is none.
std::optional<ledger::Head> readSquareText(std::string_view text);

}  // namespace seal
