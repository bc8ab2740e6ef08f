// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "procedure/check.h"

namespace procedure {

/// What all parts of a check work with.
struct CheckRun {
    const packs::Pack& pack;
    Model model;
    std::vector<std::string> pointers;  ///< of each operator of the model
    CheckLimits limits;
    CheckReport report;

    explicit CheckRun(const packs::Pack& checked, const CheckLimits& bounds);
    void error(std::string pointer, std::string sentence, std::string remedy);
    void advise(std::string pointer, std::string sentence);
    /// "a", "b" of the conditions in a set.
    std::string names(Conditions conditions) const;
};

void checkNominalRun(CheckRun& run);
void checkSkips(CheckRun& run);
void checkLapses(CheckRun& run);
void checkTimes(CheckRun& run);

}  // namespace procedure
