// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "practice/careevents.h"
#include "practice/lapseevents.h"
#include "practice/stepevents.h"
#include "practice/visitevents.h"

/// What a teacher says during a visit. Each struct is at once the data of a Command and the data of
/// the entry it becomes; the visit, the person who saw it and the time are in the envelope.
/// Steps, phases, lapses, conditions and measures are named by their ids in the pack.
/// Here are all of them; practice.h has them as one variant, Said.
