// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema.h"

#include <QDir>
#include <QFile>
#include <algorithm>

#include "store/recordfile.h"
#include "store/transaction.h"

// Outside of every namespace, as Qt asks for.
static void attachStoreSchema() { Q_INIT_RESOURCE(storeschema); }

namespace store {
namespace {

using base::Code;
using base::Error;

/// Everything from this version on, or nothing of it: the version in the header is undone as well.
base::Outcome runAllAfter(Database& database, const std::vector<SchemaStep>& steps, int version) {
    auto transaction = Transaction::begin(database);
    if (!transaction) return transaction.error();
    for (const SchemaStep& step : steps) {
        if (step.version <= version) continue;
        if (const auto done = database.runOnce(QString::fromUtf8(step.sql)); !done) {
            const Code code = done.error().code;
            if (code == Code::StoreDisk || code == Code::Internal)
                return Error{Code::StoreUpgradeFailed, {step.name}};
            return done;
        }
    }
    const auto raised =
        database.runOnce(QStringLiteral("PRAGMA user_version = %1").arg(newestVersion(steps)));
    if (!raised) return raised;
    return transaction->commit();
}

base::Outcome takeCopy(Database& database, int version) {
    const std::string to = copyBeforeUpgrade(database.path(), version);
    const std::string part = to + ".part";
    if (const auto made = makeEmptyFile(part); !made) return made;
    const auto copied = database.run("VACUUM INTO ?", {QString::fromStdString(part)});
    if (!copied) return copied;
    return settle(part, to);
}

}  // namespace

std::vector<SchemaStep> builtInSteps() {
    attachStoreSchema();
    const QDir folder(QStringLiteral(":/store/sqlite"));
    std::vector<SchemaStep> steps;
    for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) continue;
        steps.push_back({name.left(4).toInt(), name.toStdString(), file.readAll()});
    }
    return steps;
}

int newestVersion(const std::vector<SchemaStep>& steps) {
    int newest = 0;
    for (const SchemaStep& step : steps) newest = std::max(newest, step.version);
    return newest;
}

base::Result<int> schemaVersion(Database& database) {
    const auto version = database.value("PRAGMA user_version");
    if (!version) return version.error();
    return version->toInt();
}

base::Result<SchemaOutcome> bringUpToDate(Database& database,
                                          const std::vector<SchemaStep>& steps) {
    const auto found = schemaVersion(database);
    if (!found) return found.error();
    const int newest = newestVersion(steps);
    if (*found > newest)
        return Error{Code::StoreNewer, {std::to_string(*found), std::to_string(newest)}};
    if (*found == newest) return SchemaOutcome::Current;
    if (database.access() != Access::ReadWrite) return Error{Code::StoreNeedsUpgrade};
    if (*found > 0)
        if (const auto copied = takeCopy(database, *found); !copied) return copied.error();
    if (const auto done = runAllAfter(database, steps, *found); !done) return done.error();
    return *found == 0 ? SchemaOutcome::Created : SchemaOutcome::Upgraded;
}

std::string copyBeforeUpgrade(const std::string& path, int version) {
    return path + ".version-" + std::to_string(version);
}

}  // namespace store
