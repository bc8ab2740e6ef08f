// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace packs {

/// The measure that is written down at a step: as it was found, or as it is left.
enum class Taken { Found, Left };
/// What is read first: the unit of the measure, or marks where the line has been counted by them.
enum class ReadBy { Unit, Marks };
struct StepMeasure {
    std::string id;
    Taken when = Taken::Found;
    ReadBy by = ReadBy::Unit;
    bool operator==(const StepMeasure&) const = default;
};

}  // namespace packs
