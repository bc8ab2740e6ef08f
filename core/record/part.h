// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ledger/entry.h"

namespace record {

/// Whether this person has a part in the record of these entries: wrote in it, or was handed a
/// visit of it. To have made a paper of it is none: whoever only reads can do that.
bool hasPart(const base::StaffId& person, const std::vector<ledger::Entry>& entries);

}  // namespace record
