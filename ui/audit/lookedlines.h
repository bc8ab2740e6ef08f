// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "audit/auditfindings.h"
#include "record/uselog.h"

namespace ui {

/// The log of a ledger as the auditor's page shows it, in the same order.
std::vector<Looked> lookedFrom(const std::vector<record::UseLine>& log);

}  // namespace ui
