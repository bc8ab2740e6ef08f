// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "practice/state.h"
#include "procedure/shelf.h"
#include "render/lanes.h"

namespace render {

/// The words of the lanes, in the reader's language.
struct LaneWords {
    std::function<QString(packs::Lane)> lane;
    std::function<QString(std::int64_t wallMs)> time;     ///< "14:32"
    std::function<QString(std::int64_t seconds)> length;  ///< "31 s"
    /// In the reader's language; none: bars have no names.
    std::function<QString(const packs::Text&)> label = {};
};

/// Letter of a lapse of the visit: A, B … Z, AA.
QString lapseLetter(std::size_t index);

/// The lanes of one visit: solid while what the pack calls safe for the lane holds, an outline
/// while it stands open, cut from a lapse on, hatched where it was won back; a measured span for
/// every timed phase. Times are
/// milliseconds since 1970. `nowMs`: the visit is open and runs until then.
LanesData lanesOf(const procedure::Taught& taught, const practice::State& state,
                  const LaneWords& words, std::optional<std::int64_t> nowMs);

}  // namespace render
