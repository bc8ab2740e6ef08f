// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "seal/keyring.h"

/// What keeps a machine that others can reach from giving secrets away.
namespace seal {

/// Milliseconds to wait before the next try, after so many wrong passphrases in a row: the first
/// two are slips and cost nothing, then one second, doubled each time, never above one minute.
/// Nobody is locked out for ever: a hospital needs its records, and who can lock others out by
/// typing rubbish has a weapon.
std::int64_t waitAfterWrong(int wrongInARow);

/// From now on this process writes no core dump, and no other of the same user can look into its
/// memory. Whether both took effect.
bool forbidCoreDumps();

/// What the passphrases of real people cost at the least, whatever Cost is usual by now: that may
/// rise with a later program, and takes effect at each person's next sign-in.
inline constexpr Cost leastForReal{65'536, 3};
/// Whether no row is cheaper to guess than that; otherwise it is a ledger of invented people.
bool costIsEnough(const KeyRows& rows, const Cost& least);

}  // namespace seal
