// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>

#include "desk/desk.h"

/// Builds the objects and hands them out: the only place that knows all layers.
namespace app {

/// What the windows stand on. Members go in reverse order: the desk first.
struct Composed {
    std::unique_ptr<ledger::Ledger> ledger;
    std::unique_ptr<procedure::Shelf> shelf;
    std::unique_ptr<desk::Desk> desk;
};

/// The folder of the demonstration ward when none is named.
QString usualFolder();
/// Every pack that is compiled in. Errors: those of the reader.
base::Result<std::unique_ptr<procedure::Shelf>> compiledShelf();
/// Opens the demonstration ward in this folder, or makes it and fills it with invented people.
/// Errors: those of the store; StoreReadOnly when it can't be written.
base::Result<Composed> composeWard(const QString& folder, const base::Clock& clock);

}  // namespace app
