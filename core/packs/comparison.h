// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "packs/kit.h"

namespace packs {

/// What was read of a measure at one time: its unit, printed marks in view, or both.
struct Counted {
    std::optional<int> mm, marks;
};

/// How far a reading may be from what it was when the line was put in.
enum class Bound { Within, Tell, Call };

/// A reading against the one at insertion. Changes in millimetres; more outside, or thicker, is
/// positive.
struct Comparison {
    std::optional<int> byMm;      ///< by what was measured
    std::optional<int> byMarks;   ///< by what was counted, `mark_mm` for each mark
    Bound bound = Bound::Within;  ///< the graver of the two
    bool doAgree = true;          ///< less than two marks apart: each is read to the nearest one

    int changeMm() const { return byMm ? *byMm : byMarks.value_or(0); }
};

/// None where nothing read now can be held against what was written at insertion. Marks are held
/// against marks alone: where the first of them stands on the line is not known.
std::optional<Comparison> compare(const Measure& measure, const Counted& insertion,
                                  const Counted& now);

/// Whether a length and a count taken together can't both be right: marks reach at least from the
/// first of them to the last. Each is read to the nearest mark, so less than one apart is none.
bool contradict(int markMm, const Counted& read);

}  // namespace packs
