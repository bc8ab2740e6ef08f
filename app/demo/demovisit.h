// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"

namespace app {

/// One flawless return demonstration on a practice arm, by Commands, each step on a clock that is
/// moved by what the pack asks. The record of the learner's patient is open.
base::Outcome playVisit(desk::Desk& desk, base::ManualClock& clock, const base::LearnerId& learner);

}  // namespace app
