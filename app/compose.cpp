// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "compose.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QStandardPaths>

#include "demo/demoward.h"
#include "procedure/taught.h"
#include "record/card.h"
#include "record/derivation.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"

namespace app {

QString usualFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           QStringLiteral("/ninebark/demonstration");
}

QString usualRealFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           QStringLiteral("/ninebark/record");
}

base::Result<std::unique_ptr<procedure::Shelf>> compiledShelf() {
    auto shelf = std::make_unique<procedure::Shelf>();
    QStringList paths;
    for (QDirIterator files(QStringLiteral(":/packs"), {QStringLiteral("*.json")}, QDir::Files);
         files.hasNext();)
        paths << files.next();
    paths.sort();
    for (const QString& path : paths) {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            return base::Error{base::Code::FileUnreadable,
                               {path.toStdString(), file.errorString().toStdString()}};
        auto taught = procedure::readTaught(file.readAll().toStdString());
        if (!taught) return taught.error();
        shelf->put(*taught);
    }
    return shelf;
}

namespace {

/// Cards and search keys that an earlier program made by other rules are made anew. Only then is
/// anything read that grows with the record.
base::Outcome bringDerivedUpToDate(ledger::Ledger& ledger, procedure::Shelf& shelf) {
    const auto version = ledger.foldVersion();
    if (!version) return version.error();
    if (*version == record::foldVersion) return base::Done{};
    const auto all = record::deriveAll(ledger, shelf);
    if (!all) return all.error();
    return ledger.rebuild(*all);
}

}  // namespace

base::Result<Composed> composeWard(const QString& folder, const base::Clock& clock) {
    Composed made;
    auto shelf = compiledShelf();
    if (!shelf) return shelf.error();
    made.shelf = std::move(*shelf);
    // Filled before it has its name: who stops the program meanwhile finds no half of a ward.
    const auto fill = [&](ledger::Ledger& empty) {
        return fillDemoWard(empty, *made.shelf, clock.now());
    };
    auto ledger = store::SqlLedger::open(store::recordFileIn(folder.toStdString()),
                                         store::OpenMode::Demonstration, fill);
    if (!ledger) return ledger.error();
    if ((*ledger)->isReadOnly()) return base::Error{base::Code::StoreReadOnly};
    made.ledger = std::move(*ledger);
    if (auto derived = bringDerivedUpToDate(*made.ledger, *made.shelf); !derived)
        return derived.error();
    auto desk = desk::Desk::open(*made.ledger, *made.shelf, clock, desk::Ward::Demonstration);
    if (!desk) return desk.error();
    made.desk = std::move(*desk);
    return made;
}

base::Result<Sealed> composeSealed(const QString& folder, const base::Clock& clock,
                                   gate::Terms terms) {
    auto shelf = compiledShelf();
    if (!shelf) return shelf.error();
    auto ledger =
        store::SqlLedger::open(store::recordFileIn(folder.toStdString()), store::OpenMode::Real);
    if (!ledger) return ledger.error();
    if ((*ledger)->isReadOnly()) return base::Error{base::Code::StoreReadOnly};
    terms.notesUse = true;
    auto gate = gate::Gate::open(**ledger, clock, terms);
    if (!gate) return gate.error();
    return Sealed{std::move(*ledger), std::move(*shelf), std::move(*gate)};
}

base::Result<std::unique_ptr<desk::Desk>> deskOf(Sealed& ward, const base::Clock& clock) {
    if (auto derived = bringDerivedUpToDate(*ward.ledger, *ward.shelf); !derived)
        return derived.error();
    return desk::Desk::open(*ward.ledger, *ward.shelf, clock, desk::Ward::Real, ward.gate.get());
}

}  // namespace app
