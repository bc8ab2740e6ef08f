// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "proof/finding.h"

#include <algorithm>

namespace proof {

bool Report::isWrong() const {
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& one) { return proof::isWrong(one.kind); });
}

}  // namespace proof
