// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "practice/practice.h"

/// What the patient came with is found, and is no lapse of whoever looks.
namespace practice {

/// Whether this lapse of the pack, seen now, was there before the learner did anything: the pack
/// says at which steps. `happened`: noticed late, it happened after this step; null: now.
bool wasFound(const procedure::Taught& taught, const State& state, const std::string& lapse,
              const std::string* happened = nullptr);
/// Whether all of it was: with one lapse among them it is a lapse.
bool wasFound(const procedure::Taught& taught, const State& state, const SeeLapse& said);

}  // namespace practice
