// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "pieces/moment.h"

/// What is said of a lapse, and whom to call.
namespace ui {

enum class Reader { Teacher, Learner };

/// Its name: "Swab went back over the site". Of what was typed a veiled moment says only that it
/// was something else.
QString lapseTitle(const Moment& moment, const practice::LapseRecord& lapse);
/// What to say to the learner about it: "That touched the skin. New swab, then scrub again."
QString lapseSays(const Moment& moment, const practice::LapseRecord& lapse, Reader reader);
/// Who answers, with the unit's number.
QString whomToCall(const Moment& moment, packs::Call call);
/// Whom the pack says to call after this lapse, with the number; empty: nobody.
QString callAfter(const Moment& moment, const practice::LapseRecord& lapse);
/// Each call that what was seen on the patient asks for, with why: "The team, today  555 0101: Skin
/// torn". Nobody records whether it was made, so it stays until the visit ends.
QStringList callsDue(const Moment& moment);
/// The drill on the card of its gravest lapse, or null.
const packs::Drill* drillOf(const Moment& moment, const practice::LapseRecord& lapse);

}  // namespace ui
