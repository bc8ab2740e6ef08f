// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "procedure/taught.h"
#include "record/record.h"

/// Later entries never undo a signature; they are said to be new since it.
namespace readiness {

/// The sign-off that holds for a competency: the last one that was not written in the wrong chart;
/// null: it is not signed.
const record::Stated<record::SignOff>* signatureFor(const record::Record& record,
                                                    const record::Learner& learner,
                                                    const procedure::Taught& taught,
                                                    const packs::Competency& competency);

/// Whether something that concerns a signed competency came to the record after it was signed: a
/// visit in which some of it was recorded, a question about it, a late entry of the learner, an
/// addendum to any of these or to a signature for it; or the mark that one of these, which it
/// rests on, was written in the wrong chart.
bool isNewSince(const record::Stated<record::SignOff>& signature, const record::Record& record,
                const record::Learner& learner, const procedure::Taught& taught,
                const packs::Competency& competency);

}  // namespace readiness
