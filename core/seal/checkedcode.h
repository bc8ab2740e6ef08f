// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/result.h"
#include "seal/secret.h"

/// 160 bits as letters that are printed, read and typed by people: four lines of ten letters.
///
/// The alphabet has the ten digits and the capitals without I, L, O and U. Where a person reads
/// them nevertheless, I and L are taken for 1 and O for 0: what looks alike means the same.
///
/// Each line is eight letters of content and two of check, a Reed-Solomon code over GF(32) (Reed
/// and Solomon 1960; a line is at most 31 letters long). Any two code words differ in at least
/// three places, so one or two wrong letters of a line are always noticed, wherever they are, and
/// two letters that changed places too. A line's number and what the code is for are part of the
/// code word without being printed: lines in another order, or a code of another kind, are noticed.
namespace seal {

/// What a code is for. The number goes into the check: one in use is never given to another.
enum class CodeKind { Recovery = 1, Paper = 2 };

inline constexpr std::size_t codeBytes = 20;
inline constexpr std::size_t codeLines = 4;
inline constexpr std::size_t codeLineLetters = 10;

/// "ABCDE-FGHJK", four such lines with a line end after each but the last. `bytes` are codeBytes.
Secret writeCode(CodeKind kind, const Secret& bytes);

/// Small letters are as good as capitals; spaces, dashes and line ends are left out wherever they
/// are. Errors: SealCodeLetter, SealCodeLength, SealCodeLine with the first line that is wrong.
base::Result<Secret> readCode(CodeKind kind, const Secret& typed);

}  // namespace seal
