// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "pieces/moment.h"
#include "record/payload.h"

namespace ui {

/// The lapse in hand as it has to be said anew now that a helper came or went; none where its way
/// back was begun, was told to the learner, or would be the same.
std::optional<record::Payload> lapseToSayAgain(const Moment& moment, HelperAtHand helper);

}  // namespace ui
