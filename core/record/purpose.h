// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "record/payload.h"
#include "seal/signature.h"

namespace record {

/// What is signed where people sign in, and why: who can open the record, what decides about a
/// learner, what changes how an earlier entry is read, and each paper that left, by which all that
/// was there before it is signed too. All else is told by its author and proven by the log.
std::optional<seal::Purpose> purposeOf(const Payload& payload);

}  // namespace record
