// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "seal/secret.h"

/// What a new passphrase has to be. A lost laptop can be guessed at without anyone knowing, so
/// length counts and rules about kinds of letters do not.
namespace seal {

/// NIST SP 800-63B-4 (2025), section 3.1.1.2: 15 where nothing but the passphrase is asked for;
/// every letter of Unicode counts as one.
inline constexpr int leastLetters = 15;
/// The same section asks for 64 at the least; more than this is a mistake of the clipboard.
inline constexpr int mostLetters = 1000;

enum class Weakness {
    TooShort,
    TooLong,
    Repeated,  ///< fewer than six different letters, or more than half of it only counts on
    HasName,   ///< little is left beside the person's own name and that of the program
    NotText,   ///< not valid UTF-8
};

/// The first thing that is wrong, if anything is. `name` is the person's own.
std::optional<Weakness> weaknessOf(const Secret& typed, const std::string& name);

}  // namespace seal
