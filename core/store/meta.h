// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "ledger/lineage.h"
#include "store/database.h"

namespace store {

/// Whose people a record is about. The two never share a file.
enum class OpenMode { Demonstration, Real };

std::string wordOf(OpenMode mode);

/// The ids of the ledger in this file. Errors: StoreOtherKind, StoreEdgeWrong.
base::Result<ledger::Lineage> identify(Database& database, OpenMode mode);
/// Of which kind it is. Errors: StoreEdgeWrong.
base::Result<OpenMode> kindOf(Database& database);
/// Inside a transaction.
base::Outcome putLineage(Database& database, const ledger::Lineage& lineage);

}  // namespace store
