// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packs/fault.h"
#include "packs/pack.h"
#include "packs/tree.h"

namespace packs {

/// What no single object shows: doubled and dangling ids, lists that contradict each other, times
/// out of order, limits of number, supplies of timed steps, closed teach-back questions. `root`
/// tells where in the file each stands.
void checkReferences(const Pack& pack, const Node& root, Faults& faults);

/// The part of it that the way back depends on.
void checkProcedureReferences(const Pack& pack, const Node& root, Faults& faults);

}  // namespace packs
