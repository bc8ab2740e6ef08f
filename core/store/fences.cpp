// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/fences.h"

#include <mutex>

#include "store/schema.h"
#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;

using Fence = std::vector<std::string>;

base::Result<std::vector<Fence>> fencesIn(Database& database) {
    const auto rows = database.rows(
        "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema ORDER BY type, name");
    if (!rows) return rows.error();
    std::vector<Fence> fences;
    for (const Row& row : *rows) {
        Fence fence;
        for (const QVariant& column : row) fence.push_back(textOf(column));
        fences.push_back(std::move(fence));
    }
    return fences;
}

base::Result<std::vector<Fence>> madeFences(std::vector<SchemaStep> steps, int version) {
    std::erase_if(steps, [&](const SchemaStep& step) { return step.version > version; });
    const auto database = Database::open(":memory:", Access::ReadWrite);
    if (!database) return database.error();
    if (const auto made = bringUpToDate(**database, steps); !made) return made.error();
    return fencesIn(**database);
}

/// Made once for each version, on whatever thread asks first.
base::Result<std::vector<Fence>> ourFences(int version) {
    static std::mutex mutex;
    static std::map<int, std::vector<Fence>> known;
    const std::lock_guard lock(mutex);
    const auto found = known.find(version);
    if (found != known.end()) return found->second;
    auto made = madeFences(builtInSteps(), version);
    if (made) known.emplace(version, *made);
    return made;
}

}  // namespace

base::Result<bool> hasOurFences(Database& database) {
    const auto version = schemaVersion(database);
    if (!version) return version.error();
    if (*version > newestVersion(builtInSteps())) return true;
    const auto ours = ourFences(*version);
    if (!ours) return ours.error();
    const auto there = fencesIn(database);
    if (!there) return there.error();
    return *there == *ours;
}

base::Outcome askForOurFences(Database& database) {
    const auto has = hasOurFences(database);
    if (!has) return has.error();
    return *has ? base::Outcome(base::Done{}) : Error{Code::StoreFences};
}

}  // namespace store
