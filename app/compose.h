// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>

#include "desk/desk.h"
#include "gate/gate.h"
#include "store/sqlledger.h"

/// Builds the objects and hands them out: the only place that knows all layers.
namespace app {

/// What the windows stand on. Members go in reverse order: the desk first.
struct Composed {
    std::unique_ptr<ledger::Ledger> ledger;
    std::unique_ptr<procedure::Shelf> shelf;
    std::unique_ptr<desk::Desk> desk;
};

/// A ward of real people. Its desk is opened by whoever signs in.
struct Sealed {
    std::unique_ptr<store::SqlLedger> ledger;
    std::unique_ptr<procedure::Shelf> shelf;
    std::unique_ptr<gate::Gate> gate;
};

/// The folder of the demonstration ward, and of the real one, when none is named.
QString usualFolder();
QString usualRealFolder();
/// Every pack that is compiled in. Errors: those of the reader.
base::Result<std::unique_ptr<procedure::Shelf>> compiledShelf();
/// Opens the demonstration ward in this folder, or makes it and fills it with invented people.
/// Errors: those of the store; StoreReadOnly when it can't be written.
base::Result<Composed> composeWard(const QString& folder, const base::Clock& clock);
/// Opens the ward of real people in this folder, or makes an empty one. Errors: those of the store
/// and of gate::Gate::open(); StoreReadOnly.
base::Result<Sealed> composeSealed(const QString& folder, const base::Clock& clock,
                                   gate::Terms terms = {});
/// The desk for who is signed in at its gate. Errors: those of the desk.
base::Result<std::unique_ptr<desk::Desk>> deskOf(Sealed& ward, const base::Clock& clock);

}  // namespace app
