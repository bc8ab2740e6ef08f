// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/result.h"

namespace app {

/// The size and the root of the ledger as a paper gives them.
struct PaperHead {
    std::uint64_t size = 0;
    std::string begin, end;  ///< of the root; a whole root is all in `begin`

    /// "SIZE:ROOT", the root whole or its first and last 8 letters around "…" or "...".
    static std::optional<PaperHead> ofNumbers(const std::string& text);
    /// The letters beside the square code: the size and the first half of the root. Errors: those
    /// of seal::readCode(), which name the line that is not as it was printed.
    static base::Result<PaperHead> ofLetters(const std::string& typed);
    bool agreesWith(const std::string& root) const {
        return root.starts_with(begin) && root.ends_with(end);
    }
};

/// The arguments of the record commands.
struct RecordArguments {
    std::string data;
    std::optional<base::PatientId> patient;
    std::optional<std::string> paper;  ///< as typed
    bool asJson = false;

    bool saysNumbers() const { return paper && paper->find(':') != std::string::npos; }

    /// Nothing where they contradict the usage; `known` are the options with a value.
    static std::optional<RecordArguments> parse(const std::vector<std::string>& words,
                                                const std::set<std::string>& known);
};

}  // namespace app
