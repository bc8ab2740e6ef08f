// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"

namespace app {

/// Fills an empty ledger with a ward of invented people, all through Commands, on a clock of its
/// own that ends before `now`. Errors: whatever the desk refuses.
base::Outcome fillDemoWard(ledger::Ledger& ledger, procedure::Shelf& shelf,
                           const base::Instant& now);

}  // namespace app
