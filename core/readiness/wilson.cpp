// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "readiness/readiness.h"

namespace readiness {

Evidence wilson(int successes, int trials) {
    Evidence evidence{.unprompted = successes, .observed = trials};
    if (trials <= 0) return evidence;
    constexpr double z = 1.959963984540054;  // two-sided 95 %
    const double n = trials;
    const double share = successes / n;
    const double spread = z * std::sqrt(share * (1 - share) / n + z * z / (4 * n * n));
    const double middle = share + z * z / (2 * n);
    const double scale = 1 + z * z / n;
    evidence.low = std::max(0.0, (middle - spread) / scale);
    evidence.high = std::min(1.0, (middle + spread) / scale);
    return evidence;
}

}  // namespace readiness
