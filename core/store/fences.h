// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/database.h"

namespace store {

/// Whether every table, index, trigger and view of this file is one that the built-in steps make up
/// to its version, in the same words, and none is missing: a trigger that somebody put there could
/// let what is written fall away and report it as done. Of a newer version nothing is known: true.
base::Result<bool> hasOurFences(Database& database);
/// The same as an error: StoreFences.
base::Outcome askForOurFences(Database& database);

}  // namespace store
