// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/comparison.h"

#include <algorithm>
#include <cstdlib>

namespace packs {
namespace {

bool isBeyond(Way way, int change, int limit) {
    switch (way) {
        case Way::Out:
        case Way::More:
            return change >= limit;
        case Way::In:
            return -change >= limit;
        case Way::Either:
            return std::abs(change) >= limit;
    }
    return false;
}

Bound boundOf(const Measure& measure, const std::optional<int>& change) {
    if (!change) return Bound::Within;
    if (measure.callAt && isBeyond(measure.way, *change, *measure.callAt)) return Bound::Call;
    if (measure.tellAt && isBeyond(measure.way, *change, *measure.tellAt)) return Bound::Tell;
    return Bound::Within;
}

}  // namespace

std::optional<Comparison> compare(const Measure& measure, const Counted& insertion,
                                  const Counted& now) {
    Comparison found;
    if (insertion.mm && now.mm) found.byMm = *now.mm - *insertion.mm;
    if (measure.markMm && insertion.marks && now.marks)
        found.byMarks = (*now.marks - *insertion.marks) * *measure.markMm;
    if (!found.byMm && !found.byMarks) return std::nullopt;
    found.bound = std::max(boundOf(measure, found.byMm), boundOf(measure, found.byMarks));
    if (found.byMm && found.byMarks)
        found.doAgree = std::abs(*found.byMm - *found.byMarks) < 2 * *measure.markMm;
    return found;
}

bool contradict(int markMm, const Counted& read) {
    if (!read.mm || !read.marks) return false;
    return (*read.marks - 1) * markMm - *read.mm >= markMm;
}

}  // namespace packs
