// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "record/record.h"

namespace desk {

/// Whether this person may mark this entry as written in the wrong chart. Whoever wrote it knows
/// that it was; they may have gone home or left, so an educator may too. Another teacher may not:
/// evidence that somebody saw is not struck out by who did not see it. Errors: MarkNothing,
/// MarkOpen, MarkTwice, MarkOfAnother.
base::Outcome mayMark(const record::Record& record, const record::Staff& by,
                      const base::CommandId& entry);

}  // namespace desk
