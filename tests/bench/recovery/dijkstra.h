// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include "procedure/recovery.h"

namespace bench {

struct LeastCost {
    int strain = 0;
    std::int64_t seconds = 0;
    int count = 0;
    auto operator<=>(const LeastCost&) const = default;
};

/// What the least way back costs, by the algorithm as the textbooks have it: no bound on what is
/// missing, nothing given up early, no choice among equals.
std::optional<LeastCost> dijkstra(const procedure::Model& model,
                                  const procedure::Question& question);

}  // namespace bench
