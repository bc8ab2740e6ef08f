// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/recordview.h"
#include "procedure/shelf.h"

/// By which pack a learner is taught: one may be taught by several.
namespace desk {

/// The packs of the learner's visits, the last one's first, each once, as far as they are at hand.
std::vector<procedure::TaughtPtr> packsTaught(const record::Record& record,
                                              const base::LearnerId& learner);

/// The pack of the open visit; else the one that was chosen to be looked at; else, once it was
/// taught, the one that fits the line best, so that a visit by another does not hide it; else the
/// last visit's; before the first visit the one that fits best. Null when there is none.
procedure::TaughtPtr packInView(const RecordView& view, const base::LearnerId& learner,
                                const procedure::Shelf& shelf, const std::string& today);

}  // namespace desk
