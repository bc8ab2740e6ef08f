// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <string>
#include <vector>

#include "store/database.h"

namespace store {

/// One statement on the way from one version of the schema to the next.
struct SchemaStep {
    int version = 0;  ///< the version it leads to; several steps may lead to one
    std::string name;
    QByteArray sql;
};

enum class SchemaOutcome {
    Created,   ///< there was none
    Current,   ///< nothing was to be done
    Upgraded,  ///< and a copy of the older file lies beside it
};

/// The steps that are compiled in, in the order of their versions.
std::vector<SchemaStep> builtInSteps();
int newestVersion(const std::vector<SchemaStep>& steps);
base::Result<int> schemaVersion(Database& database);

/// Brings the schema to the newest version, over all versions between in one transaction. Errors:
/// StoreNewer, StoreUpgradeFailed with the step's name, after which the file is as it was;
/// StoreNeedsUpgrade when the file can only be read.
base::Result<SchemaOutcome> bringUpToDate(Database& database, const std::vector<SchemaStep>& steps);
/// Where the copy lies that is taken before an upgrade from this version.
std::string copyBeforeUpgrade(const std::string& path, int version);

}  // namespace store
