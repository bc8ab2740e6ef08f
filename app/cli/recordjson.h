// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>

#include "cli/packfile.h"
#include "desk/recordview.h"

namespace app {

/// The ledger's head, the staff and one card for each learner.
Json listJson(const desk::RecordView& view, const std::vector<record::Card>& cards);
/// A folded record: what was said under the names of its fields ("said"), by whom, when, and the
/// place of its entry; of each visit also how every step went.
Json recordJson(const record::Record& record);

/// The same for people who read: a line for each learner, then what is open.
void writeList(const desk::RecordView& view, const std::vector<record::Card>& cards,
               std::ostream& out);
void writeRecord(const record::Record& record, std::ostream& out);

}  // namespace app
