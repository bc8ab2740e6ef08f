// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packs/kit.h"

namespace packs {

/// What of the line's record, written when it was put in, a measure is compared with.
enum class Baseline { None, OutsideLength, ArmGirth };

/// A pack says it by the measure's id: "outside-length" or "arm-girth". Under any other id printed
/// marks tell that it is a length of the line; a measure without them is compared with nothing.
inline Baseline baselineOf(const Measure& measure) {
    if (!measure.baseline) return Baseline::None;
    if (measure.id == "outside-length") return Baseline::OutsideLength;
    if (measure.id == "arm-girth") return Baseline::ArmGirth;
    return measure.markMm ? Baseline::OutsideLength : Baseline::None;
}

}  // namespace packs
