// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "practice/practice.h"

/// What the patient came with is found, and is no lapse of whoever looks.
namespace practice {

/// Whether the patient can come with this lapse of the pack, and it is seen in this step.
bool isFoundAt(const packs::Pack& pack, const std::string& lapse, const std::string& step);
/// Whether this lapse of the pack, seen now, was there before the learner did anything: the pack
/// says at which steps.
bool wasFound(const procedure::Taught& taught, const State& state, const std::string& lapse);
/// Whether all of it was: with one lapse among them it is a lapse. What happened after a step that
/// is done came about in the visit; only who says that it was found there says otherwise.
bool wasFound(const procedure::Taught& taught, const State& state, const SeeLapse& said);

}  // namespace practice
