// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "ledger/entry.h"
#include "record/record.h"

namespace record {

/// "teacher", "educator" or "auditor"; "system" for whoever is not on the list.
std::string roleOf(const std::optional<base::StaffId>& person, const House& house);

/// What somebody says, as it goes into the ledger: said now, by a new id, about nobody's record.
ledger::Draft draftOf(const Payload& payload, const std::optional<base::StaffId>& by,
                      const std::string& role, const base::Instant& now);

}  // namespace record
