// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "pieces/moment.h"

/// What is said of a lapse, and whom to call.
namespace ui {

enum class Reader { Teacher, Learner };

/// Its name: "Swab went back over the site".
QString lapseTitle(const Moment& moment, const practice::LapseRecord& lapse);
/// What to say to the learner about it: "That touched the skin. New swab, then scrub again."
QString lapseSays(const Moment& moment, const practice::LapseRecord& lapse, Reader reader);
/// Who answers, with the unit's number.
QString whomToCall(const Moment& moment, packs::Call call);
/// The drill on the card of its gravest lapse, or null.
const packs::Drill* drillOf(const Moment& moment, const practice::LapseRecord& lapse);

}  // namespace ui
