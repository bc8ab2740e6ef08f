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

/// From the least to the most that a measure can be, in millimetres.
struct Span {
    int least = 0, most = 999;
    bool holds(int mm) const { return least <= mm && mm <= most; }
};
inline constexpr Span outsideSpan{.least = 0, .most = 600};
/// No arm is thinner or thicker; common practice, no source. What is typed in centimetres by
/// mistake lies below it.
inline constexpr Span girthSpan{.least = 50, .most = 900};

inline Span spanOf(const packs::Measure& measure) {
    switch (packs::baselineOf(measure)) {
        case packs::Baseline::OutsideLength:
            return outsideSpan;
        case packs::Baseline::ArmGirth:
            return girthSpan;
        case packs::Baseline::None:
            break;
    }
    return {};
}

}  // namespace record
