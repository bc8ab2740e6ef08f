// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packs/baseline.h"
#include "packs/comparison.h"
#include "record/patientpayloads.h"

namespace record {

/// What the measure was when the line was put in, as far as it was written down.
inline packs::Counted atInsertion(const AddLine& line, const packs::Measure& measure) {
    switch (packs::baselineOf(measure)) {
        case packs::Baseline::OutsideLength:
            return {.mm = line.outsideMm, .marks = line.marks};
        case packs::Baseline::ArmGirth:
            return {.mm = line.girthMm, .marks = std::nullopt};
        case packs::Baseline::None:
            break;
    }
    return {};
}

}  // namespace record
