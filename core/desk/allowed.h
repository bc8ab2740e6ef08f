// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "desk/command.h"
#include "desk/recordview.h"
#include "procedure/shelf.h"

namespace desk {

/// Whether a command may become an entry, before anything is written; the error says why not.
/// `view.record` is the record of the command's patient, when there is one.
base::Outcome mayBecomeEntry(const Command& command, const RecordView& view,
                             const procedure::Shelf& shelf, const base::Instant& now);

}  // namespace desk
