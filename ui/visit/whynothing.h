// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "keys/keys.h"
#include "pieces/moment.h"

namespace ui {

/// Why a key does nothing now; empty: it does what it says, or the record says why not.
QString whyNothing(Act what, const Moment& moment);

}  // namespace ui
